import { held, type CoefficientSet } from './coefficientSet.ts';

const reynolds = [0.7e5, 2.1e5] as const;
const [leastReynolds, mostReynolds] = reynolds;
// The fit is for drives, S 0.08 to 0.2; the measurements behind it reach from 0.04 to 1.4.
const mostSpin = 1.4;

function drag(spin: number, re: number): number {
  const wave = Math.sin((Math.PI * (held(re, leastReynolds, mostReynolds) - 90000)) / 200000);
  return 0.24 + 0.18 * held(spin, 0, mostSpin) + 0.06 * wave;
}

function lift(spin: number): number {
  return 0.54 * held(spin, 0, mostSpin) ** 0.4;
}

export const smitsSmith1994: CoefficientSet = {
  id: 'smits-smith-1994',
  name: 'Smits and Smith 1994',
  source:
    'Smits & Smith 1994, Science and Golf II, 340-347: a wind tunnel, fit for drives; by way of two transcriptions that agree',
  range: { spinParameter: [0.08, 0.2], reynolds },
  drag,
  lift,
  both: (flow) => {
    const spin = flow[0] ?? 0;
    const re = flow[1] ?? 0;
    flow[2] = drag(spin, re);
    flow[3] = lift(spin);
  },
  spinDecay: 2.0e-5,
  usualDragScale: null,
};
