import { eased, held, type CoefficientSet } from './coefficientSet.ts';

const spinParameter = [0.044, 0.218] as const;
const reynolds = [0.81e5, 2.0e5] as const;

// Steep at its upper end, where slow balls pass it: let go gently there.
const withinReach = (spin: number): number => Math.max(eased(spin, spinParameter[1], 0.08), spinParameter[0]);

/** The worked example of the governing bodies' own method of testing balls: one ball, 42 shots on an indoor range. */
export const ballTest2001: CoefficientSet = {
  id: 'ball-test-2001',
  name: 'the ball-test patent of 2001',
  source:
    'Lieberman, Smits, Quintavalla and others 2001, US patent 6,186,002 B1, worked example; by way of one transcription',
  range: { spinParameter, reynolds },
  drag: (spin, re) => {
    const s = withinReach(spin);
    return 0.2028 - 0.2159 * s + 2.8466 * s * s + 0.0165e-5 * held(re, reynolds);
  },
  lift: (spin, re) => {
    const s = withinReach(spin);
    const r = held(re, reynolds) / 1e5;
    const lift = 0.086 + 0.6463 * s + 1.4789 * s * s - 0.0122 / (r * r);
    return spin < s ? (lift * spin) / s : lift;
  },
  spinDecay: 2.0e-5,
  usualDragScale: null,
};
