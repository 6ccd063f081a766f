import type { Mark } from './mark.ts';
import { contenderMark } from './contenderMarks.ts';
import type { LandingCurve, LandingPanel } from './landings.ts';
import type { LandingScale } from './landingScale.ts';
import type { Layout } from './layout.ts';
import { bracket, copiedDots, lineSample, outlineCurve, type Outline } from './outlineSigns.ts';
import { label, lines, marks, ring, texts, type Label, type Spot } from './signs.ts';
import { shotMarks } from './shotMarks.ts';
import { fitText, textWidth, wrapText } from './textWidth.ts';
import type { PlacedMark, SizedMark } from './truePlaces.ts';

/** Lines of text over and under the plot, of one panel or the most of a row of panels. */
interface PanelText {
  readonly name: number;
  readonly numbers: number;
  /** Whether left, share and right stand on one line. */
  readonly feetBeside: boolean;
}

/** A shot of a panel as a mark, px from the left end of the panel's foot. */
export interface LandingMark extends PlacedMark {
  readonly leftOut: boolean;
}

const nameLine = 18;
const numbersLine = 20;
const sampleLength = 36;
/** Larger than elsewhere, for shots lie on top. */
const averageRadius = 8.5;

const nameLines = ({ contender }: LandingPanel, panelWidth: number, { name, nameInset }: Layout) =>
  fitText(contender.label, name.size, name.weight, panelWidth - nameInset, 2);

/** How many lines a panel's texts take. */
export const panelText = (panel: LandingPanel, panelWidth: number, layout: Layout): PanelText => {
  const { numbers, small } = layout;
  const { left, within, right } = panel.feet;
  const half = textWidth(within, small.size, 600) / 2 + 8;
  const sides = Math.max(...[left, right].map((words) => textWidth(words, small.size, small.weight)));
  return {
    name: nameLines(panel, panelWidth, layout).length,
    numbers: wrapText(panel.numbers, numbers.size, numbers.weight, panelWidth).length,
    feetBeside: half + sides <= panelWidth / 2,
  };
};

/** What panels side by side must all have room for. */
export const mostText = (texts: readonly PanelText[]): PanelText => ({
  name: Math.max(...texts.map(({ name }) => name)),
  numbers: Math.max(...texts.map(({ numbers }) => numbers)),
  feetBeside: texts.every(({ feetBeside }) => feetBeside),
});

/** Shots of a panel in order of drawing, those left out first. */
export const landingMarks = (
  { contender, shots }: LandingPanel,
  { place }: LandingScale,
): readonly LandingMark[] => {
  const mark = contenderMark(contender.index);
  return [...shots]
    .sort((one, other) => Number(other.leftOut) - Number(one.leftOut))
    .map((shot) => ({ ...place(shot), leftOut: shot.leftOut, mark }));
};

/** A curve in px; the page's second axis points down. */
const outlineOf = (
  { centre: [side, carry], halfAxes: [major, minor], angle }: LandingCurve,
  { place, perUnit }: LandingScale,
): Outline => ({
  centre: place({ side, carry }),
  halfAxes: [major * perUnit, minor * perUnit],
  angle: -angle,
});

/** Heights, px from the top of a panel. */
export const panelHeights = ({ name, numbers, feetBeside }: PanelText, { plotHeight }: LandingScale) => {
  const plotTop = 18 + name * nameLine + numbers * numbersLine;
  const foot = plotTop + plotHeight + 8;
  return { foot, height: foot + (feetBeside ? 19 : 38) + 10 };
};

/** Where one panel stands and what it shares with the others. */
interface PanelPlace {
  readonly left: number;
  readonly top: number;
  readonly text: PanelText;
  /** Half the width of the lane the bracket spans, in the unit of the shots. */
  readonly within: number;
  /** Whether the scale's numbers stand to its left. */
  readonly numbered: boolean;
}

/** Name with mark and line pattern, numbers below, counts at the feet. */
const panelWords = (
  panel: LandingPanel,
  { left, top, text }: PanelPlace,
  { foot }: ReturnType<typeof panelHeights>,
  panelWidth: number,
  layout: Layout,
): readonly Label[] => {
  const { name, numbers, small, nameInset } = layout;
  const share = { ...small, weight: 600, colour: 'ink' } as const;
  const numbersTop = top + 24 + text.name * nameLine;
  return [
    ...nameLines(panel, panelWidth, layout).map((line, index) =>
      label(name, 'start', left + nameInset, top + 22 + index * nameLine, line),
    ),
    ...wrapText(panel.numbers, numbers.size, numbers.weight, panelWidth).map((line, index) =>
      label(numbers, 'start', left, numbersTop + index * numbersLine, line),
    ),
    label(small, 'start', left, foot + 19, panel.feet.left),
    label(share, 'middle', left + panelWidth / 2, foot + (text.feetBeside ? 19 : 38), panel.feet.within),
    label(small, 'end', left + panelWidth, foot + 19, panel.feet.right),
  ];
};

interface PanelShown {
  readonly panel: LandingPanel;
  readonly shots: readonly SizedMark<LandingMark>[];
  /** Places of the other contenders. */
  readonly others: readonly number[];
}

/** One contender's shots from above, the others' as grey dots, with everything said about them. */
export const landingPanel = (
  { panel, shots, others }: PanelShown,
  at: PanelPlace,
  scale: LandingScale,
  layout: Layout,
): readonly Mark[] => {
  const { left, top } = at;
  const mark = contenderMark(panel.contender.index);
  const heights = panelHeights(at.text, scale);
  const foot = top + heights.foot;
  const moved = <Moved extends Spot>(spot: Moved): Moved => ({
    ...spot,
    x: left + spot.x,
    y: foot - 8 + spot.y,
  });
  const curveOf = (curve: LandingCurve): Mark => {
    const outline = outlineOf(curve, scale);
    return outlineCurve({ ...outline, centre: moved(outline.centre) }, mark);
  };
  const right = left + scale.panelWidth;
  const middle = left + scale.panelWidth / 2;
  const lane = scale.place({ side: at.within, carry: 0 }).x - scale.panelWidth / 2;
  const named = nameLines(panel, scale.panelWidth, layout);
  const { name, small, nameInset } = layout;
  const sampleStart = nameInset + textWidth(named[0] ?? '', name.size, name.weight) + 10;
  const sampled =
    panel.curve !== null && named.length === 1 && sampleStart + sampleLength <= scale.panelWidth;
  return [
    lines(
      scale.ticks.map(({ y }) => ({ x1: left, y1: foot - 8 + y, x2: right, y2: foot - 8 + y })),
      'rule',
      1,
    ),
    lines(
      [
        { x1: middle, y1: foot - 8 - scale.plotHeight, x2: middle, y2: foot },
        { x1: left, y1: foot, x2: right, y2: foot },
      ],
      'axis',
      1,
    ),
    bracket({ from: middle - lane, to: middle + lane }, foot),
    ...(others.length === 0 ? [] : [copiedDots(others, moved({ x: 0, y: 0 }))]),
    ...(panel.curve === null ? [] : [curveOf(panel.curve)]),
    ...(panel.average === null ? [] : [ring(moved(scale.place(panel.average)), averageRadius)]),
    ...shotMarks(shots.map(moved)),
    marks([{ x: left + layout.markInset, y: top + 17 }], mark, layout.markRadius),
    ...(sampled ? [lineSample({ x: left + sampleStart, y: top + 17 }, sampleLength, mark)] : []),
    ...texts([
      ...panelWords(panel, at, { ...heights, foot }, scale.panelWidth, layout),
      ...(at.numbered
        ? scale.ticks.map(({ y, text }) => label(small, 'end', left - 6, foot - 8 + y + 4.5, text))
        : []),
    ]),
  ];
};
