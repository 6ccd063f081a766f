/** What the button says and what is said when it worked, or when the browser will not let it. */
const words = { copy: 'Copy', copied: 'Copied.', refused: 'Not copied: select the text instead.' } as const;

/**
 * For a browser: a button after every element marked `data-copy`, whose value says what it copies, or in the element
 * whose id its `data-copy-at` names; for those who hear one button after another, `data-copy-of` says of which chart.
 */
export function addCopyButtons(page: Document): void {
  const status = page.getElementById('copied');
  for (const text of page.querySelectorAll<HTMLElement>('[data-copy]')) {
    const button = page.createElement('button');
    button.type = 'button';
    button.textContent = `${words.copy}: ${text.dataset['copy'] ?? ''}`;
    const of = text.dataset['copyOf'];
    if (of !== undefined) {
      const hidden = page.createElement('span');
      hidden.className = 'visually-hidden';
      hidden.textContent = `, ${of}`;
      button.append(hidden);
    }
    button.addEventListener('click', () => {
      const say = (outcome: string): void => {
        if (status !== null) status.textContent = outcome;
      };
      navigator.clipboard
        .writeText((text.textContent ?? '').trim())
        .then(() => say(words.copied))
        .catch(() => say(words.refused));
    });
    const place = page.getElementById(text.dataset['copyAt'] ?? '');
    if (place === null) text.after(button);
    else place.append(shownAs(text, button));
  }
}

/** A button that stands elsewhere is shown in the units in which its text is. */
function shownAs(text: HTMLElement, button: HTMLButtonElement): HTMLButtonElement {
  const copy = text.closest<HTMLElement>('[data-units]');
  if (copy === null) return button;
  button.dataset['units'] = copy.dataset['units'];
  button.hidden = copy.hidden;
  return button;
}
