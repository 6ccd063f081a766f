import { meanOf } from '../../../stats/moments.ts';
import { problemOf, readingsOf, type Check } from './check.ts';

/** Below this they differ only by falling on two sides of a rounding limit. */
const tie = 0.001;

/** C19: the ratio of the mean speeds and the mean of the ratios agree in the digit that is printed. */
export const checkSmashAverages: Check = (session) => {
  const readings = readingsOf(session, ['ball_speed', 'club_speed']);
  return session.contenders.flatMap((contender) => {
    const own = readings.filter(({ shot }) => shot.contender === contender);
    const [first] = own;
    if (first === undefined) return [];
    const ofMeans =
      meanOf(own.map(({ value }) => value.ball_speed)) / meanOf(own.map(({ value }) => value.club_speed));
    const ofRatios = meanOf(own.map(({ value }) => value.ball_speed / value.club_speed));
    if (ofMeans.toFixed(2) === ofRatios.toFixed(2) || Math.abs(ofMeans - ofRatios) < tie) return [];
    return problemOf('smash-averages-differ', session, {
      metric: 'smash',
      shots: [first.shot],
      expected: 'one average smash factor, whichever way it is taken',
      found: `${ofMeans.toFixed(3)} from the average speeds, ${ofRatios.toFixed(3)} from each shot (${contender})`,
      cure: 'nothing need be done; do not read anything into the second decimal of this average',
    });
  });
};
