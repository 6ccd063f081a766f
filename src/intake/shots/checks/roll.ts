import { toCanonical } from '../../../trade/units.ts';
import { epsilon, halfStep, readingsOf, shots, type Check } from './check.ts';
import { readingsProblem } from './readingsProblem.ts';

/** Longest roll that passes without a word: driver 60 yd, others 25 yd. Common practice, no source. */
const longestRoll = { driver: toCanonical(60, 'yd'), other: toCanonical(25, 'yd') };

/**
 * C10: the ball rolls forward, and not without end. A ball that spins back ends short of where it landed, which is
 * true of wedges: a warning, not an error.
 */
export const checkRoll: Check = (session, { club }) => {
  const rounding = halfStep(session, 'total') + halfStep(session, 'carry') + epsilon;
  const readings = readingsOf(session, ['carry', 'total']);
  const back = club === 'wedge' ? [] : readings.filter(({ value }) => value.total < value.carry - rounding);
  const limit = club === 'iron' || club === 'wedge' ? longestRoll.other : longestRoll.driver;
  const long = readings.filter(({ value }) => value.total - value.carry > limit + rounding);
  return [
    ...readingsProblem('total-below-carry', session, back, ({ print }) => ({
      metric: 'total',
      expected: 'a total not below the carry, unless the ball spins back',
      found: `${print('total')} after ${print('carry')}`,
      cure: 'nothing need be done if these balls spun back; else check that the two columns are not exchanged',
    })),
    ...readingsProblem('roll-long', session, long, ({ print }) => ({
      metric: 'total',
      expected: `a roll of at most ${limit === longestRoll.driver ? 60 : 25} yd`,
      found: `${print('total')} after ${print('carry')}`,
      cure: 'check the two columns; the roll is an assumption about the ground, so do not compare totals',
      forReader: `${shots(long.length)} roll farther than grass allows; total distance rests on an assumption about the ground.`,
    })),
  ];
};
