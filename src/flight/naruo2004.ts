import { held, type CoefficientSet } from './coefficientSet.ts';

const spinParameter = [0.03, 1.13] as const;
const [leastSpin, mostSpin] = spinParameter;

function drag(spin: number): number {
  const s = held(spin, leastSpin, mostSpin);
  return 0.2049 + s * (0.2148 + s * (1.098 + s * (-1.76 + s * 0.751)));
}

function lift(spin: number): number {
  const s = held(spin, leastSpin, mostSpin);
  const lift = 0.0616 + s * (1.25 + s * (-1.644 + s * (1.006 + s * -0.2158)));
  return spin < s ? (lift * spin) / s : lift;
}

/**
 * The recommended set. Below the least spin measured the lift falls in proportion, so that a ball without spin has
 * none; that is our addition.
 */
export const naruo2004: CoefficientSet = {
  id: 'naruo-2004',
  name: 'Naruo, Mizota and Shimozono 2004',
  source:
    'Naruo, Mizota & Shimozono 2004, Transactions of the JSME B 70(697), 2371-2377: full-size balls in a wind tunnel; by way of one transcription',
  range: { spinParameter, reynolds: [0.7e5, 1.25e5] },
  drag,
  lift,
  both: (flow) => {
    const spin = flow[0] ?? 0;
    flow[2] = drag(spin);
    flow[3] = lift(spin);
  },
  spinDecay: 2.0e-5,
  usualDragScale: [0.88, 1.05],
};
