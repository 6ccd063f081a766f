import type { Problem } from '../../../problems/problem.ts';
import type { Session, Shot } from '../../session.ts';
import { problemOf, type Check } from './check.ts';

/** Shots in groups by a key, each in the order of the session. */
function groupsBy(
  shots: readonly Shot[],
  keyOf: (shot: Shot) => readonly unknown[],
): readonly (readonly Shot[])[] {
  const groups = new Map<string, Shot[]>();
  for (const shot of shots) {
    const key = JSON.stringify(keyOf(shot));
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [shot]);
    else group.push(shot);
  }
  return [...groups.values()];
}

/** Two shots in a row, same contender, with one number: a number given twice rather than a new count. */
function repeatedNumbers(session: Session): readonly Problem[] {
  const repeated = groupsBy(session.shots, ({ hitter, place }) => [hitter, place.file]).flatMap((shots) =>
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
  return problemOf('shot-number-repeated', session, {
    metric: null,
    shots: repeated,
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
  return problemOf('times-not-rising', session, {
    metric: null,
    shots: falling,
    expected: 'rows in the order of hitting, so that times rise',
    found: `${falling[0]?.time ?? ''} below a later time`,
    cure: 'sort the rows by time, or say "rows: not-in-hit-order" in the report; the order decides what a gap can be put down to',
  });
}

/** Numbers left out of a count; null where a number stands twice, so that it is no one count. */
function gapsIn(shots: readonly Shot[]): number | null {
  const numbers = shots.flatMap(({ shotNo }) => (shotNo === null ? [] : [shotNo]));
  if (new Set(numbers).size < numbers.length) return null;
  const [first = 0] = numbers;
  const low = numbers.reduce((least, number) => Math.min(least, number), first);
  const high = numbers.reduce((most, number) => Math.max(most, number), first);
  return numbers.length === 0 ? 0 : high - low + 1 - numbers.length;
}

/** Shots may be counted over a file, or anew for each hitter, each contender, each round: the widest count that fits. */
const counts: readonly ((shot: Shot) => readonly unknown[])[] = [
  () => [],
  ({ hitter }) => [hitter],
  ({ hitter, contender }) => [hitter, contender],
  ({ hitter, contender, round }) => [hitter, contender, round],
];

function gapsInFile(shots: readonly Shot[], widest = 0): number {
  const keyOf = counts[widest];
  if (keyOf === undefined) return 0;
  const gaps = groupsBy(shots, keyOf).map(gapsIn);
  return gaps.includes(null)
    ? gapsInFile(shots, widest + 1)
    : gaps.reduce<number>((sum, gap) => sum + (gap ?? 0), 0);
}

/**
 * The shots of each count with the numbers left out of it: of each file by itself, or of all files together, as where
 * one count was split into a file for each contender.
 */
function gapsOf(session: Session): readonly { readonly shots: readonly Shot[]; readonly gaps: number }[] {
  const ofFiles = groupsBy(session.shots, ({ place }) => [place.file]).map((shots) => ({
    shots,
    gaps: gapsInFile(shots),
  }));
  const together = gapsIn(session.shots);
  return together !== null && together < sumOf(ofFiles)
    ? [{ shots: session.shots, gaps: together }]
    : ofFiles;
}

const sumOf = (counted: readonly { readonly gaps: number }[]): number =>
  counted.reduce((sum, { gaps }) => sum + gaps, 0);

function missingShots(session: Session): readonly Problem[] {
  const counted = gapsOf(session);
  const [first] = counted.flatMap(({ shots, gaps }) => (gaps > 0 ? shots.slice(0, 1) : []));
  const unexplained = sumOf(counted) - session.warmUps;
  if (first === undefined || unexplained <= 0) return [];
  return problemOf('shots-missing', session, {
    metric: null,
    shots: [first],
    expected: 'shot numbers without gaps',
    found: `${unexplained} ${unexplained === 1 ? 'number is' : 'numbers are'} missing from the count`,
    cure: 'say in the report why these shots are not in the file',
    forReader: `Going by the shot numbers, ${unexplained} ${unexplained === 1 ? 'shot is' : 'shots are'} missing from the file.`,
  });
}

/** The counts of a session: one over files that number on from each other, else those of each file. */
function countsOf(session: Session): readonly (readonly Shot[])[] {
  const shots = session.shots.filter(({ shotNo }) => shotNo !== null);
  const distinct = new Set(shots.map(({ shotNo }) => shotNo)).size === shots.length;
  if (distinct) return shots.length === 0 ? [] : [shots];
  return groupsBy(shots, ({ place }) => [place.file]).flatMap((own) => {
    const keyOf = counts.find((each) => groupsBy(own, each).every((group) => gapsIn(group) !== null));
    return keyOf === undefined ? [] : groupsBy(own, keyOf);
  });
}

/** Counts that begin behind 1, though neither warm-ups nor the report tell of what came before. */
function lateStarts(session: Session): readonly Problem[] {
  const gaps = sumOf(gapsOf(session));
  const late = countsOf(session).flatMap((shots) => {
    const first = shots.reduce((least, shot) => ((shot.shotNo ?? 0) < (least.shotNo ?? 0) ? shot : least));
    const before = (first.shotNo ?? 1) - 1;
    return before > 0 ? [{ first, before }] : [];
  });
  const [earliest] = late;
  const missing = late.reduce((sum, { before }) => sum + before, 0);
  if (earliest === undefined || missing <= Math.max(0, session.warmUps - gaps)) return [];
  const { first, before } = earliest;
  const numbers = before === 1 ? 'shot 1' : `shots 1 to ${before}`;
  return problemOf('first-shots-missing', session, {
    metric: null,
    shots: [first],
    expected: 'a count of shots from 1',
    found: `a count from ${first.shotNo ?? ''}`,
    cure: `if ${numbers} were warm-ups or belong to somebody else, say so under "plan: {warm_up: ...}"; else export the session again`,
    forReader: `Shot numbers begin at ${first.shotNo ?? ''}: ${numbers} ${before === 1 ? 'is' : 'are'} not in the file.`,
  });
}

/** C14: shot numbers are given once, times rise, and no number is missing, at the start neither. */
export const checkShotOrder: Check = (session, { inHitOrder = true, startTold = false }) => [
  ...repeatedNumbers(session),
  ...(inHitOrder ? fallingTimes(session) : []),
  ...missingShots(session),
  ...(startTold ? [] : lateStarts(session)),
];
