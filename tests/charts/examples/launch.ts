import { exampleWords, heads, scattered } from './heads.ts';
import type { LaunchInput } from '../../../src/charts/launchDrawing.ts';

/** An invented hill: carry falls off from the best angle and spin like a tilted bowl. */
const short = (launch: number, spin: number): number => {
  const [up, over] = [(launch - 14) / 2, (spin - 2200) / 500];
  return up * up + over * over + 0.9 * up * over;
};

const [columns, rows] = [21, 16];

export const launchInputOf = (
  names: readonly string[],
  count: number,
  rest: Partial<LaunchInput> = {},
): LaunchInput => {
  const [launches, spins] = [scattered(count * names.length, 7), scattered(count * names.length, 11)];
  return {
    ...exampleWords('Launch and spin at 140 mph ball speed, first set of coefficients', names),
    question: 'Launch and spin at 140 mph ball speed',
    setting: 'At 140 mph ball speed, calculated with the first set of coefficients',
    contenders: names.map((label, index) => ({ label, index })),
    shots: launches.map((value, place) => ({
      launch: Math.round(10 * (12.5 + (place % names.length) + 1.2 * value)) / 10,
      spin: Math.round(2700 - 150 * (place % names.length) + 280 * (spins[place] ?? 0)),
      contender: place % names.length,
      leftOut: place % 17 === 4,
    })),
    grid: {
      launch: [8, 18],
      spin: [1500, 4500],
      short: Array.from({ length: rows }, (_, row) =>
        Array.from({ length: columns }, (_unused, column) =>
          short(8 + (10 * column) / (columns - 1), 1500 + (3000 * row) / (rows - 1)),
        ),
      ),
    },
    within: 3,
    plateauWords: 'Inside the line: within 3 yards of the most that this ball speed can carry',
    launchAxis: 'Launch angle in degrees',
    spinAxis: 'Spin in turns a minute',
    leftOut: 'Hollow, struck through: left out of the averages',
    recorded: count * names.length,
    ...rest,
  };
};

export const launchExample: LaunchInput = launchInputOf(heads.slice(0, 3), 12);
