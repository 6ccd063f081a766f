import { html, type Markup } from './markup.ts';
import { isAtOrIn } from './keysWithin.ts';
import { problemText } from './problemText.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';
import type { PartChange, ShownPart } from './reportPart.ts';
import type { Submitted } from './submittedAnswers.ts';

/** A button of a section as it was pressed. */
interface Asked {
  readonly report: ReportAtDesk;
  readonly submitted: Submitted;
  /** The day where the shop is, ISO 8601. */
  readonly today: string;
  /** Which entry of a list is meant, from 0; null where the button is of none. */
  readonly entry: number | null;
}

/** One thing that can be done with a report once readers have seen it. */
export interface AfterSection {
  readonly id: string;
  readonly heading: string;
  /** The keys of the report that it writes. */
  readonly keys: readonly string[];
  /** What it is for, and where readers see it. */
  readonly purpose: string;
  /** What stands already, and the forms; shown of reports that readers have seen. */
  readonly forms: (shown: ShownPart) => Markup;
  /** What its buttons do, by the word that each sends. */
  readonly acts: Readonly<Record<string, (asked: Asked) => PartChange>>;
  /** The sentences that tell what was done, by the word for the address. */
  readonly done: Readonly<Record<string, string>>;
}

/** A section with what is wrong with its own answers. */
export function afterSection(section: AfterSection, shown: ShownPart, isSeen: boolean): Markup {
  const { id, heading, keys, purpose } = section;
  const problems = shown.report.problems.filter(({ kind, columnName }) =>
    kind === 'narrative-changed'
      ? keys.includes('corrections')
      : keys.some((key) => isAtOrIn(columnName ?? '', key)),
  );
  return html`<section aria-labelledby="${id}">
    <h2 id="${id}">${heading}</h2>
    <p>${purpose}</p>
    ${
      problems.length === 0
        ? ''
        : html`<div class="field">
            ${problems.map((problem) => html`<p class="${problem.severity}">${problemText(problem)}</p>`)}
          </div>`
    }
    ${isSeen ? section.forms(shown) : ''}
  </section>`;
}

/** A form of a section with its one button. */
export const actForm = (
  { action, hidden }: Pick<ShownPart, 'action' | 'hidden'>,
  {
    word,
    button,
    fields = html``,
  }: { readonly word: string; readonly button: string; readonly fields?: Markup },
): Markup =>
  html`<form method="post" action="${action}">
    ${hidden} ${fields}
    <p class="actions"><button type="submit" name="do" value="${word}">${button}</button></p>
  </form>`;

/** What stands in a list already, each with its button, in one form. */
export const entryList = (
  { action, hidden }: Pick<ShownPart, 'action' | 'hidden'>,
  entries: readonly Markup[],
): Markup =>
  html`<form method="post" action="${action}">
    ${hidden}
    <ul class="rows">
      ${entries.map((entry) => html`<li>${entry}</li>`)}
    </ul>
  </form>`;

/** A button that does something with one entry of a list. */
export const entryButton = (word: string, entry: number, button: string): Markup =>
  html`<button type="submit" name="do" value="${word} ${entry}">${button}</button>`;
