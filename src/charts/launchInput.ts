import type { ContenderName } from './apartInput.ts';
import type { Grid } from './contourLines.ts';
import type { FigureWords } from './figure.ts';

/** How one ball left, in the units the reader sees. */
interface LaunchedShot {
  readonly launch: number;
  readonly spin: number;
  /** Place of its contender in the report's list, from 0. */
  readonly contender: number;
  readonly leftOut: boolean;
}

/** What the model says all over the window, at evenly spaced angles and spins. */
interface LaunchGrid {
  /** First and last launch angle, of the first and last column. */
  readonly launch: readonly [number, number];
  /** First and last spin, of the first and last row. */
  readonly spin: readonly [number, number];
  /** How far each point falls short of the best one; rows of columns. */
  readonly short: Grid;
}

export interface LaunchInput extends FigureWords {
  /** Printed over the picture: "At 140 mph ball speed, calculated with the first set of coefficients". */
  readonly setting: string;
  readonly contenders: readonly ContenderName[];
  readonly shots: readonly LaunchedShot[];
  readonly grid: LaunchGrid;
  /** The plateau: points no shorter than the best one by more than this. */
  readonly within: number;
  /** "Inside the line: within 3 yards of the most this ball speed can carry". */
  readonly plateauWords: string;
  /** "Launch angle in degrees". */
  readonly launchAxis: string;
  /** "Spin in turns a minute". */
  readonly spinAxis: string;
  /** What a hollow mark with a stroke through says: "left out". */
  readonly leftOut: string;
  /** Shots recorded, those without both readings among them. */
  readonly recorded: number;
}

/** How far a launch falls short of the best one, between the points of the grid; beyond the grid without end. */
export const shortfall = (
  { launch, spin, short }: LaunchGrid,
  shot: Pick<LaunchedShot, 'launch' | 'spin'>,
): number => {
  const columns = short[0]?.length ?? 0;
  const across = ((shot.launch - launch[0]) / (launch[1] - launch[0])) * (columns - 1);
  const down = ((shot.spin - spin[0]) / (spin[1] - spin[0])) * (short.length - 1);
  if (!(across >= 0 && across <= columns - 1 && down >= 0 && down <= short.length - 1)) return Infinity;
  const [column, row] = [
    Math.min(Math.floor(across), columns - 2),
    Math.min(Math.floor(down), short.length - 2),
  ];
  const [x, y] = [across - column, down - row];
  const at = (dx: number, dy: number): number => short[row + dy]?.[column + dx] ?? Infinity;
  return (at(0, 0) * (1 - x) + at(1, 0) * x) * (1 - y) + (at(0, 1) * (1 - x) + at(1, 1) * x) * y;
};
