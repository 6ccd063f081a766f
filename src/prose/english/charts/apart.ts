import type { MetricFindings, StatusId } from '../../../findings/findings.ts';
import { metrics } from '../../../trade/metrics.ts';
import { shortUnit, unitFor } from '../../readerUnits.ts';
import { printingFor, type Telling } from '../../telling.ts';
import { capitalised, countWord } from '../../words.ts';
import { comparedNames, differenceHeads, inBrackets } from './ranges.ts';
import type { AnswerBlock, AnswerStatement, PairAnswer } from '../../statement.ts';
import { sayOpening } from '../answers.ts';
import { sayStatement } from '../statementInWords.ts';
import { comparisonOf } from '../comparisons.ts';
import { byRange } from '../ranges.ts';

/** The words of *How far apart?*; `more` is what the first-named of a pair is, `judged` how many pairs were judged together. */
export function apartWords(metric: MetricFindings, more: string, judged: number, telling: Telling) {
  const { name } = metrics[metric.id];
  const level = metric.pairs[0]?.level ?? 0.95;
  const inUnit = inBrackets(shortUnit(unitFor(metric.id, telling.system)));
  const held = `p is held against ${Number((1 - level).toFixed(3))}${judged > 1 ? ` and allows for all ${countWord(judged)} pairs` : ''}.`;
  return {
    subject: `${metric.pairs.length > 1 ? 'Differences' : 'Difference'} in average ${name} between ${comparedNames(telling)}`,
    found: [],
    signs: [],
    numbers: `${name} differences`,
    tableCaption: `Differences in average ${name}${inUnit}. Positive: the first-named ${more}. ${held}`,
    tableHead: ['Pair', ...differenceHeads(inUnit), 'p', 'Answer'],
  };
}

/** A p value as it is printed: two digits, and never a plain 0 or 1. */
export function printedP(p: number): string {
  if (p < 0.001) return 'under 0.001';
  return p > 0.99 ? 'over 0.99' : p.toPrecision(2);
}

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

/** Why it is not drawn. */
export const noPairJudged = 'No two of them had enough shots to be judged.';
