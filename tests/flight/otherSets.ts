import type { CoefficientSet } from '../../src/flight/coefficientSet.ts';

/** Coefficients that serve as a truth to be modelled or as exact cases; none is used for a report. */
const set = (
  id: string,
  drag: CoefficientSet['drag'],
  lift: CoefficientSet['lift'],
  spinDecay = 2.0e-5,
): CoefficientSet => ({
  id,
  name: id,
  source: 'for tests',
  range: { spinParameter: [0, 2], reynolds: [0, 3e5] },
  drag,
  lift,
  both: (flow) => {
    flow[2] = drag(flow[0] ?? 0, flow[1] ?? 0);
    flow[3] = lift(flow[0] ?? 0, flow[1] ?? 0);
  },
  spinDecay,
  usualDragScale: null,
});

/** Constant drag, no lift. */
export const constantDrag = (drag: number): CoefficientSet =>
  set(
    'constant-drag',
    () => drag,
    () => 0,
    0,
  );

/**
 * Forces linear in speed: MacDonald & Hanzely 1991 (American Journal of Physics 59, 213), CD = 46/v and CL = 33.4/v,
 * v in ft/s (by way of one transcription); `viscosity` over density and diameter turns Reynolds number into speed.
 */
export const linearInSpeed = (speedPerReynolds: number, lift: boolean): CoefficientSet =>
  set(
    'linear-in-speed',
    (_, re) => 14.0208 / (re * speedPerReynolds),
    (_, re) => (lift ? 10.18032 / (re * speedPerReynolds) : 0),
    0,
  );

/** Lyu, Kensrud, Smith & Tosaya 2018, Proceedings 2(6) 238, one ball of 13 (fits by way of two transcriptions). */
export const lyu2018 = (moreDrag = 0): CoefficientSet =>
  set(
    'lyu-2018',
    (_, re) =>
      moreDrag +
      (re > 0.75e5 ? 1.91e-11 * re * re - 5.4e-6 * re + 0.56 : 1.29e-10 * re * re - 2.59e-5 * re + 1.5),
    (s) => 1.99 * Math.min(s, 0.306) - 3.25 * Math.min(s, 0.306) ** 2,
  );

const bearmanHarveyLift = [
  [0, 0],
  [0.02, 0.081],
  [0.05, 0.111],
  [0.1, 0.144],
  [0.15, 0.177],
  [0.2, 0.211],
  [0.25, 0.247],
  [0.3, 0.276],
] as const;
const bearmanHarveyDrag = [
  [0.02, 0.265],
  [0.05, 0.264],
  [0.1, 0.267],
  [0.15, 0.283],
  [0.2, 0.299],
  [0.25, 0.313],
  [0.28, 0.32],
] as const;

/**
 * Bearman & Harvey 1976, Aeronautical Quarterly 27, 112-122, conventional ball, as replotted by Crabill and others
 * 2019, figure 6b (two transcriptions that agree): straight lines between the points, ends held.
 */
export const bearmanHarvey1976: CoefficientSet = set(
  'bearman-harvey-1976',
  (s) => straight(bearmanHarveyDrag, s),
  (s) => straight(bearmanHarveyLift, s),
);

function straight(points: readonly (readonly [number, number])[], x: number): number {
  const after = points.findIndex(([at]) => at >= x);
  const [x1, y1] = points[after === -1 ? points.length - 1 : after] ?? [0, 0];
  if (after <= 0) return y1;
  const [x0, y0] = points[after - 1] ?? [0, 0];
  return y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
}

/**
 * University of Illinois workbook (A. M. Nathan, 2025, through third-party notes): an integrator check only.
 */
export const workbook2025: CoefficientSet = set(
  'workbook-2025',
  (s, re) => workbookBase(re) + 0.2087217 * s,
  (s) => 0.2294096 * s ** 0.4,
);

function workbookBase(re: number): number {
  if (re >= 1e5) return 0.13248;
  if (re <= 0.5e5) return 1.9451114;
  return 1.9451114 + ((re - 0.5e5) / 0.5e5) * (0.13248 - 1.9451114);
}
