import { countWord } from '../words.ts';

/** "the one shot left out", "the five shots left out"; of none, what is given for it. */
export function shotsLeftOut(shots: number, whereNone: string): string {
  if (shots === 0) return whereNone;
  return shots === 1 ? 'the one shot left out' : `the ${countWord(shots)} shots left out`;
}
