type System = 'yards' | 'metres';

const key = 'units';
const labels: Readonly<Record<System, string>> = { yards: 'In yards', metres: 'In metres' };
const said: Readonly<Record<System, string>> = {
  yards: 'Now in yards and miles an hour.',
  metres: 'Now in metres and kilometres an hour.',
};

/** What the button says on a page in these units, before it is pressed. */
export const switchLabel = (own: System): string => labels[own === 'yards' ? 'metres' : 'yards'];

/**
 * For a browser: a button in `place` that shows either the shop's units or the others. Everything that differs stands
 * on the page twice, marked `data-units`; without this script the shop's alone are seen. A page on which nothing
 * differs gets no button.
 *
 * @param own the units that the page is written in
 */
export function addUnitsSwitch(page: Document, place: Element, own: System): void {
  if (page.querySelector('[data-units]') === null) return;
  const other: System = own === 'yards' ? 'metres' : 'yards';
  const button = page.createElement('button');
  button.type = 'button';
  button.textContent = switchLabel(own);
  const status = page.createElement('p');
  status.className = 'visually-hidden';
  status.setAttribute('role', 'status');
  place.append(button, status);

  const show = (system: System): void => {
    for (const copy of page.querySelectorAll<HTMLElement | SVGElement>('[data-units]')) {
      const shown = copy.dataset['units'] === system;
      if (copy instanceof HTMLElement) copy.hidden = !shown;
      else copy.setAttribute('display', shown ? 'inline' : 'none');
    }
    button.setAttribute('aria-pressed', String(system === other));
  };
  button.addEventListener('click', () => {
    const system = button.getAttribute('aria-pressed') === 'true' ? own : other;
    show(system);
    status.textContent = said[system];
    remember(system);
  });
  show(askedFor(page) ?? remembered() ?? own);
}

/** What the address asks for, as "?units=metres": whoever links to a page or frames it may choose. */
function askedFor(page: Document): System | null {
  return systemNamed(new URLSearchParams(page.location.search).get(key));
}

const systemNamed = (name: string | null): System | null =>
  name === 'yards' || name === 'metres' ? name : null;

/** What the reader chose last; nothing where the browser keeps no storage for us. */
function remembered(): System | null {
  try {
    return systemNamed(localStorage.getItem(key));
  } catch {
    return null;
  }
}

function remember(system: System): void {
  try {
    localStorage.setItem(key, system);
  } catch {
    // The choice then lasts as long as the page.
  }
}
