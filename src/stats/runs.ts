/** A stretch of the sequence that stays with one group: where it starts (from 0) and how long it is. */
export interface Run {
  readonly group: string;
  readonly start: number;
  readonly length: number;
}

/** The sequence cut wherever the group changes, in order. */
export function runsOf(sequence: readonly string[]): readonly Run[] {
  const runs: Run[] = [];
  sequence.forEach((group, start) => {
    const last = runs.at(-1);
    if (last !== undefined && last.group === group) {
      runs[runs.length - 1] = { ...last, length: last.length + 1 };
    } else {
      runs.push({ group, start, length: 1 });
    }
  });
  return runs;
}
