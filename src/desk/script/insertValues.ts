/** For a browser: makes buttons of the values and charts of the menu, each of which puts itself into the narrative. */
export function insertValues(page: Document): void {
  const narrative = page.querySelector<HTMLTextAreaElement>('#narrative');
  if (narrative === null) return;
  for (const value of page.querySelectorAll<HTMLElement>('code[data-insert]')) {
    const button = page.createElement('button');
    button.type = 'button';
    button.className = 'value';
    button.append(...value.childNodes);
    button.dataset['insert'] = button.textContent ?? '';
    value.replaceWith(button);
    button.addEventListener('click', () => {
      narrative.setRangeText(
        button.textContent ?? '',
        narrative.selectionStart,
        narrative.selectionEnd,
        'end',
      );
      narrative.focus();
    });
  }
}
