/** What the button says and what is said when it worked, or when the browser will not let it. */
const words = { copy: 'Copy', copied: 'Copied.', refused: 'Not copied: select the text instead.' } as const;

/**
 * For a browser: a button after every element marked `data-copy`, whose value says what it copies; for those who hear
 * one button after another, `data-copy-of` says of which chart.
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
    text.after(button);
  }
}
