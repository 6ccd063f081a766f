import { makeProblem } from '../problems/makeProblem.ts';
import type { Place, Problem } from '../problems/problem.ts';
import type { ExcludedShot, ExclusionEntry, ExclusionLimit } from './authored/exclusions.ts';
import type { Exclusion, Shot } from './session.ts';

/** The rule of a shot that only the file marks as not to be used. */
export const markedInFile = 'marked in the file';

/**
 * The shots with what the report leaves out marked as such. Shots marked in the file stay so, by the rule that the report
 * gives for them if it gives one. An entry that names no shot is a problem, since a mistyped number would silently
 * leave the wrong shot in.
 *
 * @param placeOf where an entry stands in the report
 */
export function applyExclusions(
  shots: readonly Shot[],
  entries: readonly ExclusionEntry[],
  placeOf: (index: number) => Place,
): { readonly shots: readonly Shot[]; readonly problems: readonly Problem[] } {
  if (entries.length === 0) return { shots, problems: [] };
  const numbers = shotNumbers(shots);
  const matching = (shot: Shot): readonly ExclusionEntry[] => entriesFor(shot, numbers.get(shot), entries);
  const used = new Set<ExclusionEntry>();
  const marked = shots.map((shot) => {
    const found = matching(shot);
    found.forEach((entry) => used.add(entry));
    const [first] = found;
    const named = found.find(({ kind }) => kind === 'shot');
    const entry = shot.excluded === null ? first : named;
    return entry === undefined ? shot : { ...shot, excluded: exclusionOf(entry) };
  });
  const problems = entries.flatMap((entry, index) =>
    entry.kind === 'shot' && !used.has(entry) ? [noSuchShot(entry, placeOf(index), shots, numbers)] : [],
  );
  return { shots: marked, problems };
}

/**
 * The entries that a shot is left out by.
 *
 * @param number by which entries name it, of `shotNumbers`
 */
export function entriesFor<Entry extends ExclusionEntry>(
  shot: Shot,
  number: number | undefined,
  entries: readonly Entry[],
): readonly Entry[] {
  return entries.filter((entry: ExclusionEntry) =>
    entry.kind === 'shot' ? isShot(entry, shot, number) : isBeyond(entry, shot),
  );
}

/** The number of each shot: as the file has it, else its place among the shots of its contender. */
export function shotNumbers(shots: readonly Shot[]): ReadonlyMap<Shot, number> {
  const seen = new Map<string, number>();
  return new Map(
    shots.map((shot) => {
      const place = (seen.get(shot.contender) ?? 0) + 1;
      seen.set(shot.contender, place);
      return [shot, shot.shotNo ?? place];
    }),
  );
}

function isShot(entry: ExcludedShot, shot: Shot, number: number | undefined): boolean {
  if (entry.contender !== shot.contender || entry.shot !== number) return false;
  return entry.hitter === undefined || entry.hitter === shot.hitter;
}

function isBeyond({ metric, below, above }: ExclusionLimit, shot: Shot): boolean {
  const value = shot.values[metric];
  if (typeof value !== 'number') return false;
  return (below !== null && value < below.value) || (above !== null && value > above.value);
}

function exclusionOf(entry: ExclusionEntry): Exclusion {
  if (entry.kind === 'shot') return { rule: entry.rule, reason: entry.reason };
  const sides = [
    ...(entry.below === null ? [] : [`below ${entry.below.typed}`]),
    ...(entry.above === null ? [] : [`above ${entry.above.typed}`]),
  ];
  return { rule: entry.rule ?? `${entry.metric} ${sides.join(' or ')}`, reason: entry.reason };
}

function noSuchShot(
  entry: ExcludedShot,
  place: Place,
  shots: readonly Shot[],
  numbers: ReadonlyMap<Shot, number>,
): Problem {
  const known = shots
    .filter(({ contender }) => contender === entry.contender)
    .map((shot) => numbers.get(shot) ?? 0)
    .sort((x, y) => x - y);
  const shown = known.length > 12 ? `${known.slice(0, 12).join(', ')}, ...` : known.join(', ');
  return makeProblem('exclusion-matches-nothing', place, {
    expected: known.length === 0 ? `a shot of ${entry.contender}` : `a shot of ${entry.contender}: ${shown}`,
    found: String(entry.shot),
    cure: 'Write the number that stands in the shot column of the file.',
  });
}
