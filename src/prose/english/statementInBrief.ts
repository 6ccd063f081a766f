import type { StatusId } from '../../findings/findings.ts';
import type { MetricId } from '../../trade/metrics.ts';
import { printLimits, printSize, type Printing } from '../printSteps.ts';
import { shortUnit } from '../readerUnits.ts';
import type { AnswerStatement, PairAnswer, StatementOf } from '../statement.ts';
import { printingFor, type Telling } from '../telling.ts';
import { counted, countWord, listed } from '../words.ts';
import { answerWords, tooLittle } from './answerWords.ts';
import { comparisonOf } from './comparisons.ts';
import { namesOf } from './names.ts';
import { causeWords } from './openCause.ts';
import { limitWords } from './ranges.ts';

const after = (status: StatusId): string => answerWords[status].after;

/** More pairs than these are counted. */
const mostNamed = 3;

/** Whether sizes stand in a short form, "likely by 8 to 15 yd"; without them why not or how surely; or who is ahead alone. */
export type BriefForm = 'sized' | 'unsized' | 'bare';

/** One statement of an answer, without a head and a full stop. */
export function statementInBrief(statement: AnswerStatement, telling: Telling, form: BriefForm): string {
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
      return statement.of === 'level'
        ? `${names} ${after('level')}`
        : `${after('cannot-tell')} ${names} apart`;
    }
    case 'cannot-place':
      return `${after('cannot-tell')} ${telling.the(statement.id)} from ${statement.all && statement.others.length === 2 ? 'either' : namesOf(statement.others, telling, 'or')}`;
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
          ? `by ${tooLittle}`
          : `by about ${inShortUnit(printSize(difference.estimate, printing), printing)}, ${tooLittle}`;
      return `${telling.the(ahead)} ${past} ${size}`;
    }
    case 'level':
      return `${both} ${after('level')}`;
    case 'cannot-tell':
    case 'cause-unclear':
      return answer.because === null
        ? `${after('cannot-tell')} ${both} apart`
        : openInBrief([answer], telling, form);
    case 'not-confirmed':
      return answer.alike
        ? `${both} ${after('level')}, ${after('not-confirmed')}`
        : `${telling.the(ahead)} ${past}, ${after('not-confirmed')}`;
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
  if (form === 'unsized') return status === 'clear' ? '' : `, ${after('size-uncertain')}`;
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
  { shared, answers }: StatementOf<'ahead-of'>,
  telling: Telling,
  form: BriefForm,
): string {
  const [first] = answers;
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
      ? ` by ${tooLittle}`
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
      return `${after('cannot-tell')} ${counted(answers.length, 'pair')} apart, though the order could hide a difference`;
    const pairs = answers.map(({ ahead, behind }) => `${telling.the(ahead)} and ${telling.the(behind)}`);
    return form !== 'sized'
      ? `${after('cannot-tell')} ${listed(pairs, 'or')} apart`
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
  return `${told.join(', and ')}, ${after('cause-unclear')}${form === 'bare' ? '' : ` (${why})`}`;
}

function reasonOf({ because, hitLater }: PairAnswer, alone: boolean, telling: Telling): string {
  return because === 'lever' && alone && hitLater !== null
    ? `${telling.the(hitLater)} mostly hit later`
    : causeWords(because).inBrief;
}

function notJudgedInBrief({ ahead, behind, notJudged }: PairAnswer, telling: Telling): string {
  const shots = notJudged?.because === 'too-few-shots' ? notJudged : null;
  const names = namesOf(shots?.contenders ?? [ahead, behind], telling);
  const why =
    shots === null ? '' : ` (${shots.fewest === null ? 'too few shots' : counted(shots.fewest, 'shot')})`;
  return `${names} ${after('not-judged')}${why}`;
}

function leadersInBrief(
  { about, by, leaders, unplaced, close, firstLook }: StatementOf<'leaders'>,
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
  return untold.length === 0 ? ahead : `${ahead}; ${after('cannot-tell')} ${untold.join(', nor ')}`;
}

function behindInBrief({ about, by, ids, how }: StatementOf<'behind'>, telling: Telling): string {
  if (about.of === 'report') return '';
  const word = comparisonOf(about.metric).axis[by === 'less' ? 'more' : 'less'];
  const names = namesOf(ids, telling);
  if (how === 'clear') return `${names} clearly ${word}`;
  return `${names} ${word}, ${how === 'small' ? `by ${tooLittle}` : after('size-uncertain')}`;
}
