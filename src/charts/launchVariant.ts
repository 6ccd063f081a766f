import { axisBelow } from './axisBelow.ts';
import { contenderMark } from './contenderMarks.ts';
import { outlineWithin } from './contourLines.ts';
import { leftOutKey, namesKey, signKey } from './keys.ts';
import type { LaunchInput } from './launchInput.ts';
import type { Mark } from './mark.ts';
import { layouts, type Layout, type Variant } from './layout.ts';
import { paint } from './palette.ts';
import type { Part } from './part.ts';
import { renderParts } from './renderParts.ts';
import { roundScale, type RoundScale } from './roundScale.ts';
import { shotMarks } from './shotMarks.ts';
import { at, label, texts, type Spot } from './signs.ts';
import { wrapText } from './textWidth.ts';
import { truePlaces } from './truePlaces.ts';
import { heightOf, numberRoom, uprightRules, uprightWords, type PlotPlace } from './upright.ts';

/** What one variant shows, with the image's name. */
type LaunchDrawing = Omit<LaunchInput, 'question' | 'subject' | 'finding' | 'description' | 'table'> & {
  readonly name: string;
};

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

const launchScales = ({ shots, grid }: LaunchDrawing, layout: Layout): LaunchScales => {
  const height = plotHeights[layout.variant];
  const spins = [...grid.spin, ...shots.map(({ spin }) => spin)];
  const up = roundScale(spins, { from: inset, to: height - inset }, layout);
  const left = numberRoom(up, layout);
  const launches = [...grid.launch, ...shots.map(({ launch }) => launch)];
  return { along: roundScale(launches, { from: left + inset, to: layout.width - inset }, layout), up, left };
};

const plotPart = (drawing: LaunchDrawing, layout: Layout, top: number): Part => {
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

/** One variant of *Launch and spin* as SVG text. */
export const launchVariant = (drawing: LaunchDrawing, variant: Variant): string => {
  const layout = layouts[variant];
  const leftOut = drawing.shots.find((shot) => shot.leftOut);
  return renderParts(drawing, layout, [
    (top) => settingPart(drawing.setting, layout, top),
    (top) => namesKey(drawing.contenders, layout, top),
    (top) => uprightWords(drawing.spinAxis, layout, top),
    (top) => plotPart(drawing, layout, top),
    (top) =>
      signKey(
        ({ y }) => [
          plateauEdge([
            { x: 0, y },
            { x: 16, y },
          ]),
        ],
        drawing.plateauWords,
        layout,
        top,
      ),
    ...(leftOut === undefined
      ? []
      : [(top: number) => leftOutKey(drawing.leftOut, leftOut.contender, layout, top)]),
  ]);
};
