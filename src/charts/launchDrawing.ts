import { axisBelow } from './axisBelow.ts';
import { contenderMark } from './contenderMarks.ts';
import type { ContenderName } from './contenderName.ts';
import { outlineWithin, type Grid } from './contourLines.ts';
import { leftOutKey, namesKey, signKey } from './keys.ts';
import type { Mark } from './mark.ts';
import type { Layout, Variant } from './layout.ts';
import { absentChart, drawnChart, type ShotChartWords, type MadeChart } from './madeChart.ts';
import { paint } from './palette.ts';
import type { Part } from './part.ts';
import { roundScale, type RoundScale } from './roundScale.ts';
import { shotMarks } from './shotMarks.ts';
import { at, label, texts, type Spot } from './signs.ts';
import { wrapText } from './textWidth.ts';
import { truePlaces } from './truePlaces.ts';
import { heightOf, numberRoom, uprightRules, uprightWords, type PlotPlace } from './upright.ts';
import { noLaunches } from '../prose/english/charts/launch.ts';

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

export interface LaunchInput extends ShotChartWords {
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
}

/**
 * Every shot at its launch angle and spin, and a line round all that would carry within `within` of the best. Absent without shots.
 * Throws on a broken grid, on values that are not finite, on a shot of nobody, on a seventh contender.
 */
export function drawLaunch(input: LaunchInput): MadeChart {
  refuse(input);
  const { recorded, shots } = input;
  if (shots.length === 0) return absentChart(input, noLaunches);
  const leftOut = shots.find((shot) => shot.leftOut);
  return drawnChart(input, { drawn: shots.length, recorded, counted: 'shots' }, (layout) => ({
    parts: [
      (top) => settingPart(input.setting, layout, top),
      (top) => namesKey(input.contenders, layout, top),
      (top) => uprightWords(input.spinAxis, layout, top),
      (top) => plotPart(input, layout, top),
      (top) =>
        signKey(
          ({ y }) => [
            plateauEdge([
              { x: 0, y },
              { x: 16, y },
            ]),
          ],
          input.plateauWords,
          layout,
          top,
        ),
      ...(leftOut === undefined
        ? []
        : [(top: number) => leftOutKey(input.leftOut, leftOut.contender, layout, top)]),
    ],
  }));
}

function refuseGrid({ grid, within }: LaunchInput): void {
  const { launch, spin, short } = grid;
  const columns = short[0]?.length ?? 0;
  if (short.length < 2 || columns < 2 || short.some((row) => row.length !== columns)) {
    throw new Error(`The grid has ${short.length} rows; it must have two or more of each, all rows as long.`);
  }
  if (
    ![...short.flat(), ...launch, ...spin].every(Number.isFinite) ||
    short.flat().some((value) => value < 0)
  )
    throw new Error('The grid holds a value that is not a distance short of the best.');
  if (!(launch[0] < launch[1] && spin[0] < spin[1]))
    throw new Error(
      `The grid must rise from ${launch[0]} to ${launch[1]} and from ${spin[0]} to ${spin[1]}.`,
    );
  if (!(within > 0 && Number.isFinite(within)))
    throw new Error(`The plateau is within ${within}; it must be more than 0.`);
}

function refuse(input: LaunchInput): void {
  const { contenders, shots, recorded } = input;
  refuseGrid(input);
  for (const { index } of contenders) contenderMark(index);
  for (const { launch, spin, contender } of shots) {
    if (!contenders.some(({ index }) => index === contender))
      throw new Error(`A shot is of contender number ${contender + 1}, who is not named.`);
    if (![launch, spin].every(Number.isFinite))
      throw new Error(`A shot has launch ${launch} and spin ${spin}, which cannot be drawn.`);
  }
  if (shots.length > recorded)
    throw new Error(`${shots.length} shots to draw but only ${recorded} recorded.`);
}

const plotHeights: Readonly<Record<Variant, number>> = { wide: 280, narrow: 230 };
const inset = 10;

/** The edge of the plateau: never filled, for contenders' colours stand on paper only. */
const plateauEdge =
  (spots: readonly Spot[]): Mark =>
  ({ line }) =>
    line(spots, { ...at(spots), stroke: paint('band-edge'), strokeWidth: 1.75 });

/** Where the plateau runs on beyond what was calculated. */
const plateauCut =
  (spots: readonly Spot[]): Mark =>
  ({ line }) =>
    line(spots, {
      ...at(spots),
      stroke: paint('band-edge'),
      strokeWidth: 1.75,
      strokeDasharray: '2 5',
      strokeLinecap: 'butt',
    });

interface LaunchScales {
  readonly along: RoundScale;
  readonly up: RoundScale;
  readonly left: number;
}

const launchScales = ({ shots, grid }: LaunchInput, layout: Layout): LaunchScales => {
  const height = plotHeights[layout.variant];
  const spins = [...grid.spin, ...shots.map(({ spin }) => spin)];
  const up = roundScale(spins, { from: inset, to: height - inset }, layout);
  const left = numberRoom(up, layout);
  const launches = [...grid.launch, ...shots.map(({ launch }) => launch)];
  return { along: roundScale(launches, { from: left + inset, to: layout.width - inset }, layout), up, left };
};

const plotPart = (drawing: LaunchInput, layout: Layout, top: number): Part => {
  const { grid, within, shots } = drawing;
  const { along, up, left } = launchScales(drawing, layout);
  const height = plotHeights[layout.variant];
  const place: PlotPlace = { left, right: layout.width, top, bottom: top + height };
  const heightAt = heightOf(up, place);
  const [columns, rows] = [grid.short[0]?.length ?? 0, grid.short.length];
  const between = ([from, to]: readonly [number, number], share: number): number =>
    from + (to - from) * share;
  const onPlot = ({ x, y }: Spot): Spot => ({
    x: along.place(between(grid.launch, x / (columns - 1))),
    y: heightAt(between(grid.spin, y / (rows - 1))),
  });
  const placed = [...shots]
    .sort((one, other) => Number(other.leftOut) - Number(one.leftOut) || one.contender - other.contender)
    .map(({ launch, spin, contender, leftOut }) => ({
      x: along.place(launch),
      y: heightAt(spin),
      mark: contenderMark(contender),
      leftOut,
    }));
  const { crossed, cut } = outlineWithin(grid.short, within);
  const axis = axisBelow(drawing.launchAxis, along.ticks, layout, place.bottom, {
    from: left,
    to: place.right,
  });
  return {
    height: height + axis.height,
    marks: [
      ...uprightRules(up, place, layout),
      ...axis.marks,
      ...crossed.map((edge) => plateauEdge(edge.map(onPlot))),
      ...cut.map((edge) => plateauCut(edge.map(onPlot))),
      ...truePlaces([placed]).flatMap(shotMarks),
    ],
  };
};

const settingPart = (words: string, { sentence, width, firstBaseline }: Layout, top: number): Part => {
  const split = wrapText(words, sentence.size, sentence.weight, width);
  return {
    height: firstBaseline + (split.length - 1) * 20,
    marks: [...texts(split.map((one, index) => label(sentence, 'start', 0, top + 18 + index * 20, one)))],
  };
};

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
