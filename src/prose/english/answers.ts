import type { OpenCause, StatusId } from '../../findings/findings.ts';
import { fewestHittersAsUnit, fewestShotsJudged } from '../../findings/thresholds.ts';
import { metrics, type MetricId } from '../../trade/metrics.ts';
import { printLimits, printSize, type Printing } from '../printSteps.ts';
import { withUnit } from '../readerUnits.ts';
import type { AnswerBlock, AnswerStatement, CalculatedBy, PairAnswer } from '../statement.ts';
import { printingFor, type Telling } from '../telling.ts';
import { capitalised, counted, countWord, listed, placeInRow } from '../words.ts';
import { comparisonOf } from './comparisons.ts';
import { averagedOver, causeOf, namesOf, testOf } from './names.ts';
import {
  byRange,
  estimateWords,
  limitWithUnit,
  mattersWords,
  numbersOf,
  oneSidedRange,
  twoSidedRange,
} from './ranges.ts';

/** The answer in words, as it stands over a report and in lists. */
export const statusWords: Readonly<Record<StatusId, string>> = {
  clear: 'Clear difference',
  'size-uncertain': 'Difference, size uncertain',
  small: 'Too little to matter',
  level: 'No difference that matters',
  'cannot-tell': 'Cannot tell',
  'cause-unclear': 'Difference seen, cause unclear',
  'not-confirmed': 'Not confirmed',
  'not-judged': 'Not judged',
};

/** The status of a pair with what weakens it: "Clear difference, first look". */
export function sayShort({ status, firstLook }: Pick<PairAnswer, 'status' | 'firstLook'>): string {
  return `${statusWords[status]}${firstLook && status === 'clear' ? ', first look' : ''}`;
}

/** The same beside a bar that is drawn shot by shot: what else was counted, where that decides. */
export function sayBesideBar(answer: PairAnswer): string {
  const bySpells = answer.status === 'cannot-tell' && answer.spellsAlike;
  return bySpells ? `${sayShort(answer)}, each spell counted as one` : sayShort(answer);
}

/** Best estimate and likely range of a pair: "about 12 yards, likely 9 to 15"; empty where it was not judged. */
export function sayNumbers(answer: PairAnswer, telling: Telling): string {
  return numbersOf(answer, printingFor(answer.about.metric, telling), telling);
}

/** One pair in a whole sentence of running text, without its full stop; names and measure stand in it. */
export function sayClause(answer: PairAnswer, telling: Telling): string {
  return pairClause(answer, telling);
}

/** One statement of an answer in running text, without its full stop. */
export function sayStatement(statement: AnswerStatement, telling: Telling): string {
  return statementClause(statement, telling, 'page');
}

/** For whom an answer holds on its page and who calculated it, before its first statement; empty for one that only says why not. */
export function sayOpening({ calculatedBy, statements: [first] }: AnswerBlock, telling: Telling): string {
  return first === undefined || onlySaysWhy(first)
    ? ''
    : `${averagedOver(telling, countWord)}${byWhom(calculatedBy)}`;
}

/** One pair in a sentence. */
export function sayPair(answer: PairAnswer, telling: Telling): string {
  return `${capitalised(pairClause(answer, telling))}.`;
}

/** One pair in a sentence, followed by its numbers where that sentence holds none. */
export function sayPairInFull(answer: PairAnswer, telling: Telling): string {
  const { status, because, withinMatters, spellsAlike } = answer;
  const told =
    status === 'clear' ||
    status === 'size-uncertain' ||
    status === 'level' ||
    (status === 'cannot-tell' && because === null && !withinMatters && !spellsAlike);
  const numbers = told ? '' : sayNumbers(answer, telling);
  return numbers === '' ? sayPair(answer, telling) : `${sayPair(answer, telling)} ${capitalised(numbers)}.`;
}

/** Where an answer stands: on its page under its measure, or by itself. */
type Place = 'page' | 'alone';

/** The answer of a main measure on its page, sentence by sentence. */
export function sayAnswer(block: AnswerBlock, telling: Telling): readonly string[] {
  return sentences(block, averagedOver(telling, countWord), telling, 'page');
}

/** The same where it stands alone: the first sentence says what was tested, and by how many golfers. */
export function sayAnswerAlone(block: AnswerBlock, telling: Telling): readonly string[] {
  return sentences(block, testOf(telling, countWord), telling, 'alone');
}

function sentences(
  { calculatedBy, statements }: AnswerBlock,
  whose: string,
  telling: Telling,
  place: Place,
): readonly string[] {
  return statements.map((statement, index) => {
    const clause = statementClause(statement, telling, place);
    if (index > 0 || onlySaysWhy(statement)) return `${capitalised(clause)}.`;
    return `${capitalised(`${whose}${byWhom(calculatedBy)}${clause}`)}.`;
  });
}

/** Whether a statement says of no golfer anything, so that it needs no "on average over these". */
function onlySaysWhy(statement: AnswerStatement): boolean {
  return statement.kind === 'one' && statement.answer.status === 'not-judged';
}

/** Who calculated the readings, at the head of a sentence; empty where that need not be said. */
export function byWhom(calculatedBy: CalculatedBy): string {
  if (calculatedBy === null) return '';
  return calculatedBy === 'monitor' ? "by the monitor's own calculation, " : 'by our own flight model, ';
}

function statementClause(statement: AnswerStatement, telling: Telling, place: Place): string {
  switch (statement.kind) {
    case 'one':
      return pairClause(statement.answer, telling, place);
    case 'ahead-of':
      return aheadOf(statement, telling);
    case 'together':
      return togetherClause(statement, telling);
    case 'cannot-place':
      return cannotPlace(statement, telling);
    case 'open':
      return openClause(statement, telling, place);
    case 'leaders':
      return leadersClause(statement, telling);
    case 'behind':
      return behindClause(statement, telling);
    case 'more':
      return `${counted(statement.count, 'more pair')} ${statement.count === 1 ? 'stands' : 'stand'} in the report`;
  }
}

function pairClause(answer: PairAnswer, telling: Telling, place: Place = 'page'): string {
  const printing = printingFor(answer.about.metric, telling);
  const { verb, base, [answer.by]: more, alike, sized } = comparisonOf(answer.about.metric);
  const [ahead, behind] = [telling.the(answer.ahead), telling.the(answer.behind)];
  const both = `${ahead} and ${behind}`;
  const { difference } = answer;
  if (difference === null) return notJudgedClause(answer, telling);
  switch (answer.status) {
    case 'clear':
      return `${answer.firstLook ? 'on a first look ' : ''}${ahead} ${verb} ${more} than ${behind}: about ${estimateWords(difference, printing)}, likely ${oneSidedRange(difference, printing, false)}`;
    case 'size-uncertain':
      return `${ahead} ${verb} ${more} than ${behind}, by how much is uncertain: likely ${oneSidedRange(difference, printing, true)}`;
    case 'small':
      return `${ahead} ${verb} ${sized[answer.by].replace('{n}', withUnit(printSize(difference.estimate, printing), printing.unit))} than ${behind}, too little to matter`;
    case 'level':
      return `${both} ${alike}: any difference is likely under ${mattersWords(printing)}`;
    case 'cannot-tell':
      if (answer.because !== null) return openClause({ seen: false, answers: [answer] }, telling, place);
      if (answer.spellsAlike) {
        return `we cannot tell whether ${ahead} or ${behind} ${verb} ${more}, once each spell of shots is counted as one`;
      }
      return answer.withinMatters
        ? `${both} were within about ${mattersWords(printing)} of each other${inMeasure(answer.about.metric)}; we cannot say which ${verb} ${more}`
        : `we cannot tell whether ${ahead} or ${behind} ${verb} ${more}: ${twoSidedRange(difference, [answer.ahead, answer.behind], printing, telling)}`;
    case 'cause-unclear':
      return openClause({ seen: true, answers: [answer] }, telling, place);
    case 'not-confirmed':
      return `${answer.alike ? `${both} may ${alike.replace(comparisonOf(answer.about.metric).verbs, base)}` : `${ahead} may ${base} ${more} than ${behind}`}; ${unconfirmed(answer)}`;
    case 'not-judged':
      return notJudgedClause(answer, telling);
  }
}

/** " in carry", where no verb names the measure. */
function inMeasure(metric: MetricId): string {
  return ` in ${metrics[metric].name}`;
}

function unconfirmed({ unconfirmed: checks }: PairAnswer): string {
  if (checks === null || checks.of === 1) return 'our one check does not confirm it';
  return checks.by === checks.of
    ? `none of our ${countWord(checks.of)} checks confirms it`
    : `${countWord(checks.by)} of our ${countWord(checks.of)} checks do not confirm it`;
}

function notJudgedClause({ ahead, behind, about, notJudged }: PairAnswer, telling: Telling): string {
  const pair = `${telling.the(ahead)} against ${telling.the(behind)}`;
  if (notJudged === null) return `we did not judge ${pair}`;
  const own = namesOf(notJudged.contenders, telling);
  const several = notJudged.contenders.length > 1;
  const few = notJudged.fewest;
  switch (notJudged.because) {
    case 'no-reading':
      return `we did not judge ${own}: there is no reading of ${metrics[about.metric].name}`;
    case 'too-few-shots':
      return `we did not judge ${own}: ${few === null ? 'so few' : countWord(few)} ${few === 1 ? 'shot is' : 'shots are'} too few`;
    case 'too-few-golfers':
      return `we did not judge ${pair}: fewer than ${countWord(fewestHittersAsUnit)} golfers hit both`;
    case 'golfers-not-comparable':
      return `we did not judge ${pair}: the golfers' averages cannot be compared`;
    case 'golfer-too-few-shots':
      return `we did not judge ${pair}: a golfer hit fewer than ${countWord(fewestShotsJudged)} shots with one of them`;
    case 'aim-off-line':
      return `we did not judge ${pair}: most shots finished to one side, and where the golfer aimed is not recorded`;
    case 'all-alike':
      return `we did not judge ${several ? own : pair}: every reading is the same`;
    case 'each-alike':
      return `we did not judge ${several ? own : pair}: the monitor gave one number for every shot with each, so luck cannot be told from the ${telling.noun}`;
  }
}

/** "Sorrel carried farther than both others, likely by 2 to 11 yards"; with a range each where they are not alike sure. */
function aheadOf(
  { shared, answers, all }: Extract<AnswerStatement, { readonly kind: 'ahead-of' }>,
  telling: Telling,
): string {
  const [first] = answers;
  if (first === undefined) return '';
  const printing = printingFor(first.about.metric, telling);
  const { verb, [first.by]: more } = comparisonOf(first.about.metric);
  const look = answers.some(({ firstLook }) => firstLook) ? 'on a first look ' : '';
  const small = first.status === 'small';
  const others =
    all && answers.length === 2
      ? 'both others'
      : namesOf(
          answers.map(({ behind }) => behind),
          telling,
        );
  const range = small ? 'by too little to matter' : `likely by ${widestRange(answers, printing)}`;
  if (shared === 'behind') {
    const leaders = namesOf(
      answers.map(({ ahead }) => ahead),
      telling,
    );
    return `${look}${leaders} ${answers.length === 2 ? 'both ' : ''}${verb} ${more} than ${telling.the(first.behind)}, ${range}`;
  }
  if (small || answers.every(({ status }) => status === first.status)) {
    return `${look}${telling.the(first.ahead)} ${verb} ${more} than ${others}, ${range}`;
  }
  const each = answers.map(({ behind, difference }) =>
    difference === null
      ? `than ${telling.the(behind)}`
      : `than ${telling.the(behind)}, likely by ${byRange(difference, printing)}`,
  );
  return `${look}${telling.the(first.ahead)} ${verb} ${more} ${each.join(', and ')}`;
}

function widestRange(answers: readonly PairAnswer[], printing: Printing): string {
  const told = answers.flatMap(({ difference }) => (difference === null ? [] : [difference]));
  const ci = [
    Math.min(...told.map(({ ci: [low] }) => low)),
    Math.max(...told.map(({ ci: [, high] }) => high)),
  ] as const;
  return byRange({ estimate: ci[0], ci }, printing);
}

function togetherClause(
  { of, ids, most, about }: Extract<AnswerStatement, { readonly kind: 'together' }>,
  telling: Telling,
): string {
  if (about.of === 'report') return '';
  const printing = printingFor(about.metric, telling);
  const names = ids.length > 3 ? `the ${countWord(ids.length)} ${telling.nouns}` : namesOf(ids, telling);
  if (of === 'level') {
    return `${names} ${comparisonOf(about.metric).alike}: any difference between two of them is likely under ${mattersWords(printing)}`;
  }
  const apart =
    most === null
      ? ''
      : `: any two could be up to ${limitWithUnit(printLimits([0, most], printing).upper, printing)} apart`;
  return `we cannot tell ${names} apart${inMeasure(about.metric)}${apart}`;
}

function cannotPlace(
  { id, others, all, withinMatters, about }: Extract<AnswerStatement, { readonly kind: 'cannot-place' }>,
  telling: Telling,
): string {
  if (about.of === 'report') return '';
  const { verb, more, either: moreOrLess } = comparisonOf(about.metric);
  const those = all && others.length === 2 ? 'both others' : namesOf(others, telling);
  const either = all && others.length === 2 ? 'either' : namesOf(others, telling, 'or');
  return withinMatters
    ? `${telling.the(id)} was within about ${mattersWords(printingFor(about.metric, telling))} of ${those}${inMeasure(about.metric)}; we cannot say which ${verb} ${more}`
    : `we cannot tell whether ${telling.the(id)} ${verb} ${moreOrLess} than ${either}`;
}

/** Differences whose cause the order leaves open, with the order in the same breath. */
function openClause(
  { seen, answers }: Pick<Extract<AnswerStatement, { readonly kind: 'open' }>, 'seen' | 'answers'>,
  telling: Telling,
  place: Place,
): string {
  const [first] = answers;
  if (first === undefined) return '';
  const { metric } = first.about;
  if (!seen) {
    return `we saw no difference in ${metrics[metric].name} ${whereNoneWasSeen(answers, telling)}, though ${couldHide(first.because)}`;
  }
  const told = answers.filter(({ status }) => status === 'cause-unclear');
  const parts = seenParts(told, telling, place);
  const because = told.length === 1 ? openReason(told[0] ?? first, telling) : openReasonOfAll(told, telling);
  return `${parts.join(', and ')}, but ${because}, so we cannot say that it was ${causeOf(telling)}`;
}

/** "Bracken and Fennel went farther than Clover", or "Yarrow went farther than Nettle and Teasel": by whichever takes fewer words. */
function seenParts(answers: readonly PairAnswer[], telling: Telling, place: Place): readonly string[] {
  const byAhead = [...Map.groupBy(answers, ({ ahead }) => ahead).values()];
  const byBehind = [...Map.groupBy(answers, ({ behind }) => behind).values()];
  const groups = byBehind.length < byAhead.length ? byBehind : byAhead;
  const names = (ids: readonly string[]): string => namesOf([...new Set(ids)], telling);
  return groups.map((own, index) => {
    const [first] = own;
    if (first === undefined) return '';
    const { metric } = first.about;
    const { verb, verbs, [first.by]: more } = comparisonOf(metric);
    const ahead = new Set(own.map((one) => one.ahead));
    // Under a heading that names the measure, the shorter word; alone, the verb names it.
    const short = place === 'page' && metric === 'carry';
    const did = short ? 'went' : ahead.size > 1 ? verbs : verb;
    return `${names([...ahead])} ${index === 0 ? `${did} ` : ''}${more} than ${names(own.map(({ behind }) => behind))}`;
  });
}

/** "between Heron and Wren"; pairs that would fill lines are counted: "in seven of the ten pairs", "between any two of the five heads". */
function whereNoneWasSeen(answers: readonly PairAnswer[], telling: Telling): string {
  const compared = telling.findings.contenders.length;
  const pairs = (compared * (compared - 1)) / 2;
  if (answers.length <= 3) {
    const each = answers.map(
      ({ ahead, behind }) => `between ${telling.the(ahead)} and ${telling.the(behind)}`,
    );
    return listed(each, 'or');
  }
  return answers.length === pairs
    ? `between any two of the ${countWord(compared)} ${telling.nouns}`
    : `in ${countWord(answers.length)} of the ${countWord(pairs)} pairs`;
}

function openReason(answer: PairAnswer, telling: Telling): string {
  const { places, because, ahead, behind, hitLater } = answer;
  const [one, other] = [telling.the(ahead), telling.the(behind)];
  if (because === 'one-after-another' && places !== null) {
    return `${one} was hit ${placeInRow(places.ahead, places.of)} and ${other} ${placeInRow(places.behind, places.of)}`;
  }
  if (because === 'lever' && hitLater !== null) {
    return hitLater === ahead ? `was mostly hit later` : `${other} was mostly hit later`;
  }
  return causeWords(because);
}

function openReasonOfAll(answers: readonly PairAnswer[], telling: Telling): string {
  const [first] = answers;
  const same = answers.every(({ because }) => because === first?.because);
  if (first === undefined || !same) return `the order of the shots could explain it`;
  return first.because === 'lever'
    ? `some ${telling.nouns} were mostly hit later than others`
    : causeWords(first.because);
}

function causeWords(because: OpenCause | null): string {
  switch (because) {
    case 'order-unknown':
      return 'the order of the shots is not known';
    case 'drift':
      return 'results drifted during the test';
    case 'few-visits':
      return 'each was hit in only a few spells';
    case 'lever':
      return 'one was mostly hit later';
    case 'one-after-another':
    case null:
      return 'they were hit one after another';
  }
}

function couldHide(because: OpenCause | null): string {
  switch (because) {
    case 'order-unknown':
      return 'an order that is not known could hide one';
    case 'drift':
      return 'a drift during the test could hide one';
    case 'few-visits':
      return 'so few spells could hide one';
    case 'lever':
    case 'one-after-another':
    case null:
      return 'the order of the shots could hide one';
  }
}

function leadersClause(
  { about, by, leaders, unplaced, close, firstLook }: Extract<AnswerStatement, { readonly kind: 'leaders' }>,
  telling: Telling,
): string {
  if (about.of === 'report') return '';
  const { verb, verbs, most, least } = comparisonOf(about.metric);
  const ahead = `${firstLook ? 'on a first look ' : ''}${namesOf(leaders, telling)} ${leaders.length > 1 ? verbs : verb} ${by === 'less' ? least : most}`;
  const untold = [
    ...(leaders.length > 1 ? ['them apart'] : []),
    ...(close === null ? [] : [`${namesOf(close.ids, telling, 'or')} from ${telling.the(close.best)}`]),
    ...(unplaced.length === 0 ? [] : [`${namesOf(unplaced, telling, 'or')} from any other`]),
  ];
  return untold.length === 0 ? ahead : `${ahead}; we cannot tell ${untold.join(', nor ')}`;
}

function behindClause(
  { about, by, ids, how }: Extract<AnswerStatement, { readonly kind: 'behind' }>,
  telling: Telling,
): string {
  if (about.of === 'report') return '';
  const { verb, verbs, more, less } = comparisonOf(about.metric);
  const word = by === 'less' ? more : less;
  const did = `${namesOf(ids, telling)} ${ids.length > 1 ? verbs : verb}`;
  if (how === 'clear') return `${did} clearly ${word}`;
  return how === 'small'
    ? `${did} ${word}, by too little to matter`
    : `${did} ${word}, by how much is uncertain`;
}
