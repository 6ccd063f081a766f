import { eased, held, type CoefficientSet } from './coefficientSet.ts';

const spinParameter = [0.044, 0.218] as const;
const reynolds = [0.81e5, 2.0e5] as const;
const [leastSpin, mostSpin] = spinParameter;
const [leastReynolds, mostReynolds] = reynolds;

// The fit is steep at its ends in spin, and slow balls pass them: it is let go gently there, which is our addition.
const spinWithin = (spin: number): number => eased(spin, mostSpin, 0.16);
const reynoldsWithin = (re: number): number => held(re, leastReynolds, mostReynolds) / 1e5;

function drag(spin: number, re: number): number {
  const s = spinWithin(spin);
  return 0.2028 - 0.2159 * s + 2.8466 * s * s + 0.0165 * reynoldsWithin(re);
}

function lift(spin: number, re: number): number {
  const s = spinWithin(spin);
  const r = reynoldsWithin(re);
  const lift = 0.086 + 0.6463 * s + 1.4789 * s * s - 0.0122 / (r * r);
  // No spin, no lift: below the least spin measured the lift fades out along a parabola.
  const share = Math.min(1, spin / leastSpin);
  return lift * share * (2 - share);
}

/** The worked example of the governing bodies' own method of testing balls: one ball, 42 shots on an indoor range. */
export const ballTest2001: CoefficientSet = {
  id: 'ball-test-2001',
  name: 'the ball-test patent of 2001',
  source:
    'Lieberman, Smits, Quintavalla and others 2001, US patent 6,186,002 B1, worked example; by way of one transcription',
  range: { spinParameter, reynolds },
  drag,
  lift,
  both: (flow) => {
    const spin = flow[0] ?? 0;
    const re = flow[1] ?? 0;
    flow[2] = drag(spin, re);
    flow[3] = lift(spin, re);
  },
  spinDecay: 2.0e-5,
  usualDragScale: null,
};
