import type { Mark } from './mark.ts';
import { leftOutMarks, marks } from './signs.ts';
import type { SizedMark } from './truePlaces.ts';

/** The mark of one shot, ready to draw. */
type ShotMark = SizedMark & { readonly leftOut: boolean };

const alike = (one: ShotMark, other: ShotMark): boolean =>
  one.mark === other.mark && one.radius === other.radius && one.leftOut === other.leftOut;

/** Marks of shots in the order given, neighbours that look alike in one group. */
export const shotMarks = (shots: readonly ShotMark[]): readonly Mark[] => {
  const runs: ShotMark[][] = [];
  for (const shot of shots) {
    const run = runs.at(-1);
    const [first] = run ?? [];
    if (run !== undefined && first !== undefined && alike(first, shot)) run.push(shot);
    else runs.push([shot]);
  }
  return runs.flatMap((run) => {
    const [first] = run;
    if (first === undefined) return [];
    const { mark, radius } = first;
    return first.leftOut ? leftOutMarks(run, mark, radius) : [marks(run, mark, radius)];
  });
};
