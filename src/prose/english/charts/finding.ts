import { tooLittle } from '../answerWords.ts';
import { metrics, type MetricId } from '../../../trade/metrics.ts';
import type { PairFindings, StatusId } from '../../../findings/findings.ts';
import { formatNumber } from '../../numbers.ts';
import type { Printing } from '../../printSteps.ts';
import { printDifference } from '../../printSteps.ts';
import { withUnit } from '../../readerUnits.ts';
import type { SpreadStatement } from '../../spread.ts';
import type { AnswerBlock, AnswerStatement, PairAnswer } from '../../statement.ts';
import type { StraighterStatement } from '../../straighter.ts';
import type { SwingSummary } from '../../swing.ts';
import { printingFor, type Telling } from '../../telling.ts';
import { capitalised, counted, countWord, listed, uncapitalised } from '../../words.ts';
import type { YardsPart, YardsSplit } from '../../yardsSplit.ts';
import { sayShort } from '../answerWords.ts';
import { sayOpening } from '../answers.ts';
import { sayStatement } from '../statementInWords.ts';
import { comparisonOf } from '../comparisons.ts';
import { causeOf, namesOf } from '../names.ts';
import { byRange } from '../ranges.ts';
import { nearerClause } from '../straighter.ts';
import { partName } from '../yards.ts';

// Headings that say what a chart shows: a whole clause each, without a full stop.

/** What was seen, but not what a test set out to check. */
const unplanned = ', seen but not tested for';

const credited: readonly StatusId[] = ['clear', 'size-uncertain', 'small'];

/**
 * "Sorrel carried farther than both others, likely by 2 to 11 yards": the first statement of an answer, and in the same
 * breath whatever keeps the one that it names ahead from being ahead of all.
 */
export function sayAnswerFinding(block: AnswerBlock, telling: Telling): string {
  const [first, ...rest] = block.statements;
  if (first === undefined) return 'Nothing was judged';
  const leaders = pairsOf(first)
    .filter(({ status }) => credited.includes(status))
    .map(({ ahead }) => ahead);
  const equalling = rest.filter((statement) => couldEqual(statement, leaders));
  return capitalised(
    `${sayOpening(block, telling)}${[inShort(first, telling), ...equalling.map((one) => sayStatement(one, telling))].join('; ')}`,
  );
}

/** The pairs that a statement names. */
function pairsOf(statement: AnswerStatement): readonly PairAnswer[] {
  if (statement.kind === 'one') return [statement.answer];
  return statement.kind === 'ahead-of' || statement.kind === 'open' ? statement.answers : [];
}

/** Whether a statement leaves it open that somebody is as good as one of these. */
function couldEqual(statement: AnswerStatement, leaders: readonly string[]): boolean {
  switch (statement.kind) {
    case 'one':
    case 'open':
    case 'ahead-of':
      return pairsOf(statement).some(
        ({ status, ahead, behind }) =>
          !credited.includes(status) && (leaders.includes(ahead) || leaders.includes(behind)),
      );
    case 'together':
      return statement.ids.some((id) => leaders.includes(id));
    case 'cannot-place':
      return [statement.id, ...statement.others].some((id) => leaders.includes(id));
    case 'leaders':
    case 'behind':
    case 'more':
      return false;
  }
}

/** A statement; a single difference by its range alone. */
function inShort(statement: AnswerStatement, telling: Telling): string {
  if (statement.kind !== 'one') return sayStatement(statement, telling);
  const { answer } = statement;
  const { status, difference, ahead, behind, by, firstLook, about } = answer;
  if ((status !== 'clear' && status !== 'size-uncertain') || difference === null)
    return sayStatement(statement, telling);
  const { verb, [by]: more } = comparisonOf(about.metric);
  const look = firstLook && status === 'clear' ? 'on a first look ' : '';
  return `${look}${telling.the(ahead)} ${verb} ${more} than ${telling.the(behind)}, likely by ${byRange(difference, printingFor(about.metric, telling))}`;
}

/** "All 36 shots", "All 144 shots of eight golfers", "34 of 36 shots, two of them left out of the averages". */
export function shotsFinding(
  {
    drawn,
    recorded,
    leftOut,
  }: { readonly drawn: number; readonly recorded: number; readonly leftOut: number },
  metric: MetricId,
  { findings }: Telling,
): string {
  const { hitters } = findings.design;
  const several = findings.metrics.filter(({ role }) => role === 'primary').length > 1;
  const shots =
    drawn === recorded
      ? `All ${formatNumber(recorded, 0)} shots`
      : `${formatNumber(drawn, 0)} of ${formatNumber(recorded, 0)} shots`;
  const golfers = hitters > 1 ? ` of ${countWord(hitters)} golfers` : '';
  const without = leftOut === 0 ? '' : `, ${countWord(leftOut)} of them left out of the averages`;
  const measure = several ? `: ${metrics[metric].name}` : '';
  return `${shots}${golfers}${without}${measure}`;
}

/** "Accuracy: no clear difference", or who finished nearer the line. */
export function straighterFinding({ notJudged, clear }: StraighterStatement, telling: Telling): string {
  switch (notJudged) {
    case 'no-side':
      return 'Accuracy was not measured';
    case 'too-few-shots':
    case 'aim-off-line':
      return 'Accuracy was not judged';
    case null: {
      const [first, ...rest] = clear;
      if (first === undefined) return 'Accuracy: no clear difference';
      const more = rest.length === 0 ? '' : `, and ${counted(rest.length, 'more pair')} differed`;
      return capitalised(`${nearerClause(first, telling)}${more}${unplanned}`);
    }
  }
}

/** What all measures together say of the swing. */
export function swingFinding(summary: SwingSummary): string {
  const names = (ids: readonly MetricId[]): string => listed(ids.map((id) => metrics[id].name));
  switch (summary.kind) {
    case 'swing-too-few':
      return 'There are too few readings of the swing to compare it';
    case 'swing-differed':
      return capitalised(`${names(summary.measures)} differed by enough to matter`);
    case 'swing-same':
      return 'The swing was the same, as far as we could measure it';
    case 'swing-cannot-tell':
      return 'We cannot tell whether the swing was the same';
  }
}

/** A contender's trend over its own shots; unclear where its range holds none. */
export interface TrendTold {
  readonly id: string;
  readonly went: 'rose' | 'fell' | 'unclear';
}

/** "Carry fell with Heron during the test", "No clear trend in carry". */
export function orderFinding(metric: MetricId, trends: readonly TrendTold[], telling: Telling): string {
  const { name } = metrics[metric];
  if (trends.length === 0) return `Too few shots to see a trend in ${name}`;
  const parts = (['rose', 'fell'] as const).flatMap((way) => {
    const ids = trends.filter(({ went }) => went === way).map(({ id }) => id);
    return ids.length === 0 ? [] : [`${way} with ${namesOf(ids, telling)}`];
  });
  return parts.length === 0
    ? `No clear trend in ${name} with any ${telling.noun}`
    : capitalised(`${name} ${listed(parts)} during the test`);
}

/** "By the model about 11 of 12 yards come from ball speed"; of a part that is more than all, what it alone would make. */
export function yardsFinding(
  { parts, gap, ahead, behind }: YardsSplit,
  calculated: boolean,
  printing: Printing,
  telling: Telling,
): string {
  const print = (si: number): string => printDifference(si, printing);
  const told = parts.filter((part) => part.told).toSorted((x, y) => Math.abs(y.value) - Math.abs(x.value));
  const first = told.find(({ value }) => value > 0 && Number(print(value)) <= Number(print(gap)));
  const nameOf = ({ id }: YardsPart): string =>
    id === null ? 'what it does not explain' : partName(id, telling);
  const by = calculated ? 'By a model, of a carry that was calculated too,' : 'By the model';
  const [largest] = told;
  if (first === undefined && largest !== undefined) {
    const [more, less] = largest.value > 0 ? [ahead, behind] : [behind, ahead];
    return `${by} ${nameOf(largest)} alone would put ${more} about ${withUnit(print(largest.value), printing.unit)} ahead of ${less}`;
  }
  if (first === undefined) return `${by} no part of the difference can be named`;
  return `${by} about ${print(first.value)} of ${withUnit(print(gap), printing.unit)} ${print(first.value) === '1' ? 'comes' : 'come'} from ${nameOf(first)}`;
}

/** "Five of 36 shots lie where the model carries farthest". */
export function launchFinding(inside: number, shots: number): string {
  if (inside === 0) return `None of ${counted(shots, 'shot')} lies where the model carries farthest`;
  return capitalised(
    `${countWord(inside)} of ${counted(shots, 'shot')} ${inside === 1 ? 'lies' : 'lie'} where the model carries farthest`,
  );
}

/** How many rows of a pair's own differences have the first-named ahead. */
interface RowsAhead {
  readonly ahead: number;
  readonly of: number;
}

/** "On average Sorrel carried farther than Rowan for seven of eight golfers", with the answer of all where that is another. */
export function golfersFinding(
  { ahead: count, of }: RowsAhead,
  { ahead, behind, by, status, about }: PairAnswer,
  telling: Telling,
): string {
  const { verb, [by]: more } = comparisonOf(about.metric);
  const all =
    count === of
      ? of === 2
        ? 'both golfers'
        : `all ${countWord(of)} golfers`
      : `${countWord(count)} of ${countWord(of)} golfers`;
  return `${capitalised(`on average ${telling.the(ahead)} ${verb} ${more} than ${telling.the(behind)} for ${all}`)}${overAll(status, telling)}`;
}

function overAll(status: StatusId, telling: Telling): string {
  switch (status) {
    case 'clear':
    case 'size-uncertain':
      return '';
    case 'small':
      return `, over all of them by ${tooLittle}`;
    case 'level':
      return '; over all of them there is no difference that matters';
    case 'cannot-tell':
      return '; over all of them we cannot tell';
    case 'cause-unclear':
      return `, but we cannot say that it was ${causeOf(telling)}`;
    case 'not-confirmed':
      return ', but our checks do not confirm it';
    case 'not-judged':
      return '; over all of them we did not judge it';
  }
}

/** "On average Sorrel carried farther than Rowan in three of four reports". */
export function meetingsFinding(
  { ahead: count, of }: RowsAhead,
  [ahead, behind]: readonly [string, string],
  metric: MetricId,
  by: 'more' | 'less',
): string {
  const { verb, [by]: more } = comparisonOf(metric);
  const all = of === 2 ? 'both reports' : `all ${countWord(of)} reports`;
  const reports = count === of ? all : `${countWord(count)} of ${countWord(of)} reports`;
  return `On average ${ahead} ${verb} ${more} than ${behind} in ${reports}`;
}

/** "Heron and Wren came 12 yards apart in carry (clear difference); chance alone passes 4 in one test of 20". */
export function luckFinding(
  { seen, upTo }: { readonly seen: string; readonly upTo: string },
  answer: PairAnswer,
  { unit }: Printing,
  telling: Telling,
): string {
  const short = sayShort(answer);
  const apart = Number(seen) === 0 ? 'out level' : `${withUnit(seen, unit)} apart`;
  return capitalised(
    `${namesOf([answer.ahead, answer.behind], telling)} came ${apart} in ${metrics[answer.about.metric].name} (${uncapitalised(short)}); chance alone passes ${upTo} in one test of 20`,
  );
}

/** "No clear difference in consistency", or who was more consistent in what. */
export function spreadFinding(statements: readonly SpreadStatement[], telling: Telling): string {
  if (statements.every(({ differing }) => differing === null)) return 'Consistency was not judged';
  const parts = statements.flatMap(({ metric, differing }) =>
    (differing ?? []).map(
      ({ steadier, other }) =>
        `${telling.the(steadier)} was more consistent than ${telling.the(other)} in ${metrics[metric].name}`,
    ),
  );
  const [first, second, ...rest] = parts;
  if (first === undefined) return 'No clear difference in consistency';
  const more = rest.length === 0 ? [] : [counted(rest.length, 'more difference')];
  return capitalised(`${listed([first, ...(second === undefined ? [] : [second]), ...more])}${unplanned}`);
}

/** "With every shot counted the answer in carry stays the same". */
export function leftOutFinding(
  { id, pairs }: { readonly id: MetricId; readonly pairs: readonly PairFindings[] },
  changed: readonly string[],
): string {
  const { name } = metrics[id];
  if (changed.length === 0) return `With every shot counted the answer in ${name} stays the same`;
  return `With every shot counted the answer in ${name} changes${pairs.length > 1 ? ` for ${listed(changed)}` : ''}`;
}
