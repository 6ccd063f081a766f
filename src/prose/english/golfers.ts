import { metrics } from '../../trade/metrics.ts';
import type { GolferStatement } from '../golfers.ts';
import { golfersOf } from '../golfers.ts';
import type { MetricFindings } from '../../findings/findings.ts';
import { printingFor, type Telling } from '../telling.ts';
import { unjudgedPrinting } from '../unjudgedPrinting.ts';
import { capitalised, counted, countWord, listed } from '../words.ts';
import { comparisonOf } from './comparisons.ts';
import { differenceBetween, rangeOf, type Sides } from './differences.ts';
import { estimateWords, oneSidedRange, twoSidedRange } from './ranges.ts';

/** What golfers' own shots say of a pair, in a sentence that names measure, pair and golfers. */
export function sayGolfers(statement: GolferStatement, telling: Telling): string {
  const { metric } = statement.answer.about;
  const { ahead, behind, by } = statement.answer;
  const printing = unjudgedPrinting(printingFor(metric, telling));
  const sides: Sides = [ahead, behind];
  const { verb, sized, [by]: more } = comparisonOf(metric);
  switch (statement.kind) {
    case 'own-difference': {
      const own = turnedUp(statement.estimate, statement.ci, sides);
      const [first, second] = own.sides;
      const seen = `${telling.the(first)} ${verb} ${sized[by].replace('{n}', estimateWords(own.difference, printing))} than ${telling.the(second)}`;
      const who = `${capitalised(telling.golfer(statement.golfer, telling.system))}: `;
      if (statement.ci === null) return `${who}${seen}, from too few shots to judge.`;
      return own.difference.ci[0] > 0
        ? `${who}${seen}, likely ${oneSidedRange(own.difference, printing, false)}.`
        : `${who}we cannot tell whether ${telling.the(first)} or ${telling.the(second)} ${verb} ${more}, ${twoSidedRange(own.difference, own.sides, printing, telling)}.`;
    }
    case 'golfers-differ':
      return `${capitalised(differenceBetween(metric, sides, telling))} is not the same for all: ${telling.the(ahead)} gained more for ${golferList(statement.more, 'one golfer', telling)} than for ${golferList(statement.less, 'another', telling)}.`;
    case 'who-gained': {
      const clearly =
        statement.clearly === 0 ? 'none clearly so' : `${countWord(statement.clearly)} clearly so`;
      const count = `${statement.golfers} of ${statement.of} golfers averaged ${more} in ${metrics[metric].name} with ${telling.the(statement.with)} than with ${telling.the(statement.than)}, ${clearly}.`;
      return 2 * statement.golfers === statement.of
        ? `${count} No split could be more even.`
        : `${count} If the ${telling.nouns} were equal, a split this uneven would turn up in ${luckWords(statement.byLuck)}.`;
    }
    case 'another-golfer': {
      const { range: ci } = statement;
      const range = rangeOf({ estimate: ci[0], ci }, sides, printing, telling);
      const side = ci[0] >= 0 ? ` for ${telling.the(ahead)}` : '';
      return `In ${metrics[metric].name}, another golfer's own test of this length could show ${range}${side}.`;
    }
  }
}

/** An own difference told from whoever it is ahead with. */
function turnedUp(
  estimate: number,
  ci: readonly [number, number] | null,
  [ahead, behind]: Sides,
): {
  readonly sides: Sides;
  readonly difference: { readonly estimate: number; readonly ci: readonly [number, number] };
} {
  const [low, high] = ci ?? [estimate, estimate];
  return estimate >= 0
    ? { sides: [ahead, behind], difference: { estimate, ci: [low, high] } }
    : { sides: [behind, ahead], difference: { estimate: -estimate, ci: [-high, -low] } };
}

function golferList(ids: readonly string[], one: string, telling: Telling): string {
  const [only] = ids;
  if (ids.length === 1 && only !== undefined) return `${one} (${telling.golfer(only, telling.system)})`;
  return `${counted(ids.length, 'golfer')} (${ids.map((id) => telling.golfer(id, telling.system)).join('; ')})`;
}

function luckWords(chance: number): string {
  const of100 = Math.round(100 * chance);
  if (of100 < 1) return 'fewer than one test of 100';
  return of100 === 1 ? 'about one test of 100' : `about ${countWord(of100)} tests of 100`;
}

/** The fixed words under six golfers. */
export function onlyThese(golfers: number): string {
  const count = countWord(golfers);
  return `This is for these ${count} golfers; other golfers cannot be judged from ${count}.`;
}

/** One pair, golfer by golfer. */
interface PairByGolfer {
  readonly pair: string;
  readonly sentences: readonly string[];
}

/** Beside the answer of a report, and a pair after another with its details. */
interface GolferWords {
  readonly atOnce: readonly string[];
  readonly pairs: readonly PairByGolfer[];
}

/**
 * What a test with several golfers says of all its pairs besides the chart of the surest one. At once: its own pair, or under six golfers with many pairs, for whom a pair does not come out alike. Empty for one golfer.
 */
export function golferWords(primaries: readonly MetricFindings[], telling: Telling): GolferWords {
  const pairs = primaries.flatMap((metric) =>
    golfersOf(metric, telling.findings).map(({ answer, statements }) => {
      const say = (own: readonly GolferStatement[]): readonly string[] =>
        own.map((one) => sayGolfers(one, telling));
      const names = listed([answer.ahead, answer.behind].map((id) => telling.the(id)));
      return {
        told: {
          pair: `${capitalised(metrics[metric.id].name)}: ${names}`,
          sentences: say(statements),
        },
        apart: say(statements.filter(({ kind }) => kind === 'golfers-differ')),
      };
    }),
  );
  const [first, ...others] = pairs;
  if (first === undefined) return { atOnce: [], pairs: [] };
  const told = pairs.map((one) => one.told);
  return telling.findings.design.unit === 'hitter' || others.length === 0
    ? { atOnce: [...first.told.sentences, ...others.flatMap(({ apart }) => apart)], pairs: told }
    : { atOnce: pairs.flatMap(({ apart }) => apart), pairs: told };
}
