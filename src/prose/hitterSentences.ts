import type { HitterGap, MetricFindings, PairFindings } from '../findings/findings.ts';
import { metrics } from '../trade/metrics.ts';
import { surestFirst } from './answer.ts';
import { comparativeOf } from './comparatives.ts';
import { printAt, printLimit, stepFor } from './numbers.ts';
import { toReader, unitFor, withUnit } from './readerUnits.ts';
import type { Telling } from './telling.ts';
import { capitalised, counted, countWord, listed } from './words.ts';

/** What is said of one pair, golfer by golfer. */
export interface PairByGolfer {
  readonly pair: string;
  readonly sentences: readonly string[];
}

/** In the open under the chart, and what is folded away: a pair after another. */
export interface GolferWords {
  readonly open: readonly string[];
  readonly folded: readonly PairByGolfer[];
}

/**
 * What a test with several golfers says of all its pairs besides the chart of the surest one. In the open: that pair,
 * or under six golfers with many pairs, for whom a pair surely does not come out alike. Empty for one golfer.
 */
export function golferWords(primaries: readonly MetricFindings[], telling: Telling): GolferWords {
  const { unit } = telling.findings.design;
  const pairs = primaries.flatMap((metric) =>
    surestFirst(metric).flatMap((pair) => {
      const sentences = hitterSentences(pair, metric, telling);
      const names = listed([pair.a, pair.b].map(telling.nameOf));
      const name = primaries.length === 1 ? names : `${names}, ${metrics[metric.id].name}`;
      return sentences.length === 0
        ? []
        : [{ pair: name, sentences, apart: hittersApart(pair, metric, telling) }];
    }),
  );
  const [first] = pairs;
  if (first === undefined) return { open: [], folded: [] };
  const told = ({ pair, sentences }: PairByGolfer): PairByGolfer => ({ pair, sentences });
  if (unit === 'hitter') {
    const others = pairs.slice(1);
    return {
      open: [...first.sentences, ...others.flatMap(({ apart }) => apart ?? [])],
      folded: others.map(told),
    };
  }
  if (pairs.length === 1) return { open: first.sentences, folded: [] };
  return {
    open: pairs.flatMap(({ apart }) => apart ?? []),
    folded: pairs.map(told),
  };
}

/**
 * What a test with several golfers says of one pair, golfer by golfer: under six each one apart, from six on how many
 * gained and what another golfer might see. Empty for one golfer.
 */
export function hitterSentences(
  pair: PairFindings,
  metric: MetricFindings,
  telling: Telling,
): readonly string[] {
  const { hitters, unit } = telling.findings.design;
  if (hitters < 2 || pair.byHitter.length === 0) return [];
  const apart = hittersApart(pair, metric, telling);
  if (unit === 'hitter') {
    return [whoGainedSentence(pair, metric, telling), newHitterSentence(pair, metric, telling), apart].filter(
      (words) => words !== null,
    );
  }
  return [
    ...pair.byHitter.map((gap) => hitterLine(gap, pair, metric, telling)),
    ...(apart === null ? [] : [apart]),
  ];
}

/** The fixed words under six golfers. */
export function onlyThese(hitters: number): string {
  const count = countWord(hitters);
  return `This is for these ${count} golfers; other golfers cannot be judged from ${count}.`;
}

/** "7 of 8 golfers averaged farther with Alder than with Birch ..." with what luck alone would make; null under six. */
export function whoGainedSentence(
  pair: PairFindings,
  metric: MetricFindings,
  telling: Telling,
): string | null {
  const { whoGained, byHitter } = pair;
  if (whoGained === null) return null;
  const fewer = byHitter.filter(({ estimate }) => estimate < 0).length;
  const forA = whoGained.more >= fewer;
  const [more, clearly] = forA ? [whoGained.more, whoGained.clearlyMore] : [fewer, whoGained.clearlyLess];
  const [ahead, behind] = (forA ? [pair.a, pair.b] : [pair.b, pair.a]).map(telling.nameOf);
  const clear = clearly === 0 ? 'clearly so for none' : `clearly so for ${countWord(clearly)}`;
  const seen = `${more} of ${whoGained.of} golfers averaged ${comparativeOf(metric.id).more} in ${metrics[metric.id].name} with ${ahead} than with ${behind} (${clear}).`;
  if (2 * more === whoGained.of) return `${seen} No count could be more even.`;
  return `${seen} With no difference, ${more} or more one way ${luckWords(whoGained.byLuck)}.`;
}

function luckWords(chance: number): string {
  const of100 = Math.round(100 * chance);
  return of100 < 1 ? 'comes in fewer than 1 of 100 tests' : `comes in ${of100} of 100 tests`;
}

/** What another golfer's own test of this length would show; null under six golfers. */
export function newHitterSentence(
  pair: PairFindings,
  metric: MetricFindings,
  telling: Telling,
): string | null {
  if (pair.newHitter === null) return null;
  const [low, high] = pair.newHitter;
  const range = rangeWords(low, high, pair, metric, telling);
  return `Another golfer like these, in a test of this length, would see anything from ${range}.`;
}

/** One golfer's own gap: "Golfer one: about 9 yards farther with Alder than with Birch; 2 to 16 would fit." */
export function hitterLine(
  gap: HitterGap,
  pair: PairFindings,
  metric: MetricFindings,
  telling: Telling,
): string {
  const who = capitalised(golfer(gap.hitter));
  const unit = unitFor(metric.id, telling.system);
  const read = (value: number): number => toReader(value, metric.id, telling.system);
  const step = stepFor(unit, gap.ci === null ? null : read((gap.ci[1] - gap.ci[0]) / 2));
  const { more } = comparativeOf(metric.id);
  const size = withUnit(printAt(Math.abs(read(gap.estimate)), step), unit);
  const [ahead, behind] = (gap.estimate >= 0 ? [pair.a, pair.b] : [pair.b, pair.a]).map(telling.nameOf);
  const about = `about ${size} ${more} with ${ahead} than with ${behind}`;
  if (gap.ci === null) return `${who}: ${about}, from too few shots to judge.`;
  const [low, high] = gap.ci;
  if (low > 0 || high < 0) {
    const print = (value: number): string => printLimit(read(value), step, unit, [0]).replace('−', '');
    const [least, most] = low > 0 ? [low, high] : [high, low];
    return `${who}: ${about}; ${print(least)} to ${print(most)} would fit.`;
  }
  return `${who}: cannot tell; ${rangeWords(low, high, pair, metric, telling)} would fit.`;
}

/**
 * Golfers for whom a pair surely does not come out alike: one gained clearly, another did not, and their two gaps
 * differ by more than the shots of both leave open. Null where no two golfers do: then nothing may be said of it.
 */
export function hittersApart(pair: PairFindings, metric: MetricFindings, telling: Telling): string | null {
  const sides = [
    { name: telling.nameOf(pair.a), gained: ({ ci }: HitterGap) => ci !== null && ci[0] > 0 },
    { name: telling.nameOf(pair.b), gained: ({ ci }: HitterGap) => ci !== null && ci[1] < 0 },
  ];
  const { more } = comparativeOf(metric.id);
  const differ = (first: HitterGap, second: HitterGap): boolean =>
    pair.hittersDiffer.some(
      ({ x, y }) =>
        (x === first.hitter && y === second.hitter) || (x === second.hitter && y === first.hitter),
    );
  for (const { name, gained } of sides) {
    const gainers = pair.byHitter.filter(gained);
    const others = pair.byHitter.filter((gap) => !gained(gap) && gap.ci !== null);
    const without = others.filter((other) => gainers.some((own) => differ(own, other)));
    const withIt = gainers.filter((own) => without.some((other) => differ(own, other)));
    if (withIt.length === 0) continue;
    return `${capitalised(more)} with ${name} for ${golfers(withIt)}, but not for ${golfers(without)}: their gaps surely differ.`;
  }
  return null;
}

function golfer(id: string): string {
  return `golfer ${id}`;
}

function golfers(gaps: readonly HitterGap[]): string {
  return listed(gaps.map(({ hitter }) => golfer(hitter)));
}

/** A range counted towards either contender: "Birch 3 farther to Alder 10 yards farther". */
function rangeWords(
  low: number,
  high: number,
  { a, b }: Pick<PairFindings, 'a' | 'b'>,
  metric: MetricFindings,
  telling: Telling,
): string {
  const read = (value: number): number => toReader(value, metric.id, telling.system);
  const unit = unitFor(metric.id, telling.system);
  const step = stepFor(unit, read((high - low) / 2));
  const print = (value: number): string => printLimit(read(value), step, unit, [0]).replace('−', '');
  const { more } = comparativeOf(metric.id);
  const [first, second] = [telling.nameOf(a), telling.nameOf(b)];
  if (low > 0) return `${print(low)} to ${withUnit(print(high), unit)} ${more} with ${first}`;
  if (high < 0) return `${print(high)} to ${withUnit(print(low), unit)} ${more} with ${second}`;
  return `${withUnit(print(low), unit)} ${more} with ${second} to ${withUnit(print(high), unit)} ${more} with ${first}`;
}

/** How many golfers hit, and what that allows to be said. */
export function hittersMeaning({ findings }: Telling): string {
  const { hitters, unit } = findings.design;
  if (hitters === 1) return 'One golfer hit: another may see a gap of another size, or the other way.';
  const who = capitalised(counted(hitters, 'golfer'));
  return unit === 'hitter'
    ? `${who} hit: the answer is about golfers like these.`
    : `${who} hit, each counted alike: the answer is about them, not about other golfers.`;
}
