import type { OpenCause } from '../../findings/findings.ts';
import { metrics, type MetricId } from '../../trade/metrics.ts';
import { printLimits, printSize, type Printing } from '../printSteps.ts';
import { shortUnit } from '../readerUnits.ts';
import type { AnswerBlock, AnswerStatement, PairAnswer } from '../statement.ts';
import { printingFor, type Telling } from '../telling.ts';
import { capitalised, counted, countWord, listed } from '../words.ts';
import { statusWords } from './answers.ts';
import { comparisonOf } from './comparisons.ts';
import { namesOf } from './names.ts';
import { limitWords } from './ranges.ts';

/** More pairs, or kinds of answers, than these are counted. */
const mostNamed = 3;

/** Whether sizes stand in a short form, "likely by 8 to 15 yd"; without them why not or how surely; or who is ahead alone. */
export type BriefForm = 'sized' | 'unsized' | 'bare';

/** The whole answer of a measure in one sentence: "Carry of balls, one golfer: Heron clearly past Wren, ...". */
export function sayAnswerInBrief(
  block: AnswerBlock,
  telling: Telling,
  form: BriefForm,
  head: HeadForm = 'whole',
): string {
  return `${headOf(block, telling, { form: head })}: ${toldInBrief(block, telling, form)}.`;
}

/** The same without its head and its full stop, for places that have "Carry of balls, one golfer" by itself. */
export function toldInBrief(block: AnswerBlock, telling: Telling, form: BriefForm): string {
  const told = (form === 'bare' ? inOrder(block.statements, telling) : null) ?? [
    ...block.statements.map((statement) => statementInBrief(statement, telling, form)),
  ];
  return told.join('; ');
}

/** "Heron past Plover, and both past Wren": three of which each is ahead of the next; null of any others. */
function inOrder(statements: readonly AnswerStatement[], telling: Telling): readonly string[] | null {
  const [first, second, ...rest] = statements;
  if (first?.kind !== 'ahead-of' || second?.kind !== 'one' || rest.length > 0) return null;
  const { answer } = second;
  const [leads] = first.answers;
  if (leads === undefined || first.shared !== 'ahead' || !first.all || first.answers.length !== 2)
    return null;
  if (!creditsOne.includes(answer.status) || answer.status === 'small' || leads.status === 'small')
    return null;
  const past = pastWord(answer.about.metric, answer.by);
  return [
    `${telling.the(leads.ahead)} ${past} ${telling.the(answer.ahead)}, and both ${past} ${telling.the(answer.behind)}`,
  ];
}

/**
 * The same with only the first statement told and the other pairs counted; null where that would name a leader whom
 * somebody untold may equal.
 */
export function sayAnswerFirst(
  block: AnswerBlock,
  answers: readonly PairAnswer[],
  telling: Telling,
  form: Exclude<BriefForm, 'sized'>,
): string | null {
  const [first, ...rest] = block.statements;
  if (first === undefined || rest.length === 0) return null;
  const told = pairsOf(first);
  const others = untold(told, answers);
  const credited = told.filter(({ status }) => creditsOne.includes(status));
  if (told.length === 0 || isEqualled(credited, others)) return null;
  return `${headOf(block, telling)}: ${statementInBrief(first, telling, form)}; the other ${others.length === 1 ? 'pair' : counted(others.length, 'pair')}: ${statusesOf(others)}.`;
}

/**
 * The same with nothing of the other pairs, for a place that holds hardly a line; null where anybody untold may equal one
 * that is told to be ahead.
 */
export function sayLeadersAlone(
  block: AnswerBlock,
  answers: readonly PairAnswer[],
  telling: Telling,
  form: HeadForm,
): string | null {
  const told = leadersToldAlone(block, answers, telling);
  return told === null ? null : `${headOf(block, telling, { form })}: ${told}.`;
}

/** The same without its head and its full stop. */
export function leadersToldAlone(
  block: AnswerBlock,
  answers: readonly PairAnswer[],
  telling: Telling,
): string | null {
  const [first] = block.statements;
  if (first === undefined) return null;
  // Who leads among many says by itself who cannot be told from whom.
  if (first.kind === 'leaders') return statementInBrief(first, telling, 'bare');
  const told = pairsOf(first).filter(({ status }) => status !== 'not-judged');
  const named = told.flatMap(({ ahead, behind }) => [ahead, behind]);
  const others = untold(told, answers).filter(
    ({ status, ahead, behind }) =>
      status !== 'not-judged' && !(named.includes(ahead) && named.includes(behind)),
  );
  if (told.length === 0 || isEqualled(told, others)) return null;
  return statementInBrief(first, telling, 'bare');
}

function untold(told: readonly PairAnswer[], answers: readonly PairAnswer[]): readonly PairAnswer[] {
  return answers.filter(({ about: { a, b } }) => !told.some(({ about: own }) => own.a === a && own.b === b));
}

/** Whether any of these leaves it open that somebody is as good as one of those told to be ahead. */
function isEqualled(ahead: readonly PairAnswer[], others: readonly PairAnswer[]): boolean {
  return others.some(
    (other) =>
      !creditsOne.includes(other.status) &&
      ahead.some((one) => one.ahead === other.ahead || one.ahead === other.behind),
  );
}

/** Answers that say who is ahead. */
const creditsOne: readonly PairAnswer['status'][] = ['clear', 'size-uncertain', 'small'];

/** The pairs that a statement names; none where it speaks of a group. */
function pairsOf(statement: AnswerStatement): readonly PairAnswer[] {
  if (statement.kind === 'one') return [statement.answer];
  return statement.kind === 'ahead-of' || statement.kind === 'open' ? statement.answers : [];
}

/** The same with the pairs counted and not named, where names are many or long. */
export function sayAnswerCounted(
  block: AnswerBlock,
  answers: readonly PairAnswer[],
  telling: Telling,
): string {
  return `${headOf(block, telling)}: ${toldCounted(answers)}.`;
}

/** The same without its head: "of three pairs one clear, two cannot tell". */
export function toldCounted(answers: readonly PairAnswer[]): string {
  const [first] = answers;
  return answers.length === 1 && first !== undefined
    ? statusInText(first.status)
    : answers.every(({ status }) => status === first?.status) && first !== undefined
      ? allAlike(first.status, countWord(answers.length))
      : `of ${counted(answers.length, 'pair')} ${statusesOf(answers)}`;
}

/** In the fewest words: how many pairs were told apart; of answers that are alike as `toldCounted` says it. */
export function toldApartOf(answers: readonly PairAnswer[]): string {
  const apart = answers.filter(({ status }) => creditsOne.includes(status)).length;
  return apart === 0 || apart === answers.length
    ? toldCounted(answers)
    : `${countWord(apart)} of ${counted(answers.length, 'pair')} told apart`;
}

/** What is said of several pairs with one and the same answer. */
function allAlike(status: PairAnswer['status'], count: string): string {
  switch (status) {
    case 'clear':
      return `all ${count} pairs clearly apart`;
    case 'size-uncertain':
      return `all ${count} pairs apart, size uncertain`;
    case 'small':
      return `all ${count} pairs apart by too little to matter`;
    case 'level':
      return `all ${count} pairs alike`;
    case 'cannot-tell':
      return `none of ${count} pairs can be told apart`;
    case 'cause-unclear':
      return `differences in all ${count} pairs, cause unclear`;
    case 'not-confirmed':
      return `no difference confirmed in ${count} pairs`;
    case 'not-judged':
      return `none of ${count} pairs judged`;
  }
}

/** "two clear, 13 cannot tell"; one and the same of all is said once, and of more than three only two are named. */
function statusesOf(answers: readonly PairAnswer[]): string {
  const groups = [...Map.groupBy(answers, ({ status }) => status)];
  const [only] = groups;
  if (groups.length === 1 && only !== undefined) return countedStatus[only[0]];
  const named = groups.length > mostNamed ? groups.slice(0, mostNamed - 1) : groups;
  const rest = answers.length - named.reduce((sum, [, own]) => sum + own.length, 0);
  return [
    ...named.map(([status, own]) => `${countWord(own.length)} ${countedStatus[status]}`),
    ...(rest === 0 ? [] : [`${countWord(rest)} otherwise`]),
  ].join(', ');
}

const countedStatus: Readonly<Record<PairAnswer['status'], string>> = {
  clear: 'clear',
  'size-uncertain': 'size uncertain',
  small: 'too small to matter',
  level: 'alike',
  'cannot-tell': 'cannot tell',
  'cause-unclear': 'cause unclear',
  'not-confirmed': 'not confirmed',
  'not-judged': 'not judged',
};

/** "cause unclear": a status as it ends a sentence. */
export const statusAfter = (status: PairAnswer['status']): string => countedStatus[status];

function statusInText(status: PairAnswer['status']): string {
  const words = statusWords[status];
  return words.charAt(0).toLowerCase() + words.slice(1);
}

/** Whether a head says what was varied, or leaves that to the names where every character counts. */
type HeadForm = 'whole' | 'short';

/** "Carry of balls, one golfer"; who calculated it, where that has to be said in the same breath. */
export function headOf(
  { about: { metric }, calculatedBy }: AnswerBlock,
  { findings, nouns }: Telling,
  { average = '', form = 'whole' }: { readonly average?: 'average ' | ''; readonly form?: HeadForm } = {},
): string {
  const { name } = metrics[metric];
  const measured = capitalised(`${average}${calculatedBy === 'monitor' ? 'calculated ' : ''}${name}`);
  const by = calculatedBy === 'flight-model' ? ' by our own flight model' : '';
  const of = form === 'short' ? '' : ` of ${nouns}`;
  return `${measured}${of}${by}, ${counted(findings.design.hitters, 'golfer')}`;
}

/** "balls, one golfer": what was varied, and by how many it was hit. */
export function testedInBrief({ findings, nouns }: Telling): string {
  return `${nouns}, ${counted(findings.design.hitters, 'golfer')}`;
}

function statementInBrief(statement: AnswerStatement, telling: Telling, form: BriefForm): string {
  switch (statement.kind) {
    case 'one':
      return pairInBrief(statement.answer, telling, form);
    case 'ahead-of':
      return aheadInBrief(statement, telling, form);
    case 'together': {
      const names =
        statement.ids.length > 3
          ? `the ${countWord(statement.ids.length)} ${telling.nouns}`
          : namesOf(statement.ids, telling);
      return statement.of === 'level' ? `${names} alike` : `cannot tell ${names} apart`;
    }
    case 'cannot-place':
      return `cannot tell ${telling.the(statement.id)} from ${statement.all && statement.others.length === 2 ? 'either' : namesOf(statement.others, telling, 'or')}`;
    case 'open':
      return openInBrief(statement.answers, telling, form);
    case 'leaders':
      return leadersInBrief(statement, telling, form);
    case 'behind':
      return behindInBrief(statement, telling);
    case 'more':
      return `${counted(statement.count, 'more pair')} in the report`;
  }
}

/** One pair in as few words as are true: "Heron clearly past Wren, likely by 8 to 15 yd". */
function pairInBrief(answer: PairAnswer, telling: Telling, form: BriefForm): string {
  const { status, ahead, behind, firstLook, difference } = answer;
  const { metric } = answer.about;
  const both = `${telling.the(ahead)} and ${telling.the(behind)}`;
  const past = `${pastWord(metric, answer.by)} ${telling.the(behind)}`;
  const printing = printingFor(metric, telling);
  switch (status) {
    case 'clear':
    case 'size-uncertain': {
      const size = difference === null ? '' : sizeOf([answer], status, printing, form);
      return `${lookOf(firstLook && status === 'clear', form)}${telling.the(ahead)} ${surely(status, form)}${past}${size}`;
    }
    case 'small': {
      const size =
        form !== 'sized' || difference === null
          ? 'by too little to matter'
          : `by about ${inShortUnit(printSize(difference.estimate, printing), printing)}, too little to matter`;
      return `${telling.the(ahead)} ${past} ${size}`;
    }
    case 'level':
      return `${both} alike`;
    case 'cannot-tell':
    case 'cause-unclear':
      return answer.because === null ? `cannot tell ${both} apart` : openInBrief([answer], telling, form);
    case 'not-confirmed':
      return answer.alike ? `${both} alike, not confirmed` : `${telling.the(ahead)} ${past}, not confirmed`;
    case 'not-judged':
      return notJudgedInBrief(answer, telling);
  }
}

function lookOf(firstLook: boolean, form: BriefForm): string {
  return firstLook && form !== 'bare' ? 'on a first look ' : '';
}

function surely(status: PairAnswer['status'], form: BriefForm): string {
  return status === 'clear' && form !== 'bare' ? 'clearly ' : '';
}

/** "past" of distances, "steeper than" of everything else. */
export function pastWord(metric: MetricId, by: PairAnswer['by']): string {
  if ((metric === 'carry' || metric === 'total') && by === 'more') return 'past';
  return `${comparisonOf(metric).axis[by]} than`;
}

/** "8 yd", "5°": a printed number with its sign of unit. */
export function inShortUnit(printed: string, { unit }: Printing): string {
  const sign = shortUnit(unit);
  return sign === '' || sign === '°' ? `${printed}${sign}` : `${printed} ${sign}`;
}

/** ", likely by 8 to 15 yd": one range for all of these, from the least to the greatest limit. */
function sizeOf(
  answers: readonly PairAnswer[],
  status: PairAnswer['status'],
  printing: Printing,
  form: BriefForm,
): string {
  if (form === 'bare') return '';
  if (form === 'unsized') return status === 'clear' ? '' : ', size uncertain';
  return `, likely by ${rangeOf(answers, printing)}`;
}

function rangeOf(answers: readonly PairAnswer[], printing: Printing): string {
  const told = answers.flatMap(({ difference }) => (difference === null ? [] : [difference.ci]));
  const ci = [Math.min(...told.map(([low]) => low)), Math.max(...told.map(([, high]) => high))] as const;
  const { lower, upper } = printLimits(ci, printing);
  const most = upper.kind === 'almost-nothing' ? limitWords(upper) : inShortUnit(limitWords(upper), printing);
  return lower.kind === 'almost-nothing' ? `up to ${most}` : `${limitWords(lower)} to ${most}`;
}

function aheadInBrief(
  { shared, answers }: Extract<AnswerStatement, { readonly kind: 'ahead-of' }>,
  telling: Telling,
  form: BriefForm,
): string {
  const [first] = answers;
  if (first === undefined) return '';
  const { metric } = first.about;
  const printing = printingFor(metric, telling);
  const past = pastWord(metric, first.by);
  const alike = answers.every(({ status }) => status === first.status);
  const look = lookOf(
    answers.some(({ firstLook }) => firstLook),
    form,
  );
  const clearly = alike ? surely(first.status, form) : '';
  const size =
    first.status === 'small'
      ? ' by too little to matter'
      : sizeOf(answers, alike ? first.status : 'size-uncertain', printing, form);
  if (shared === 'behind') {
    const leaders = namesOf(
      answers.map(({ ahead }) => ahead),
      telling,
    );
    return `${look}${leaders} ${clearly}${past} ${telling.the(first.behind)}${size}`;
  }
  if (alike || form === 'bare') {
    const others = answers.map(({ behind }) => behind);
    return `${look}${telling.the(first.ahead)} ${clearly}${past} ${namesOf(others, telling)}${size}`;
  }
  const each = answers.map(
    (one) =>
      `${surely(one.status, form)}${past} ${telling.the(one.behind)}${sizeOf([one], one.status, printing, form)}`,
  );
  return `${look}${telling.the(first.ahead)} ${listed(each)}`;
}

/** Differences whose cause the order leaves open, with the reason; where none was seen, that one could be hidden. */
function openInBrief(answers: readonly PairAnswer[], telling: Telling, form: BriefForm): string {
  const seen = answers.filter(({ status }) => status === 'cause-unclear');
  const [first] = seen.length > 0 ? seen : answers;
  if (first === undefined) return '';
  if (seen.length === 0) {
    if (answers.length > mostNamed)
      return `cannot tell ${counted(answers.length, 'pair')} apart, though the order could hide a difference`;
    const pairs = answers.map(({ ahead, behind }) => `${telling.the(ahead)} and ${telling.the(behind)}`);
    return form !== 'sized'
      ? `cannot tell ${listed(pairs, 'or')} apart`
      : `no difference seen between ${listed(pairs, 'or')}, though the order could hide one`;
  }
  const past = pastWord(first.about.metric, first.by);
  const oneBehind = seen.every(({ behind }) => behind === first.behind);
  const told = oneBehind
    ? [
        `${namesOf(
          seen.map(({ ahead }) => ahead),
          telling,
        )} ${past} ${telling.the(first.behind)}`,
      ]
    : [...Map.groupBy(seen, ({ ahead }) => ahead)].map(([ahead, own]) => {
        const behind = own.map((one) => one.behind);
        return `${telling.the(ahead)} ${past} ${namesOf(behind, telling)}`;
      });
  const same = seen.every(({ because }) => because === first.because);
  const why = same ? reasonOf(first, seen.length === 1, telling) : 'the order could explain it';
  return `${told.join(', and ')}, cause unclear${form === 'bare' ? '' : ` (${why})`}`;
}

function reasonOf({ because, hitLater }: PairAnswer, alone: boolean, telling: Telling): string {
  return because === 'lever' && alone && hitLater !== null
    ? `${telling.the(hitLater)} mostly hit later`
    : reasonWords(because);
}

function reasonWords(because: OpenCause | null): string {
  switch (because) {
    case 'order-unknown':
      return 'order unknown';
    case 'lever':
      return 'one mostly hit later';
    case 'drift':
      return 'results drifted';
    case 'few-visits':
      return 'few spells';
    case 'one-after-another':
    case null:
      return 'hit one after another';
  }
}

function notJudgedInBrief({ ahead, behind, notJudged }: PairAnswer, telling: Telling): string {
  const shots = notJudged?.because === 'too-few-shots' ? notJudged : null;
  const names = namesOf(shots?.contenders ?? [ahead, behind], telling);
  const why =
    shots === null ? '' : ` (${shots.fewest === null ? 'too few shots' : counted(shots.fewest, 'shot')})`;
  return `${names} not judged${why}`;
}

function leadersInBrief(
  { about, by, leaders, unplaced, close, firstLook }: Extract<AnswerStatement, { readonly kind: 'leaders' }>,
  telling: Telling,
  form: BriefForm,
): string {
  if (about.of === 'report') return '';
  const { most, least } = comparisonOf(about.metric);
  // "Alder or Birch farthest" says already that the two cannot be told apart.
  if (form === 'bare' && close === null && unplaced.length === 0)
    return `${namesOf(leaders, telling, 'or')} ${by === 'less' ? least : most}`;
  const ahead = `${lookOf(firstLook, form)}${namesOf(leaders, telling)} ${by === 'less' ? least : most}`;
  // Whoever may equal the leaders stands in the same breath.
  const untold = [
    ...(leaders.length > 1 ? ['them apart'] : []),
    ...(close === null ? [] : [`${namesOf(close.ids, telling, 'or')} from ${telling.the(close.best)}`]),
    ...(unplaced.length === 0 ? [] : [`${namesOf(unplaced, telling, 'or')} from any`]),
  ];
  return untold.length === 0 ? ahead : `${ahead}; cannot tell ${untold.join(', nor ')}`;
}

function behindInBrief(
  { about, by, ids, how }: Extract<AnswerStatement, { readonly kind: 'behind' }>,
  telling: Telling,
): string {
  if (about.of === 'report') return '';
  const word = comparisonOf(about.metric).axis[by === 'less' ? 'more' : 'less'];
  const names = namesOf(ids, telling);
  if (how === 'clear') return `${names} clearly ${word}`;
  return `${names} ${word}, ${how === 'small' ? 'by too little to matter' : 'size uncertain'}`;
}
