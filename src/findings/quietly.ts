import { StatisticsError } from '../stats/statisticsError.ts';

/** What the work comes to, or null where a statistic finds too little to work with. */
export function quietly<Result>(work: () => Result | null): Result | null {
  try {
    return work();
  } catch (error) {
    if (error instanceof StatisticsError) return null;
    throw error;
  }
}
