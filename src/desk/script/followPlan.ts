/** So long nobody types before the arithmetic is asked for, in milliseconds. */
const pause = 500;

const troubled =
  'The desk did not answer, so this is what was worked out before. What you typed is still there; the next change asks again.';

/** For a browser: works a plan out anew whenever an answer changes, and puts it into the page that is open. */
export function followPlan(page: Document): void {
  const form = page.querySelector<HTMLFormElement>('form[data-work-out]');
  const region = form?.querySelector('.worked-out') ?? null;
  if (form === null || region === null) return;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let latest = 0;

  const workOut = async (): Promise<void> => {
    latest += 1;
    const own = latest;
    try {
      const answer = await fetch(form.dataset['workOut'] ?? '', { method: 'POST', body: new FormData(form) });
      if (!answer.ok) throw new Error(String(answer.status));
      const found = new DOMParser().parseFromString(await answer.text(), 'text/html').body;
      // A slow answer to an older question is of no use.
      if (own !== latest) return;
      takeProposals(form, region, found);
      region.replaceChildren(...found.childNodes);
    } catch {
      if (own === latest)
        region.prepend(...(region.querySelector('.trouble') === null ? [trouble(page)] : []));
    }
  };

  form.addEventListener('input', () => {
    clearTimeout(waiting);
    waiting = setTimeout(() => void workOut(), pause);
  });
}

/** Controls that hold what was proposed take what is proposed instead; what somebody typed stays. */
function takeProposals(form: HTMLFormElement, before: Element, after: Element): void {
  for (const proposed of after.querySelectorAll<HTMLInputElement>('input[name^="proposed."]')) {
    const earlier = before.querySelector<HTMLInputElement>(`input[name="${proposed.name}"]`)?.value ?? '';
    const control = form.elements.namedItem(proposed.name.replace('proposed.', 'answer.'));
    if (control instanceof HTMLInputElement && control.value === earlier) control.value = proposed.value;
  }
}

function trouble(page: Document): Element {
  const told = page.createElement('p');
  told.className = 'trouble';
  told.textContent = troubled;
  return told;
}
