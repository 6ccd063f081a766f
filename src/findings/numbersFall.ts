import type { Session, Shot } from '../intake/session.ts';
import { shotsOfHitter } from './shotsOfHitter.ts';

/**
 * The first shot whose number is under one before it, where a golfer's shots have numbers of one count: then rows or
 * numbers are not the order of hitting, and nobody can say which. Null where numbers rise, are missing, or start anew.
 */
export function numbersFall(session: Session): Shot | null {
  for (const hitter of session.hitters) {
    const shots = shotsOfHitter(session, hitter);
    const numbers = shots.map(({ shotNo }) => shotNo);
    if (numbers.includes(null) || new Set(numbers).size < numbers.length) continue;
    const falling = shots.find(({ shotNo }, index) => (shotNo ?? 0) < (numbers[index - 1] ?? 0));
    if (falling !== undefined) return falling;
  }
  return null;
}
