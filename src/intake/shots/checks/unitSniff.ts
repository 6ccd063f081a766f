import { median } from '../../../stats/quantile.ts';
import { fromCanonical } from '../../../trade/units.ts';
import { problemOf, readingsOf, type Check } from './check.ts';

/** Mph between which the middle ball speed of a driver lies. Common practice, no source. */
const usual = [85, 200] as const;

/** C13: a ball speed stated in mph that looks like metres per second or kilometres per hour. */
export const checkUnitSniff: Check = (session, { club }) => {
  const readings = readingsOf(session, ['ball_speed']);
  const [first] = readings;
  if (first === undefined || session.columns.ball_speed?.unit !== 'mph') return [];
  const middle = fromCanonical(median(readings.map(({ value }) => value.ball_speed)), 'mph');
  const looksLike = club === 'driver' && middle < usual[0] ? 'm/s' : middle > usual[1] ? 'km/h' : null;
  if (looksLike === null) return [];
  return problemOf('unit-suspicious', session, {
    metric: 'ball_speed',
    shots: [first.shot],
    expected: `a middle ball speed between ${usual[0]} and ${usual[1]} mph`,
    found: `${middle.toFixed(1)} mph, which looks like ${looksLike}`,
    cure: `check the unit in the heading; if it is ${looksLike}, say so there or under "columns" in the report`,
  });
};
