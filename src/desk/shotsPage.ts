import { isUnanswered, valueAt } from '../intake/authored/tree.ts';
import { visible } from '../problems/visible.ts';
import { capitalised, counted } from '../prose/words.ts';
import { untold, withAndWithout } from './answersCompared.ts';
import { exclusionList, faultyEntries } from './exclusionList.ts';
import { leaveOutForm } from './leaveOutForm.ts';
import { limitForm } from './limitForm.ts';
import { html, type Markup } from './markup.ts';
import { problemTextWithPlace } from './problemText.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';
import type { ShownPart } from './reportPart.ts';
import { rulesOffered } from './rulesOffered.ts';
import { rowsOf, shotsAtDesk, type ShotsAtDesk } from './shotsAtDesk.ts';
import { misreadForm, tableId, takeBackForm } from './shotTable.ts';

/** All shots of a report: which are left out and why, and forms to leave out others. */
export function shotsPage(shown: ShownPart): Markup {
  const { report, action, hidden } = shown;
  const shots = shotsAtDesk(report);
  const rows = rowsOf(shots);
  const rules = rulesOffered(report.tree, shown.lastAnswers());
  // Its buttons stand in the rows of the tables.
  const formOfRows = (id: string): Markup =>
    html`<form method="post" action="${action}" id="${id}">${hidden}</form>`;
  return html`${filesSection(shots)} ${faultyEntries(shown, shots)} ${inWordsSection(report)}
  ${
    rows.length === 0
      ? html`<p class="notice">No shot can be shown. ${whyNone(report, shots)}</p>`
      : html`<p>
            Shots that you leave out stay in the report, each with its rule and reason. You leave them out
            after you saw the numbers, and readers can see that: they are told whether a rule was made first,
            how many were left out of each, and what the answer would be with them.
          </p>
          ${outcomeSection(report, shots)} ${noneForm(shown, shots)} ${waysSection(shots)}
          ${leaveOutForm(shown, shots, rules)} ${limitForm(shown, shots, rules)}`
  }
  ${exclusionList(shown, shots, rules)} ${shots.entries.length === 0 ? '' : formOfRows(takeBackForm)}
  ${rows.every(({ misread }) => misread === null) ? '' : formOfRows(misreadForm)}`;
}

/** What was found in the files beyond their shots; errors first, the rest folded. */
function filesSection({ ofFiles, ofNobody, warmUps }: ShotsAtDesk): Markup {
  const errors = ofFiles.filter(({ severity }) => severity === 'error');
  const others = ofFiles.filter(({ severity }) => severity !== 'error');
  const list = (problems: typeof ofFiles): Markup =>
    html`<ul>
      ${problems.map((problem) => html`<li>${problemTextWithPlace(problem)}</li>`)}
    </ul>`;
  return html`${
    errors.length === 0
      ? ''
      : html`<section aria-labelledby="of-files" class="problems">
          <h2 id="of-files">What is wrong with the session files</h2>
          ${list(errors)}
        </section>`
  }
  ${
    ofNobody === 0
      ? ''
      : html`<p class="notice">
          ${visible(counted(ofNobody, 'shot'))} of the files ${ofNobody === 1 ? 'is' : 'are'} not shown: what
          was hit, or who hit, is under no name that this report knows.
        </p>`
  }
  ${warmUps === 0 ? '' : html`<p>${counted(warmUps, 'warm-up swing')} in the files: not counted, and not shown.</p>`}
  ${
    others.length === 0
      ? ''
      : html`<details>
          <summary>What else was found in the session files</summary>
          ${list(others)}
        </details>`
  }`;
}

function whyNone({ shotFiles, tree }: ReportAtDesk, { ofFiles }: ShotsAtDesk): string {
  if (tree === null) return 'The answers of this report cannot be read: see what is told with its answers.';
  if (shotFiles.length === 0)
    return 'There is no session file beside this report, or not under the name that it gives.';
  return ofFiles.length > 0
    ? 'What stands in the way is told above.'
    : 'The session files hold none of what this report compares.';
}

/** Words where a list of what is left out should stand. */
function inWordsSection({ tree }: ReportAtDesk): Markup {
  const answer = tree?.['exclusions'];
  if (typeof answer !== 'string' || isUnanswered(answer) || isNone(answer)) return html``;
  return html`<p class="notice">
    The report says of shots left out: “${visible(answer.trim())}”. That leaves nothing out. Tick the shots
    that are meant; what you leave out is written in its place.
  </p>`;
}

const isNone = (answer: string): boolean => answer.trim().toLowerCase() === 'none';

function outcomeSection(report: ReportAtDesk, shots: ShotsAtDesk): Markup {
  const { telling } = report;
  const out = rowsOf(shots).filter(({ leftOut }) => leftOut !== null).length;
  if (out === 0) return html``;
  return html`<section aria-labelledby="outcome">
    <h2 id="outcome">What leaving out does to the answer</h2>
    ${
      telling === null
        ? html`<p>${capitalised(counted(out, 'shot'))} left out. ${untold(report)}</p>`
        : withAndWithout(telling)
    }
  </section>`;
}

/** Asked where a rule was set beforehand: whoever set one has to say that it applied to no shot. */
function noneForm({ report: { tree }, action, hidden }: ShownPart, shots: ShotsAtDesk): Markup {
  const rule = valueAt(tree ?? {}, ['plan', 'exclusion_rule']);
  const answer = tree?.['exclusions'];
  const out = rowsOf(shots).some(({ leftOut }) => leftOut !== null);
  if (out || shots.entries.length > 0 || typeof rule !== 'string' || isUnanswered(rule)) return html``;
  if (typeof answer === 'string' && isNone(answer))
    return html`<p>The report says that no shot was left out.</p>`;
  return html`<form method="post" action="${action}" class="none">
    ${hidden}
    <p>Your plan has a rule for leaving shots out: “${visible(rule.trim())}”.</p>
    <p class="actions"><button name="do" value="none">None was left out</button></p>
  </form>`;
}

/** Ways to each table and to the forms, for a page of many shots. */
function waysSection({ contenders, entries }: ShotsAtDesk): Markup {
  return html`<nav class="ways" aria-label="On this page">
    <ul>
      ${contenders.map(({ name }, index) => html`<li><a href="#${tableId(index)}">${visible(name)}</a></li>`)}
      <li><a href="#leave-out">Leave out what is ticked</a></li>
      <li><a href="#limit">A limit for all alike</a></li>
      ${entries.length === 0 ? '' : html`<li><a href="#entries">What is left out</a></li>`}
    </ul>
  </nav>`;
}
