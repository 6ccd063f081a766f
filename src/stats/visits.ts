import { runsOf, type Run } from './runs.ts';

/** Shots with one group in a row, and the set of visits, from 0, in which its group is held beside the others. */
export interface Visit extends Run {
  readonly set: number;
}

/**
 * The visits of a sequence. Where every shot has the number of its set, and each set holds every group once in a row (the
 * last may be short), visits end with their set: the last of one and the first of the next may be of one group. Without
 * such numbers a visit is a run, and the first runs of all groups make the first set, the second the second, and so on.
 */
export function visitsOf(
  sequence: readonly string[],
  setNumbers?: readonly (number | null)[],
): readonly Visit[] {
  return (setNumbers && visitsByNumber(sequence, setNumbers)) ?? visitsByTurn(runsOf(sequence));
}

function visitsByTurn(runs: readonly Run[]): readonly Visit[] {
  const seen = new Map<string, number>();
  return runs.map((run) => {
    const set = seen.get(run.group) ?? 0;
    seen.set(run.group, set + 1);
    return { ...run, set };
  });
}

function visitsByNumber(
  sequence: readonly string[],
  numbers: readonly (number | null)[],
): readonly Visit[] | null {
  if (numbers.length !== sequence.length || numbers.includes(null)) return null;
  const starts = sequence.flatMap((_, place) => (numbers[place] === numbers[place - 1] ? [] : [place]));
  const visits = starts.map((start, set) =>
    runsOf(sequence.slice(start, starts[set + 1])).map((run) => ({ ...run, start: start + run.start, set })),
  );
  const groups = new Set(sequence).size;
  const holdsAll = visits.every((own, set) => {
    const once = new Set(own.map(({ group }) => group)).size === own.length;
    return once && (own.length === groups || set === visits.length - 1);
  });
  return holdsAll ? visits.flat() : null;
}
