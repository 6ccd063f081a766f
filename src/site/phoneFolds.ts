/** From this width on nothing needs to be folded away, px: `report.css` shows it there without script too. */
const unfoldedFrom = 768;

/** For a browser: opens what is folded for phones alone where there is room, so that nobody is told it were closed. */
export function openPhoneFolds(page: Document, width: number): void {
  if (width < unfoldedFrom) return;
  for (const fold of page.querySelectorAll<HTMLDetailsElement>('details.phone-fold')) {
    fold.open = true;
    // A heading there, and nothing to press.
    fold.querySelector('summary')?.setAttribute('tabindex', '-1');
  }
}
