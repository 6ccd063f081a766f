import { progress, type LongWork } from './progress.ts';

/** From so many reports on, a command says how far it is instead of naming each. */
export const manyReports = 20;

/** Does work that calls `step` after each of its parts, and says how far it is where these are many. */
export async function tellingProgress<Result>(
  work: Omit<LongWork, 'now'>,
  run: (step: () => void) => Promise<Result>,
): Promise<Result> {
  if (work.all <= manyReports) return run(() => {});
  const { step, end } = await progress({ ...work, now: () => performance.now() });
  try {
    return await run(step);
  } finally {
    end();
  }
}
