/** For a browser: a button beside each sentence that is offered, which puts it into the narrative. */
export function takeOffered(page: Document): void {
  const narrative = page.querySelector<HTMLTextAreaElement>('#narrative');
  if (narrative === null) return;
  for (const place of page.querySelectorAll<HTMLElement>('.offered[data-take]')) {
    const { take = '', instead = '', about = '' } = place.dataset;
    const button = page.createElement('button');
    button.type = 'button';
    button.textContent = 'Put it in place';
    button.setAttribute('aria-describedby', about);
    place.append(button);
    button.addEventListener('click', () => {
      const at = instead === '' ? -1 : narrative.value.indexOf(instead);
      const [start, end] =
        at === -1 ? [narrative.selectionStart, narrative.selectionEnd] : [at, at + instead.length];
      narrative.setRangeText(take, start, end, 'end');
      narrative.focus();
    });
  }
}
