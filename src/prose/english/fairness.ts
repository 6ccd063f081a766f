import type { BuildDifference } from '../../findings/buildDifferences.ts';
import type { FairnessId, OverlayId, PlanStanding } from '../../findings/findings.ts';
import { metrics, type MetricId } from '../../trade/metrics.ts';
import { dateInWords } from '../date.ts';
import type { FairnessFact, FairnessState, Reach } from '../fairness.ts';
import { atLeastWords, mattersWords } from './ranges.ts';
import { toReader, unitFor } from '../readerUnits.ts';
import { printingFor, type Telling } from '../telling.ts';
import { counted, countWord, listed, sentence } from '../words.ts';
import { orderInWords } from './order.ts';

/** How a check came out, in words. */
export const fairnessStateWords: Readonly<Record<FairnessState, string>> = {
  yes: 'yes',
  stated: 'stated, not verified',
  no: 'no',
  'not-recorded': 'not recorded',
};

/** "Fair-test checks: 8 yes, 3 no, 3 not recorded": ways in which none came out are not named. */
export function fairnessCountWords(count: Readonly<Record<FairnessState, number>>): string {
  const order: readonly FairnessState[] = ['yes', 'stated', 'no', 'not-recorded'];
  const named = order
    .filter((state) => count[state] > 0)
    .map((state) => `${count[state]} ${fairnessStateWords[state]}`);
  return `Fair-test checks: ${named.join(count.stated > 0 ? '; ' : ', ')}`;
}

/** What a check holds to be so: "Only the ball changed". */
export function fairnessTitle(check: FairnessId, { noun }: Pick<Telling, 'noun'>): string {
  const titles: Readonly<Record<FairnessId, string>> = {
    'one-thing-varied': `Only the ${noun} changed`,
    order: 'Hit in a fair order',
    'warm-up': 'Warmed up first',
    'enough-shots': 'Enough shots',
    'plan-first': 'Planned before hitting',
    'exclusion-rule': 'Rule for leaving out shots made first',
    'exclusions-even': 'Left out evenly',
    'same-ball': 'One kind of ball',
    conditions: 'Conditions written down',
    'reading-measured': 'Measured, not calculated',
    'hitter-blind': 'Golfer did not see the numbers',
    hitters: 'Six golfers or more',
    interests: 'Interests answered',
    'device-accuracy': 'Monitor accurate enough',
    'shot-numbers': 'No shots missing',
  };
  return titles[check];
}

/** What was found, in whole sentences. */
export function fairnessFound(fact: FairnessFact, telling: Telling): string {
  return foundSentences(fact, telling).map(sentence).join(' ');
}

function foundSentences(fact: FairnessFact, telling: Telling): readonly string[] {
  switch (fact.check) {
    case 'one-thing-varied':
      return sheetSentences(fact, telling);
    case 'order':
      return [orderSentence(fact, telling)];
    case 'warm-up':
      if (fact.swings > 0) {
        const [are, them] = fact.swings === 1 ? ['is', 'does not count'] : ['are', 'do not count'];
        return [`${counted(fact.swings, 'warm-up swing')} ${are} in the file and ${them}`];
      }
      return [fact.stated === null ? 'we wrote down nothing about a warm-up' : `we say: "${fact.stated}"`];
    case 'enough-shots':
      return fact.measures.map((reach) => reachSentence(reach, telling));
    case 'plan-first':
      return [plannedSentence(fact.plan, fact.day)];
    case 'exclusion-rule':
      return [ruleSentence(fact)];
    case 'exclusions-even':
      return [leftOutSentence(fact, telling)];
    case 'same-ball':
      return [ballSentences[fact.ball]];
    case 'conditions':
      return [
        fact.missing.length === 0
          ? 'place, ground, temperature and height are given'
          : `we did not write down ${listed(fact.missing, 'or')}`,
      ];
    case 'reading-measured':
      return [readingSentence(fact)];
    case 'hitter-blind':
      return [blindSentence(fact)];
    case 'hitters':
      return [
        `${counted(fact.golfers, 'golfer')} hit`,
        ...(fact.golfers < 6 ? ['it takes six to say anything about golfers like them'] : []),
      ];
    case 'interests': {
      const how = `how ${fact.golfers === 1 ? 'the' : 'each'} golfer is linked to the shop`;
      return [`we answer who sells, lent and paid, ${fact.linked ? 'and' : 'but not'} ${how}`];
    }
    case 'device-accuracy':
      return accuracySentences(fact, telling);
    case 'shot-numbers':
      return [numberSentences[fact.numbers]];
  }
}

type Fact<Check extends FairnessId> = Extract<FairnessFact, { check: Check }>;

function sheetSentences(
  { differing, partly, alike }: Fact<'one-thing-varied'>,
  { nameOf }: Telling,
): readonly string[] {
  const valuesOf = ({ item, values }: BuildDifference): string =>
    `the ${item} (${values.map(({ contender, value }) => `${nameOf(contender)} ${value}`).join('; ')})`;
  const known =
    differing.length > 0
      ? [`${listed(differing.map(valuesOf))} differed as well`]
      : alike === 0
        ? ['we wrote down nothing else about them']
        : [
            `we wrote down ${counted(alike, 'other thing')}, and ${alike === 1 ? 'it was' : 'they were'} the same for all`,
          ];
  return [
    ...known,
    ...partly.map(
      ({ item, values }) =>
        `we wrote down the ${item} for ${listed(values.map(({ contender }) => nameOf(contender)))} only`,
    ),
  ];
}

const openWords: Readonly<Partial<Record<OverlayId, string>>> = {
  'order-few-visits': 'too few spells for each',
  'order-lever': 'some mostly later than others',
  'order-drift': 'while the results drifted',
};

function orderSentence({ order, openBy }: Fact<'order'>, { nouns }: Telling): string {
  if (order === 'unknown') return 'we do not know the order of the shots';
  return [
    `the ${nouns} were hit ${orderInWords(order)}`,
    ...openBy.flatMap((id) => openWords[id] ?? []),
  ].join(', ');
}

function reachSentence({ metric, finds, margin }: Reach, telling: Telling): string {
  const printing = printingFor(metric, telling);
  const enough = mattersWords(printing);
  const print = (value: number): string => atLeastWords(value, printing);
  const { name } = metrics[metric];
  if (finds !== null) {
    return `in ${name}, a test of this size would find a true difference of ${print(finds)} four times in five; ${enough} would matter`;
  }
  if (margin === null) return `there are too few shots to judge ${name}`;
  return `in ${name}, the margin of error is ${print(margin)}; ${enough} or less was needed`;
}

/** When the plan was written, as a clause. */
export function plannedSentence(plan: PlanStanding, day: string | null): string {
  const date = day === null ? 'no date' : dateInWords(day);
  switch (plan) {
    case 'on-record':
      return 'the plan was on record before the session';
    case 'on-record-that-day':
      return 'the plan was on record on the day, before the first shot';
    case 'stated':
      return `the shop says ${date}; no dated record exists`;
    case 'changed':
      return 'the plan on record is another one';
    case 'afterwards':
      return `the plan is dated ${date}, not before the session`;
    case 'not-said':
      return 'we give no date for a plan';
  }
}

function ruleSentence({ rule, made }: Fact<'exclusion-rule'>): string {
  if (rule === null) return 'we wrote down no rule';
  switch (made) {
    case 'before':
      return `the shop says that its rule came first: "${rule}"`;
    case 'not-before':
      return 'the rule is no older than the session';
    case 'not-said':
      return `the rule is "${rule}", and we give no date for it`;
  }
}

function leftOutSentence({ leftOut, answerChanges }: Fact<'exclusions-even'>, { nameOf }: Telling): string {
  if (leftOut.every(({ count }) => count === 0)) return 'we left none out';
  const each = leftOut.map(({ id, count }) => `${count === 0 ? 'none' : countWord(count)} of ${nameOf(id)}`);
  return `we left out ${listed(each)}${answerChanges ? '; an answer changes when they are counted' : ''}`;
}

const ballSentences: Readonly<Record<Fact<'same-ball'>['ball'], string>> = {
  same: 'the shop says that one kind of ball was used for all',
  'not-same': 'not all were hit with one kind of ball',
  described: 'we describe a ball, and do not say whether all were hit with that kind',
  'not-said': 'we wrote down nothing about the ball',
};

function readingSentence({ measures, calculated, stated }: Fact<'reading-measured'>): string {
  const named = (own: readonly MetricId[]): string => listed(own.map((id) => metrics[id].name));
  const was = (own: readonly MetricId[]): string => (own.length === 1 ? 'was' : 'were');
  if (calculated.length > 0) return `${named(calculated)} ${was(calculated)} calculated, not measured`;
  return stated
    ? `the shop says that ${named(measures)} ${was(measures)} measured`
    : `nobody wrote down whether ${named(measures)} ${was(measures)} measured`;
}

function blindSentence({ golfers, saw }: Fact<'hitter-blind'>): string {
  const one = golfers === 1;
  switch (saw) {
    case 'yes':
      return `${one ? 'the' : 'a'} golfer could see the numbers`;
    case 'no':
      return `the shop says that ${one ? 'the golfer could not' : 'no golfer could'} see the numbers`;
    case 'not-said':
      return 'nobody wrote down who could see the numbers';
  }
}

function accuracySentences(
  { measures, near }: Fact<'device-accuracy'>,
  { system }: Telling,
): readonly string[] {
  const silent = measures.filter(({ accuracy }) => accuracy === null);
  if (silent.length === measures.length) return ['no accuracy is stated for what we judged'];
  const told = measures.flatMap(({ metric, accuracy, matters }) => {
    if (accuracy === null) return [];
    const text = (value: number): string =>
      mattersWords({ matters: toReader(value, metric, system), unit: unitFor(metric, system) });
    return [
      `${metrics[metric].name} is stated to be accurate to ±${text(accuracy)}; ${text(matters)} would matter`,
    ];
  });
  return [
    ...told,
    ...(near ? ['that is too close to the difference we found'] : []),
    ...(silent.length === 0
      ? []
      : [`no accuracy is stated for ${listed(silent.map(({ metric }) => metrics[metric].name))}`]),
  ];
}

const numberSentences: Readonly<Record<Fact<'shot-numbers'>['numbers'], string>> = {
  whole: 'shot numbers run without a break',
  missing: 'some shot numbers are missing',
  'not-all': 'not every shot has a number',
};
