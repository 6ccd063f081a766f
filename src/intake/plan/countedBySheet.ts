import type { ShotFile } from '../shots/shotFile.ts';
import { joinOrderSheet, type Joined } from './joinOrderSheet.ts';
import type { OrderSheet } from './readOrderSheet.ts';

/** Shots beside an order sheet: as they were where it does not list the same. The problems are of the sheet alone. */
interface CountedBySheet extends Joined {
  readonly fits: boolean;
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
