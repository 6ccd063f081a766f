import { fewestContenders, mostContenders } from '../intake/authored/contenderChecks.ts';
import { plainNoun } from '../intake/authored/plainNoun.ts';
import { metricNamed, nearestMetric } from '../intake/authored/metricName.ts';
import { quantityOf, type Quantity } from '../intake/authored/quantity.ts';
import { readWith } from '../intake/authored/readWith.ts';
import { foldedName } from '../intake/contenderNames.ts';
import type { PlannedTurns } from '../intake/plan/plannedOrder.ts';
import { clubKinds, isClubKind, type ClubKind } from '../trade/clubKind.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';
import type { PlayerBand } from '../trade/typicalSpread.ts';
import type { Reading } from './reading.ts';

/** Names of contenders, separated by commas or semicolons. */
export function readContenders(typed: string): Reading<readonly string[]> {
  return checkContenders(typed.split(/[;,]/));
}

export function checkContenders(typed: readonly string[]): Reading<readonly string[]> {
  const names = typed.map((name) => name.trim()).filter((name) => name !== '');
  const folded = names.map(foldedName);
  if (names.length < fewestContenders || names.length > mostContenders)
    return { expected: `${fewestContenders} to ${mostContenders} names` };
  if (new Set(folded).size < names.length) return { expected: 'names that differ' };
  if (folded.some((name) => /^warm(?:ing)?[\s-]*up$/.test(name)))
    return { expected: 'names of what is compared; warm-up swings are no part of the order' };
  return { value: names };
}

/** What differed, as sentences name it. */
export function readNoun(typed: string): Reading<string> {
  const noun = plainNoun(typed);
  return noun === '' ? { expected: 'one noun' } : { value: noun };
}

/** Null for no answer. */
export function readOptional(typed: string): Reading<{ readonly text: string | null }> {
  return { value: { text: typed === '' ? null : typed } };
}

export function readMetric(typed: string): Reading<MetricId> {
  const metric = metricNamed(typed);
  if (metric !== null) return { value: metric };
  const near = nearestMetric(typed);
  return {
    expected: `a metric such as carry or ball speed${near === null ? '' : `; did you mean ${metrics[near].name}?`}`,
  };
}

/** A quantity above zero in the unit of a metric. */
export function readQuantity(metric: MetricId): (typed: string) => Reading<Quantity> {
  return (typed) => {
    const read = readWith(quantityOf(metric), typed);
    if ('troubles' in read) return { expected: read.troubles[0]?.expected ?? 'a number with its unit' };
    return read.value.value > 0 ? { value: read.value } : { expected: 'a number above zero' };
  };
}

/** Null for a club of another kind. */
export function readClubKind(typed: string): Reading<{ readonly kind: ClubKind | null }> {
  const word = typed.toLowerCase();
  if (word === 'other') return { value: { kind: null } };
  return isClubKind(word) ? { value: { kind: word } } : { expected: `${clubKinds.join(', ')} or other` };
}

export function readBand(typed: string): Reading<PlayerBand> {
  const word = typed.toLowerCase();
  return word === 'good' || word === 'mid' ? { value: word } : { expected: 'good or mid' };
}

export function readTurns(typed: string): Reading<PlannedTurns> {
  const word = typed.toLowerCase().replace(/\s+/g, '-');
  if (word === 'rotation' || word === 'random-rotation') return { value: { kind: 'rotation' } };
  const visit = /^mini-?blocks?(?:-(?:of-)?([23]))?$/.exec(word);
  if (visit !== null) return { value: { kind: 'mini-blocks', shotsAVisit: Number(visit[1] ?? 2) } };
  return { expected: 'rotation, mini-blocks-2 or mini-blocks-3' };
}

const mostEach = 200;

export function readShots(typed: string): Reading<number> {
  const shots = /^[1-9]\d{0,3}$/.test(typed) ? Number(typed) : 0;
  return shots >= 3 && shots <= mostEach
    ? { value: shots }
    : { expected: `a whole number from 3 to ${mostEach}` };
}
