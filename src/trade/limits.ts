import { metrics, type MetricId } from './metrics.ts';

/** Longest carry in metres that a ball speed in m/s allows: the range without air, plus a margin. */
export function longestCarry(ballSpeed: number): number {
  return (1.15 * ballSpeed ** 2) / 9.80665;
}

/** How far in metres a ball may roll back from where it landed. */
export const furthestRollBack = 20;

export function isWithinLimits(value: number, metric: MetricId): boolean {
  const [low, high] = metrics[metric].limits;
  return value >= low && value <= high;
}
