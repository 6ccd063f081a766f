import type { Path } from '../intake/authored/tree.ts';
import type { PlanAnswers, PlanKey } from '../planning/planAnswers.ts';
import { readMetric } from '../planning/readings.ts';
import type { WeighedPlan } from '../planning/weighPlan.ts';
import { metrics } from '../trade/metrics.ts';
import { control } from './control.ts';
import type { DeskPlaces } from './deskPlaces.ts';
import { hiddenFields } from './hiddenFields.ts';
import { html, type Markup } from './markup.ts';
import { planArithmetic } from './planArithmetic.ts';
import { metricWords, nameFields, planGroups, ruleFields, type PlanField } from './planFields.ts';
import { planNames } from './planNames.ts';
import type { PlanProblems } from './planProblems.ts';
import { problemSection } from './reportPage.ts';
import type { Suggestions } from './suggestions.ts';
import { toldSection } from './told.ts';

interface PlanPage {
  readonly answers: PlanAnswers;
  readonly weighed: WeighedPlan;
  readonly problems: PlanProblems;
  readonly suggestions: Suggestions;
  /** Names of what was compared before. */
  readonly labels: readonly string[];
  /** The day in words on which a plan is dated that is recorded today. */
  readonly today: string;
  readonly places: DeskPlaces;
  readonly formToken: string;
}

/** The questions of a plan, what its shots can find, and the button that puts it on record. */
export function planPage(page: PlanPage): Markup {
  const { answers, weighed, problems, today, places, formToken } = page;
  const read = readMetric(answers.metric ?? 'carry');
  const groups = planGroups('value' in read ? metrics[read.value].name : 'it');
  const fields = [...groups.flatMap((group) => group.fields), ...ruleFields, ...nameFields];
  const controls = (own: readonly PlanField[]): readonly Markup[] =>
    own.map((field) => fieldMarkup(field, page));
  return html`<h1>Plan a test</h1>
    <p>
      Decide before anybody hits what would settle the question. You see what so many shots can find; the plan
      goes on record with day and time, so that readers can see it was made beforehand.
    </p>
    ${toldSection(problems.told)}
    ${problemSection({ ofFields: problems.ofFields, ofNarrative: [], ofParts: new Map(), ofNone: [] }, fields)}
    <form method="post" action="${places.plan}" class="answers plan" data-work-out="${places.planArithmetic}">
      ${hiddenFields({ formToken })}
      <div class="plan-questions">
        ${groups.map(
          ({ id, heading, fields: own }) =>
            html`<section aria-labelledby="${id}">
              <h2 id="${id}">${heading}</h2>
              ${controls(own)}
            </section>`,
        )}
      </div>
      <section class="plan-found" id="found" aria-labelledby="found-heading" tabindex="-1">
        <h2 id="found-heading">What these shots can find</h2>
        <div class="worked-out" aria-live="polite">${planArithmetic(weighed)}</div>
        <p class="actions">
          <button type="submit" name="do" value="work-out" formaction="${places.plan}#found">
            Work it out
          </button>
        </p>
      </section>
      <div class="plan-rules">
        <section aria-labelledby="rules">
          <h2 id="rules">Rules, written first</h2>
          <p class="note">They are printed with the report, with the day on which they were written.</p>
          ${controls(ruleFields)}
        </section>
        <details ${nameFields.some(({ name }) => problems.ofFields.has(name)) ? 'open' : ''}>
          <summary>Title and address</summary>
          ${controls(nameFields)}
        </details>
        <p>
          The plan is dated ${today}. A session counts as planned beforehand if it is on a later day, or if
          its file says that every shot came after the time of the record.
        </p>
        <p class="actions"><button type="submit" name="do" value="record">Record this plan</button></p>
      </div>
    </form>`;
}

function fieldMarkup(
  field: PlanField,
  { answers, weighed, problems, suggestions, labels }: PlanPage,
): Markup {
  const own = problems.ofFields.get(field.name) ?? [];
  if (field.key === 'contender')
    return planNames({ names: answers.contender ?? [], offered: labels, problems: own });
  const typed = answers[field.key] ?? standing(field.key, weighed);
  return control(field, {
    typed: typed === '' ? [] : [typed],
    inFile: null,
    problems: own,
    suggested: offered(field, suggestions),
    standing: null,
  });
}

/** What stands in a control that nobody has touched. */
function standing(key: PlanKey, { proposals }: WeighedPlan): string {
  switch (key) {
    case 'metric':
    case 'matters':
    case 'order':
    case 'shots':
      return proposals.get(key) ?? '';
    case 'player':
      return proposals.get(key) ?? 'mid';
    default:
      return '';
  }
}

/** Where a report keeps the same answer. */
const samePlaces: Partial<Record<PlanKey, Path>> = {
  varied: ['varied'],
  hitter: ['hitters', 'one', 'role'],
  'exclusion-rule': ['plan', 'exclusion_rule'],
  'stopping-rule': ['plan', 'stopping_rule'],
  'warm-up': ['plan', 'warm_up'],
};

/** Answers of the last report, or the metrics there are. */
function offered(field: PlanField, suggestions: Suggestions): readonly string[] {
  if (field.key === 'metric') return metricWords;
  const path = samePlaces[field.key];
  return path === undefined ? [] : suggestions({ ...field, path });
}
