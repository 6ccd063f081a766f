import { buildDifferences, type BuildDifference } from '../findings/buildDifferences.ts';
import { leftOutCounts, missingConditions } from '../findings/fairness.ts';
import type { FairnessCheck, FairnessId, MetricFindings } from '../findings/findings.ts';
import type { Source } from '../intake/authored/source.ts';
import type { Session } from '../intake/session.ts';
import { metrics } from '../trade/metrics.ts';
import { primaryMetrics } from './answer.ts';
import { orderInWords } from './forWhom.ts';
import { mattersText } from './pairSentence.ts';
import { plannedInWords } from './plannedInWords.ts';
import { printLimit, stepFor } from './numbers.ts';
import { toReader, unitFor, withUnit } from './readerUnits.ts';
import type { Telling } from './telling.ts';
import { capitalised, counted, countWord, listed, sentence } from './words.ts';

/** One line of "How fair was this test?". */
export interface FairnessLine {
  readonly id: FairnessId;
  readonly title: string;
  readonly state: 'met' | 'not met' | 'not recorded';
  readonly found: string;
  readonly why: string;
}

interface Told {
  readonly telling: Telling;
  readonly source: Source;
  readonly session: Session;
}

const stateWords = { yes: 'met', stated: 'met', no: 'not met', 'not-recorded': 'not recorded' } as const;

/** The list of what a fair test has, each with what was found and why it matters. */
export function fairnessLines(told: Told): readonly FairnessLine[] {
  return told.telling.findings.fairness.map((check) => ({
    id: check.id,
    title: titleOf(check.id, told),
    state: check.id === 'plan-first' && check.state === 'stated' ? 'not recorded' : stateWords[check.state],
    found: sentence(foundWords(check, told)),
    why: check.why,
  }));
}

function titleOf(id: FairnessId, { telling }: Told): string {
  const titles: Readonly<Record<FairnessId, string>> = {
    'one-thing-varied': `Only the ${telling.noun} changed`,
    order: 'Hit in a fair order',
    'warm-up': 'Warmed up first',
    'enough-shots': 'Enough shots',
    'plan-first': 'Planned before hitting',
    'exclusion-rule': 'Rule for leaving out shots made first',
    'exclusions-even': `As many left out of each ${telling.noun}`,
    'same-ball': 'One kind of ball',
    conditions: 'Conditions written down',
    'reading-measured': 'Measured, not calculated',
    'hitter-blind': 'Golfer did not see the numbers',
    hitters: 'Six golfers or more',
    interests: 'Interests answered',
    'device-accuracy': 'Monitor fine enough',
    'shot-numbers': 'No shot number missing',
  };
  return titles[id];
}

function foundWords(check: FairnessCheck, told: Told): string {
  const { source, session, telling } = told;
  const { front } = source;
  const { design } = telling.findings;
  switch (check.id) {
    case 'one-thing-varied':
      return whatElseDiffers(told);
    case 'order':
      return orderWords(telling);
    case 'warm-up':
      if (session.warmUps > 0) return `${counted(session.warmUps, 'warm-up swing')} in the file, not counted`;
      return front.plan?.warmUp === undefined
        ? 'nothing is said of a warm-up'
        : `the shop states: ${front.plan.warmUp}`;
    case 'enough-shots':
      return enoughWords(told);
    case 'plan-first':
      return design.plan === 'not-said' ? 'no day is given for a plan' : planWords(told);
    case 'exclusion-rule':
      return ruleWords(told);
    case 'exclusions-even':
      return leftOutWords(check, told);
    case 'same-ball':
      return ballWords(check, told);
    case 'conditions':
      return conditionWords(told);
    case 'reading-measured':
      return readingWords(check, told);
    case 'hitter-blind':
      return blindWords(told);
    case 'hitters':
      return `${counted(design.hitters, 'golfer')} hit; from six on a test can speak of golfers like them`;
    case 'interests':
      return check.state === 'yes'
        ? 'who sold, lent and paid is answered, and how each golfer is tied to the shop'
        : 'who sold, lent and paid is answered; how the golfer is tied to the shop is not';
    case 'device-accuracy':
      return accuracyWords(check, told);
    case 'shot-numbers':
      return shotNumberWords(check);
  }
}

/** How the shots followed one another, and what about it leaves the cause of a gap open. */
function orderWords({ findings }: Telling): string {
  const { design, caveats } = findings;
  if (design.order === 'unknown') return 'the order of the shots is not known';
  const because = [
    ...(caveats.includes('order-few-visits') ? ['too few of them'] : []),
    ...(caveats.includes('order-lever') ? ['some mostly later than others'] : []),
    ...(caveats.includes('order-drift') ? ['while results drifted'] : []),
  ];
  return [`they were hit ${orderInWords(design.order)}`, ...because].join(', ');
}

function whatElseDiffers({ source, telling }: Told): string {
  const { differing, partly, alike } = buildDifferences(source.front);
  const valuesOf = ({ item, values }: BuildDifference): string =>
    `${item} (${values.map(({ contender, value }) => `${telling.nameOf(contender)}: ${value}`).join('; ')})`;
  const differs =
    differing.length === 0
      ? alike === 0
        ? ['nothing else is written down']
        : [`${counted(alike, 'other item')} ${alike === 1 ? 'is' : 'are'} written down, and the same for all`]
      : [`also different: ${listed(differing.map(valuesOf))}`];
  const open = partly.map(
    ({ item, values }) =>
      `${item} is written down for ${listed(values.map(({ contender }) => telling.nameOf(contender)))} only`,
  );
  return [...differs, ...open].join('; ');
}

function enoughWords({ telling }: Told): string {
  return primaryMetrics(telling.findings)
    .map((metric) => {
      const unit = unitFor(metric.id, telling.system);
      const read = (value: number): number => toReader(value, metric.id, telling.system);
      const matters = mattersText({ matters: read(metric.matters), unit });
      const name = metrics[metric.id].name;
      const print = (value: number): string =>
        withUnit(printLimit(read(value), stepFor(unit, null), unit, [read(metric.matters)]), unit);
      if (metric.detectable !== null) {
        return `in ${name} a test like this finds a gap of ${print(metric.detectable)} four times in five; ${matters} would matter`;
      }
      const widest = widestReach(metric);
      if (widest === null) return `the shots are too few to judge ${name}`;
      return `in ${name} the true gap may lie ${print(widest)} to either side of the one seen; ${matters} would matter`;
    })
    .map(capitalised)
    .join('. ');
}

/** How far the widest interval of a metric reaches to either side; null where a pair has none. */
function widestReach({ pairs }: MetricFindings): number | null {
  const reaches = pairs.map(({ ci }) => (ci === null ? null : (ci[1] - ci[0]) / 2));
  return reaches.reduce((widest, reach) =>
    widest === null || reach === null ? null : Math.max(widest, reach),
  );
}

function planWords({ source, telling }: Told): string {
  return (
    plannedInWords(telling.findings.design.plan, source.front.plan?.date) ?? 'no day is given for a plan'
  );
}

function ruleWords({ source: { front } }: Told): string {
  const { plan } = front;
  if (plan?.exclusionRule === undefined) return 'no rule is written down';
  if (plan.date === undefined) return `the rule is "${plan.exclusionRule}", and no day is given for it`;
  return plan.date < front.date
    ? `the shop states that it was made first: ${plan.exclusionRule}`
    : 'the rule is not older than the session';
}

function leftOutWords(check: FairnessCheck, { session, telling }: Told): string {
  const counts = leftOutCounts(session);
  if (counts.every(({ count }) => count === 0)) return 'no shot was left out';
  const each = listed(
    counts.map(({ id, count }) => `${count === 0 ? 'none' : countWord(count)} of ${telling.nameOf(id)}`),
  );
  const even =
    Math.max(...counts.map(({ count }) => count)) - Math.min(...counts.map(({ count }) => count)) <= 1;
  return check.state === 'no' && even
    ? `left out: ${each}; the answer changes when they count`
    : `left out: ${each}`;
}

function ballWords({ state }: FairnessCheck, { source: { front } }: Told): string {
  if (state === 'stated') return 'the shop states that one kind of ball was used for all';
  if (state === 'no') return 'not all were hit with one kind of ball';
  return front.conditions.ball === undefined
    ? 'nothing is said of the ball'
    : 'a ball is described, and not whether the same kind was used for all';
}

function conditionWords({ source }: Told): string {
  const missing = missingConditions(source.front);
  return missing.length === 0
    ? 'place, ground, temperature and height are given'
    : `not given: ${listed(missing)}`;
}

function readingWords({ state }: FairnessCheck, { telling }: Told): string {
  const named = (own: readonly MetricFindings[]): string => listed(own.map(({ id }) => metrics[id].name));
  const own = primaryMetrics(telling.findings);
  const calculated = own.filter(({ class: kind }) => kind === 'modelled' || kind === 'estimated');
  if (state === 'no')
    return `${named(calculated)} ${calculated.length === 1 ? 'was' : 'were'} calculated, not seen`;
  return state === 'stated'
    ? `${named(own)} ${own.length === 1 ? 'was' : 'were'} measured, as the shop states`
    : `nothing is said of how ${named(own)} ${own.length === 1 ? 'was' : 'were'} read`;
}

function blindWords({ source }: Told): string {
  const { hitters } = source.front;
  const one = hitters.length === 1 ? 'the golfer' : 'a golfer';
  if (hitters.some(({ sawNumbers }) => sawNumbers === true)) return `${one} could see the numbers`;
  if (hitters.some(({ sawNumbers }) => sawNumbers === undefined))
    return 'nothing is said of who saw the numbers';
  return hitters.length === 1 ? 'the golfer could not see the numbers' : 'no golfer could see the numbers';
}

function accuracyWords({ state }: FairnessCheck, { telling, source }: Told): string {
  const stated = source.front.conditions.monitor?.statedAccuracy?.byMetric ?? {};
  const own = primaryMetrics(telling.findings);
  if (own.every(({ id }) => stated[id] === undefined)) return 'no accuracy is stated for what was judged';
  const told = own.flatMap(({ id, matters }) => {
    const accuracy = stated[id]?.value;
    if (accuracy === undefined) return [];
    const told = (value: number): string =>
      mattersText({ matters: toReader(value, id, telling.system), unit: unitFor(id, telling.system) });
    return [`${metrics[id].name} is stated to be right to ±${told(accuracy)}; ${told(matters)} would matter`];
  });
  const untold = own.filter(({ id }) => stated[id] === undefined).map(({ id }) => metrics[id].name);
  return [
    ...told,
    ...(state === 'no' ? ['that is too near to the gap'] : []),
    ...(untold.length === 0 ? [] : [`no accuracy is stated for ${listed(untold)}`]),
  ]
    .map(capitalised)
    .join('. ');
}

function shotNumberWords({ state }: FairnessCheck): string {
  if (state === 'yes') return 'the numbers of the shots have no gap';
  return state === 'no' ? 'some numbers are missing from the count' : 'not every shot has a number';
}
