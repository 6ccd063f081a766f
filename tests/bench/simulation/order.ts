import { gamesHowell } from '../../../src/stats/gamesHowell.ts';
import { linearTrend } from '../../../src/stats/linearTrend.ts';
import { moments } from '../../../src/stats/moments.ts';
import type { Random } from '../../../src/stats/random.ts';
import { CARRY_SD, correlatedShots } from './shots.ts';
import { excludesZero, percent } from './tally.ts';

export interface OrderEffect {
  readonly order: 'rotation' | 'one after another';
  readonly contenders: number;
  readonly shots: number;
  /** yards from first to last shot */
  readonly drift: number;
  /** of neighbouring shots */
  readonly correlation: number;
  readonly falseGaps: number;
  /** sessions in which the slope of a drift model is off zero at 95 %, % */
  readonly driftSeen: number;
}

/** Equal contenders under drift and shot-to-shot correlation, judged as if shots were independent. */
export function orderEffect(
  order: OrderEffect['order'],
  contenders: number,
  shots: number,
  drift: number,
  correlation: number,
  trials: number,
  random: Random,
): OrderEffect {
  const count = contenders * shots;
  const sequence = Array.from({ length: count }, (_, i) =>
    order === 'rotation' ? i % contenders : Math.floor(i / shots),
  );
  let apart = 0;
  let seen = 0;
  for (let trial = 0; trial < trials; trial++) {
    const values = correlatedShots(count, CARRY_SD, correlation, random).map(
      (value, i) => value + (drift * i) / (count - 1),
    );
    const groups = Array.from({ length: contenders }, (_, group) =>
      moments(values.filter((_value, i) => sequence[i] === group)),
    );
    if (gamesHowell(groups, 0.95).some(excludesZero)) apart += 1;
    if (excludesZero(linearTrend(sequence, values, 0.95).slope)) seen += 1;
  }
  return {
    order,
    contenders,
    shots,
    drift,
    correlation,
    falseGaps: percent(apart, trials),
    driftSeen: percent(seen, trials),
  };
}
