import type { Problem } from '../../problems/problem.ts';
import type { ShotFile } from '../shots/shotFile.ts';
import { joinOrderSheet } from './joinOrderSheet.ts';
import type { OrderSheet } from './readOrderSheet.ts';

/** Shots beside an order sheet. */
interface CountedBySheet {
  /** With what the sheet says of each, where it lists the same shots; else as they were. */
  readonly shotFiles: readonly ShotFile[];
  readonly fits: boolean;
  /** Of the sheet alone. */
  readonly problems: readonly Problem[];
}

/** As `joinOrderSheet`, before anybody has said what the files leave open: a unit that is missing keeps no shot from being counted. */
export function countedBySheet(
  shotFiles: readonly ShotFile[],
  sheet: OrderSheet,
  contenderOf: (name: string) => string | null,
  inOrder: boolean,
): CountedBySheet {
  const countable = shotFiles.map((file): ShotFile => ({ ...file, problems: [] }));
  const joined = joinOrderSheet(countable, sheet, contenderOf, inOrder);
  const problems = [...joined.shotFiles.flatMap(({ problems: own }) => own), ...joined.problems];
  const fits = problems.every(({ severity }) => severity !== 'error');
  return { shotFiles: fits ? joined.shotFiles : shotFiles, fits, problems };
}
