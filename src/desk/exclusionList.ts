import { asFound, isBlock, type Tree } from '../intake/authored/tree.ts';
import type { Problem } from '../problems/problem.ts';
import { visible } from '../problems/visible.ts';
import { metricName } from '../prose/metricName.ts';
import { countWord, listed } from '../prose/words.ts';
import { metricNamed } from '../intake/authored/metricName.ts';
import { exclusionControls } from './exclusionControls.ts';
import { exclusionFields, kindOfEntry } from './exclusionFields.ts';
import { html, type Markup } from './markup.ts';
import { problemText } from './problemText.ts';
import type { ShownPart } from './reportPart.ts';
import { rowsOf, type ShotsAtDesk } from './shotsAtDesk.ts';
import { entryId, takeBackForm } from './shotTable.ts';
import { isAtOrIn } from './keysWithin.ts';

/** What is left out, entry by entry, each to be changed or taken back; what is wrong with one stands beside it. */
export function exclusionList(shown: ShownPart, shots: ShotsAtDesk, rules: readonly string[]): Markup {
  if (shots.entries.length === 0) return html``;
  return html`<section aria-labelledby="entries">
    <h2 id="entries">What is left out</h2>
    ${shots.entries.map((_, index) => entryForm(index, shown, shots, rules))}
  </section>`;
}

function entryForm(
  index: number,
  { report, action, hidden, typed }: ShownPart,
  shots: ShotsAtDesk,
  rules: readonly string[],
): Markup {
  const answer = shots.entries[index]?.typed ?? null;
  const path = ['exclusions', index];
  const fields = exclusionFields(kindOfEntry(answer), { answer, path }, shots);
  const own = problemsOf(report.problems, report.file, index);
  const ofFields = new Map(
    fields.map(({ name }) => [name, own.filter(({ columnName }) => columnName === name)]),
  );
  const ofEntry = own.filter(({ columnName }) => !fields.some(({ name }) => name === columnName));
  const isIdle = leavesNothingOut(index, answer, shots);
  const isSent = typed?.['do']?.[0] === 'change' && typed['entry']?.[0] === String(index);
  return html`<details
    class="part"
    id="${entryId(index)}"
    ${own.length > 0 || isIdle || isSent ? 'open' : ''}
  >
    <summary>${visible(entryTitle(answer, shots))}</summary>
    ${ofEntry.map((problem) => html`<p class="field"><span class="error">${problemText(problem)}</span></p>`)}
    ${
      own.length === 0 && isIdle
        ? html`<p class="field">
            <span class="error">It names no shot of this report, and leaves nothing out.</span>
          </p>`
        : ''
    }
    ${reachOf(index, answer, shots)}
    <form method="post" action="${action}" class="entry">
      ${hidden}<input type="hidden" name="entry" value="${index}" />
      ${
        isBlock(answer)
          ? exclusionControls(fields, { typed: isSent ? typed : null, problems: ofFields, rules })
          : html`<p>The file says: ${visible(asFound(answer) ?? 'nothing')}</p>`
      }
      <p class="actions">
        ${isBlock(answer) ? html`<button name="do" value="change">Save the change</button>` : ''}
        <button form="${takeBackForm}" name="take-back" value="${index}">
          ${
            kindOfEntry(answer) === 'limit'
              ? 'Take this limit back'
              : isIdle
                ? 'Take this out of the list'
                : 'Take this back in'
          }
        </button>
      </p>
    </form>
  </details>`;
}

/** Whether an entry names no shot; while a file cannot be read, no problem says so. */
const leavesNothingOut = (index: number, answer: Tree, shots: ShotsAtDesk): boolean =>
  kindOfEntry(answer) === 'shot' && !rowsOf(shots).some(({ leftOutBy }) => leftOutBy.includes(index));

/** Ways to the entries that must be put right. */
export function faultyEntries({ report }: Pick<ShownPart, 'report'>, shots: ShotsAtDesk): Markup {
  const faulty = shots.entries.flatMap(({ typed }, index) =>
    leavesNothingOut(index, typed, shots) || problemsOf(report.problems, report.file, index).length > 0
      ? [html`<li><a href="#${entryId(index)}">${visible(entryTitle(typed, shots))}</a></li>`]
      : [],
  );
  return faulty.length === 0
    ? html``
    : html`<section aria-labelledby="faulty" class="problems">
        <h2 id="faulty">To be put right in what is left out</h2>
        <ul>
          ${faulty}
        </ul>
      </section>`;
}

/** Problems at an entry or inside it. */
function problemsOf(problems: readonly Problem[], file: string, index: number): readonly Problem[] {
  const name = `exclusions[${index + 1}]`;
  return problems.filter(({ file: own, columnName }) => own === file && isAtOrIn(columnName ?? '', name));
}

/** How many shots a limit leaves out of each. */
function reachOf(index: number, answer: Tree, { contenders }: ShotsAtDesk): Markup {
  if (kindOfEntry(answer) !== 'limit') return html``;
  const each = contenders.map(({ name, rows }) => {
    const own = rows.filter(({ leftOutBy }) => leftOutBy.includes(index)).length;
    return `${own === 0 ? 'none' : countWord(own)} of ${name}`;
  });
  return html`<p>It leaves out ${visible(listed(each))}.</p>`;
}

/** "Shot 7 of Alder: topped"; "Carry below 150 yd". */
function entryTitle(answer: Tree, { contenders, golfers }: ShotsAtDesk): string {
  if (!isBlock(answer)) return 'An entry that cannot be used';
  const said = (key: string): string => (typeof answer[key] === 'string' ? answer[key].trim() : '');
  const rule = said('rule') === '' ? '' : `: ${said('rule')}`;
  if (kindOfEntry(answer) === 'limit') {
    const metric = metricNamed(said('metric'));
    const name = metric === null ? said('metric') : metricName(metric);
    const sides = ['below', 'above'].flatMap((side) => (said(side) === '' ? [] : [`${side} ${said(side)}`]));
    return `Every shot with ${name || 'a measure'} ${sides.join(' or ')}${rule}`;
  }
  const name = contenders.find(({ id }) => id === said('contender'))?.name ?? said('contender');
  const golfer = golfers.find(({ id }) => id === said('hitter'))?.name ?? said('hitter');
  return `Shot ${said('shot')} of ${name}${golfer === '' ? '' : `, hit by ${golfer}`}${rule}`;
}
