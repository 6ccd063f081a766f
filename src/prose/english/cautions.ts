import { metrics } from '../../trade/metrics.ts';
import type { MetricId } from '../../trade/metrics.ts';
import type { VerdictId } from '../../findings/verdict.ts';
import { printSize, stepOf, type Printing } from '../printSteps.ts';
import { formatStep, printStated } from '../numbers.ts';
import { toReader, unitFor, withUnit } from '../readerUnits.ts';
import type { CalculatedHow, Caution, CautionFactsOf, PairAnswer } from '../statement.ts';
import { printingFor, type Telling } from '../telling.ts';
import { capitalised, listed } from '../words.ts';
import { comparisonOf } from './comparisons.ts';
import { causeOf, namesOf } from './names.ts';
import { atLeastWords } from './ranges.ts';
import { shotsLeftOut } from './shotsLeftOut.ts';

/** A caution in a sentence or two: the pair, the measure, and how large the effect could be. */
export function sayCaution(caution: Caution, telling: Telling): string {
  const { facts, about, pairs } = caution;
  const printing = printingFor(about.metric, telling);
  const name = metrics[about.metric].name;
  const whose = `the ${name} answer ${pairNames(pairs, 'for', telling)}`;
  const difference = `the ${name} difference ${pairNames(pairs, 'between', telling)}`;
  const things = thingsOf(pairs, telling);
  const size = (si: number): string => withUnit(printSize(si, printing), printing.unit);
  switch (facts.overlay) {
    case 'one-after-another':
      return `${capitalised(things)} were hit one after another.${driftWords(facts.drift, pairs, size, telling)}`;
    case 'order-unknown':
      return `The order of the shots is not known.${driftWords(facts.drift, pairs, size, telling)}`;
    case 'order-drift':
      return `${capitalised(name)} drifted during the test, by enough to move ${difference}.${driftWords(facts.drift, pairs, size, telling)}`;
    case 'order-lever':
      return `Of ${things}, some were mostly hit later than others.${driftWords(facts.drift, pairs, size, telling)}`;
    case 'order-few-visits':
      return `${capitalised(things)} were hit in only a few spells each, so one good or bad spell could explain ${pairs.length === 1 ? 'the difference' : 'a difference'} in ${name}.`;
    case 'depends-on-left-out':
      return leftOut(whose, facts.leftOut, facts.whole, about.metric);
    case 'uneven-readings':
      return uneven(facts.of, caution, telling);
    case 'matters-unusual':
      return unusualMatters(facts, about.metric, telling);
    case 'golfers-apart':
      return `The golfers differ: ${difference} is not under what matters for each of them, so their average tells of nobody in particular.`;
    case 'visits-alike':
      return `Shots of one spell resemble each other: with each spell counted as one, ${difference} is not sure.`;
    case 'mixed-with-swing':
      return swing(facts.measures, difference, telling);
    case 'leans':
      return `Most of our checks do not confirm ${whose}.`;
    case 'rests-on-one-shot':
      return `${capitalised(whose)} rests on one shot far from the others: without it we could not tell.`;
    case 'near-device':
      return `${capitalised(difference)} is near the smallest that the monitor can tell${facts.accuracy === null ? '' : `: it is stated to be right to ${withUnit(printStated(toReader(facts.accuracy, about.metric, telling.system)), printing.unit)}`}.`;
    case 'modelled-reading':
      return calculated(facts.by, name);
    case 'few-shots':
      return fewShots(facts.detectable, name, printing);
  }
}

/** "for Heron and Wren and for Heron and Plover"; where every two are meant, of all of them at once. */
function pairNames(pairs: readonly PairAnswer[], preposition: 'for' | 'between', telling: Telling): string {
  if (pairs.length > 1 && isEveryPair(pairs, telling)) return `${preposition} the ${telling.nouns}`;
  return listed(
    pairs.map(({ ahead, behind }) => `${preposition} ${telling.the(ahead)} and ${telling.the(behind)}`),
  );
}

/** All that these pairs are of: "Heron, Wren and Plover". */
function thingsOf(pairs: readonly PairAnswer[], telling: Telling): string {
  if (pairs.length > 1 && isEveryPair(pairs, telling)) return `the ${telling.nouns}`;
  return namesOf([...new Set(pairs.flatMap(({ ahead, behind }) => [ahead, behind]))], telling);
}

function isEveryPair(pairs: readonly PairAnswer[], { findings: { contenders } }: Telling): boolean {
  return pairs.length === (contenders.length * (contenders.length - 1)) / 2;
}

/** How large a drift would have to be: "A steady drift of about 2,900 rpm from the first shot to the last would alone make the difference." */
function driftWords(
  drift: number | null,
  pairs: readonly PairAnswer[],
  size: (si: number) => string,
  telling: Telling,
): string {
  if (drift === null) {
    return telling.findings.design.hitters === 1
      ? ' A golfer who warmed up or tired could hide or make a difference.'
      : ' Golfers who warmed up or tired could hide or make a difference.';
  }
  return ` A steady drift of about ${size(drift)} from the first shot to the last would alone make ${pairs.length === 1 ? 'the difference' : 'the smallest difference seen'}.`;
}

/** Of whom more readings are missing; two are told by name, several among all they are beside. */
function uneven(
  of: readonly string[],
  { about, pairs }: Pick<Caution, 'about' | 'pairs'>,
  telling: Telling,
): string {
  const { name } = metrics[about.metric];
  const [first] = pairs;
  const than =
    pairs.length === 1 && first !== undefined
      ? `than for ${telling.the(of.includes(first.ahead) ? first.behind : first.ahead)}`
      : `than for others of ${thingsOf(pairs, telling)}`;
  const average = of.length === 1 ? 'its average' : 'their averages';
  return `Readings of ${name} are missing more often for ${namesOf(of, telling)} ${than}, which could move ${average}.`;
}

/** How far what counts as enough is from what is usual, who set it, and whether that was before the session. */
function unusualMatters(
  { matters, from, onRecord }: CautionFactsOf<'matters-unusual'>,
  metric: MetricId,
  { system }: Telling,
): string {
  const inWords = (si: number): string =>
    withUnit(printStated(toReader(si, metric, system)), unitFor(metric, system));
  const who = from === 'shop' ? 'We set it for all our tests' : 'We set it for this test';
  const when = onRecord
    ? 'a record from before the session holds it'
    : 'no record shows that it was set before the session';
  return `A ${metrics[metric].name} difference counts as enough to matter here from ${inWords(matters)}, where ${inWords(metrics[metric].matters)} is usual. ${who}; ${when}.`;
}

function leftOut(whose: string, shots: number, whole: VerdictId | null, metric: MetricId): string {
  const those = shotsLeftOut(shots, 'shots left out');
  const it = shots === 1 ? 'it' : 'them';
  return `${capitalised(whose)} depends on ${those}: with ${it} counted ${wholeWords(whole, metric)}.`;
}

function wholeWords(whole: VerdictId | null, metric: MetricId): string {
  const { verb, more } = comparisonOf(metric);
  switch (whole) {
    case 'clear':
      return 'the difference would be clear';
    case 'size-unsure':
    case 'maybe-small':
      return 'there would be a difference of uncertain size';
    case 'small':
    case 'level':
      return 'no difference would matter';
    case 'too-close':
      return `we could not tell which ${verb} ${more}`;
    case 'not-judged':
    case null:
      return 'it would be another one';
  }
}

function swing(
  measures: CautionFactsOf<'mixed-with-swing'>['measures'],
  difference: string,
  telling: Telling,
): string {
  const told = measures.map(({ id, worth, in: metric }) => {
    const unit = unitFor(metric, telling.system);
    const low = toReader(worth[0], metric, telling.system);
    const high = toReader(worth[1], metric, telling.system);
    const step = stepOf((high - low) / 2, metric, 1);
    return `${metrics[id].name} (worth ${formatStep(low, step)} to ${withUnit(formatStep(high, step), unit)})`;
  });
  const differed = told.length === 0 ? 'The swing differed' : `${capitalised(listed(told))} differed`;
  return `${differed} by enough to explain ${difference}, so we cannot say how much is ${causeOf(telling)} and how much the swing.`;
}

function calculated(by: CalculatedHow, name: string): string {
  switch (by) {
    case 'flight-model':
      return `${capitalised(name)} was calculated by our own flight model, not measured.`;
    case 'calculated':
      return `${capitalised(name)} was calculated from the launch, not watched.`;
    case 'estimated':
      return `${capitalised(name)} was estimated by the monitor, not measured.`;
    case 'looks-estimated':
      return `${capitalised(name)} looks estimated: one number stands on many shots.`;
  }
}

function fewShots(detectable: number | null, name: string, printing: Printing): string {
  return detectable === null
    ? `So few shots make a first look only.`
    : `So few shots make a first look only: a real ${name} difference of ${atLeastWords(detectable, printing)} would be found four times in five.`;
}
