import type { Problem } from '../../../problems/problem.ts';
import type { Session, Shot } from '../../session.ts';
import { problemOf, type Check } from './check.ts';

/** Shots of one hitter in one file, in the order of the session. */
function groupsOf(session: Session): readonly (readonly Shot[])[] {
  const groups = new Map<string, Shot[]>();
  for (const shot of session.shots) {
    const key = JSON.stringify([shot.hitter, shot.place.file]);
    groups.set(key, [...(groups.get(key) ?? []), shot]);
  }
  return [...groups.values()];
}

/** Two shots in a row, same contender, with one number: a number given twice rather than a new count. */
function repeatedNumbers(session: Session): readonly Problem[] {
  const repeated = groupsOf(session).flatMap((shots) =>
    shots.filter((shot, index) => {
      const before = shots[index - 1];
      return (
        before !== undefined &&
        shot.shotNo !== null &&
        before.shotNo === shot.shotNo &&
        before.contender === shot.contender &&
        before.round === shot.round
      );
    }),
  );
  return problemOf('shot-number-repeated', session, null, repeated, {
    expected: 'a number of its own for each shot',
    found: `shot ${repeated[0]?.shotNo ?? ''} twice in a row, with different readings`,
    cure: 'check whether it is one shot recorded twice; delete one row, or give the second its own number',
  });
}

/** Whether two times can be put in order: both with a date, or both without. */
const comparable = (a: string, b: string): boolean =>
  a.includes('-') === b.includes('-') && a.includes(':') && b.includes(':');

function fallingTimes(session: Session): readonly Problem[] {
  const latest = new Map<string, string>();
  const falling = session.shots.filter(({ hitter, time }) => {
    if (time === null) return false;
    const before = latest.get(hitter);
    latest.set(hitter, time);
    return before !== undefined && comparable(before, time) && time < before;
  });
  return problemOf('times-not-rising', session, null, falling, {
    expected: 'rows in the order of hitting, so that times rise',
    found: `${falling[0]?.time ?? ''} below a later time`,
    cure: 'sort the rows by time, or say "rows: not-in-hit-order" in the report; the order decides what a gap can be put down to',
  });
}

/** Numbers left out of a count, each number seen once. */
function gapsIn(shots: readonly Shot[]): number | null {
  const numbers = shots.flatMap(({ shotNo }) => (shotNo === null ? [] : [shotNo]));
  if (numbers.length < 2 || new Set(numbers).size < numbers.length) return null;
  return Math.max(...numbers) - Math.min(...numbers) + 1 - numbers.length;
}

/** Most shots of one hitter that numbering is followed over. */
const followed = 10_000;

function missingShots(session: Session): readonly Problem[] {
  let missing = 0;
  let first: Shot | null = null;
  for (const shots of groupsOf(session)) {
    if (shots.length > followed) continue;
    const whole = gapsIn(shots);
    const keyOf = ({ contender, round }: Shot): string => JSON.stringify([contender, round]);
    const parts = [...new Set(shots.map(keyOf))].map(
      (key) => gapsIn(shots.filter((shot) => keyOf(shot) === key)) ?? 0,
    );
    const gaps = whole ?? parts.reduce((sum, gap) => sum + gap, 0);
    if (gaps > 0) first ??= shots[0] ?? null;
    missing += gaps;
  }
  const unexplained = missing - session.warmUps;
  if (first === null || unexplained <= 0) return [];
  return problemOf('shots-missing', session, null, [first], {
    expected: 'shot numbers without gaps',
    found: `${unexplained} ${unexplained === 1 ? 'number is' : 'numbers are'} missing from the count`,
    cure: 'say in the report why these shots are not in the file',
    forReader: `Going by the shot numbers, ${unexplained} ${unexplained === 1 ? 'shot is' : 'shots are'} missing from the file.`,
  });
}

/** C14: shot numbers are given once, times rise, and no number is missing. */
export const checkShotOrder: Check = (session, { inHitOrder = true }) => [
  ...repeatedNumbers(session),
  ...(inHitOrder ? fallingTimes(session) : []),
  ...missingShots(session),
];
