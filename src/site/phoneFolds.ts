/** From this width on nothing needs to be folded away, px: `report.css` shows it there without script too. */
const unfoldedFrom = 768;

/** Runs in the browser: opens what only phones fold where there is room, so that it is not announced as closed. */
export function openPhoneFolds(page: Document, width: number): void {
  if (width < unfoldedFrom) return;
  for (const fold of page.querySelectorAll<HTMLDetailsElement>('details.phone-fold')) {
    fold.open = true;
    // A heading there, and nothing to press.
    fold.querySelector('summary')?.setAttribute('tabindex', '-1');
  }
}
