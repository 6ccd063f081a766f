/** So much of the work, or so many milliseconds, must be done before anything can be told of the rest. */
const leastShare = 0.02;
const leastMs = 1000;

/**
 * About how long work of equal parts still takes; empty where too little is done to tell, or all of it.
 *
 * @param elapsedMs since the work began, milliseconds
 */
export function timeLeft(done: number, all: number, elapsedMs: number): string {
  if (done === all || done < leastShare * all || done < 1 || elapsedMs < leastMs) return '';
  const seconds = ((elapsedMs / done) * (all - done)) / 1000;
  if (seconds < 5) return 'a few seconds more';
  if (seconds < 100) return `about ${stepped(seconds, seconds < 20 ? 5 : 10)} seconds more`;
  return `about ${Math.round(seconds / 60)} minutes more`;
}

/** Coarse, so that what is said does not flicker. */
const stepped = (value: number, step: number): number => step * Math.max(1, Math.round(value / step));
