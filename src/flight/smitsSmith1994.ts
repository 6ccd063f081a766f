import { held, type CoefficientSet } from './coefficientSet.ts';

const reynolds = [0.7e5, 2.1e5] as const;
// The fit is for drives, S 0.08 to 0.2; the measurements behind it reach from 0.04 to 1.4.
const measuredSpin = [0, 1.4] as const;

export const smitsSmith1994: CoefficientSet = {
  id: 'smits-smith-1994',
  name: 'Smits and Smith 1994',
  source:
    'Smits & Smith 1994, Science and Golf II, 340-347: a wind tunnel, fit for drives; by way of two transcriptions that agree',
  range: { spinParameter: [0.08, 0.2], reynolds },
  drag: (spin, re) =>
    0.24 +
    0.18 * held(spin, measuredSpin) +
    0.06 * Math.sin((Math.PI * (held(re, reynolds) - 90000)) / 200000),
  lift: (spin) => 0.54 * held(spin, measuredSpin) ** 0.4,
  spinDecay: 2.0e-5,
  usualDragScale: null,
};
