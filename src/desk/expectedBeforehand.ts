import { valueAt } from '../intake/authored/tree.ts';
import { sentence } from '../prose/words.ts';
import { html, type Markup } from './markup.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';

/** What the plan says was expected; nothing where it does not say. */
export function expectedBeforehand({ tree }: ReportAtDesk): Markup {
  const written = (key: string): string => {
    const answer = valueAt(tree, ['plan', key]);
    return typeof answer === 'string' ? answer.trim() : '';
  };
  const expectation = written('expectation');
  if (expectation === '') return html``;
  const day = written('date');
  return html`<section aria-labelledby="expected">
    <h2 id="expected">What you expected beforehand</h2>
    <p class="claim">${sentence(expectation)}</p>
    <p class="note">
      ${day === '' ? '' : `Decided on ${day}. `}Claim this first, whatever the shots make of it: it is what
      your test set out to check.
    </p>
  </section>`;
}
