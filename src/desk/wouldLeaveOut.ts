import { visible } from '../problems/visible.ts';
import { countWord, counted, listed } from '../prose/words.ts';
import { editReport } from '../intake/edits/editAnswers.ts';
import { answersCompared } from './answersCompared.ts';
import { furtherEntries, type EntryAnswers } from './exclusionEdits.ts';
import { html, type Markup } from './markup.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';
import { shotsAtDesk, type ShotsAtDesk } from './shotsAtDesk.ts';

/** What further entries would leave out, and what that would do to the answers; nothing is written. */
export function wouldLeaveOut(
  report: ReportAtDesk,
  shots: ShotsAtDesk,
  entries: readonly EntryAnswers[],
): Markup {
  const edited = editReport(report.text, furtherEntries(report.tree ?? {}, entries));
  const then = 'refused' in edited ? null : report.withText(edited.text);
  if (then === null)
    return html`<div class="notice" role="status">
      <p>${'refused' in edited ? edited.refused : 'That cannot be told.'}</p>
    </div>`;
  const after = shotsAtDesk(then);
  const more = shots.contenders.map(({ name, rows }, index) => ({
    name,
    count: outOf(after.contenders[index]?.rows ?? []) - outOf(rows),
  }));
  const each = more.map(({ name, count }) => `${count === 0 ? 'none' : countWord(count)} of ${name}`);
  const those = more.every(({ count }) => count === 0) ? 'no further shot' : listed(each);
  const all = outOf(after.contenders.flatMap(({ rows }) => rows));
  return html`<div class="notice" role="status">
    <p>
      It would leave out ${visible(those)}. Then ${counted(all, 'shot')} of all ${all === 1 ? 'is' : 'are'}
      left out. Nothing is written yet.
    </p>
    ${answersCompared(report, then)}
  </div>`;
}

const outOf = (rows: ShotsAtDesk['contenders'][number]['rows']): number =>
  rows.filter(({ leftOut }) => leftOut !== null).length;
