import { contenderMark } from './contenderMarks.ts';
import { flowKey, type KeyItem } from './flowKey.ts';
import { ringItem } from './gapKey.ts';
import { leftOutItem, shotItem } from './keys.ts';
import type { LandingInput } from './landingInput.ts';
import {
  landingMarks,
  landingPanel,
  mostText,
  panelHeights,
  panelText,
  type LandingMark,
} from './landingPanel.ts';
import { landingScale, type LandingScale } from './landingScale.ts';
import { layouts, type Layout, type Variant } from './layout.ts';
import { bracket, dotsToCopy, greyDots, lineSample } from './outlineSigns.ts';
import type { Part } from './part.ts';
import { renderParts } from './renderParts.ts';
import { label, lines, texts, type Spot } from './signs.ts';
import { wrapText } from './textWidth.ts';
import { truePlaces, type SizedMark } from './truePlaces.ts';

/** What one variant shows, with the image's name. */
type LandingDrawing = Omit<LandingInput, 'question' | 'subject' | 'finding' | 'description' | 'table'> & {
  readonly name: string;
};

type PanelShots = readonly SizedMark<LandingMark>[];

interface PanelRow {
  /** Places of its contenders. */
  readonly row: readonly number[];
  /** Of every contender. */
  readonly shots: readonly PanelShots[];
  readonly scale: LandingScale;
  readonly layout: Layout;
}

/** Panels side by side under a rule. */
const panelRow = (
  { panels, within }: LandingDrawing,
  { row, shots, scale, layout }: PanelRow,
  top: number,
): Part => {
  const shown = row.flatMap((index) => {
    const panel = panels[index];
    return panel === undefined ? [] : [{ panel, index }];
  });
  const text = mostText(shown.map(({ panel }) => panelText(panel, scale.panelWidth, layout)));
  return {
    height: panelHeights(text, scale).height,
    marks: [
      lines([{ x1: 0, y1: top, x2: layout.width, y2: top }], 'rule', 1),
      ...shown.flatMap(({ panel, index }, column) =>
        landingPanel(
          {
            panel,
            shots: shots[index] ?? [],
            others: panels.flatMap((_, other) => (other === index ? [] : [other])),
          },
          { left: scale.lefts[column] ?? 0, top, text, within, numbered: column === 0 },
          scale,
          layout,
        ),
      ),
    ],
  };
};

/** What each sign means, as far as it occurs. */
const keyItems = ({ panels, key, leftOut }: LandingDrawing): readonly KeyItem[] => {
  const curved = panels.find(({ curve }) => curve !== null);
  const withLeftOut = panels.find(({ shots }) => shots.some((shot) => shot.leftOut));
  return [
    shotItem(
      panels.map(({ contender }) => contender.index),
      key.shot,
    ),
    ...(panels.some(({ average }) => average !== null) ? [ringItem(key.ring)] : []),
    ...(panels.length < 2
      ? []
      : [
          {
            width: 14,
            draw: ({ x, y }: Spot) => [
              greyDots([2, 7, 12].map((dotX, index) => ({ x: x + dotX, y: y + (index % 2) * 3 - 1 }))),
            ],
            words: key.others,
          },
        ]),
    ...(curved === undefined
      ? []
      : [
          {
            width: 34,
            draw: (spot: Spot) => [lineSample(spot, 34, contenderMark(curved.contender.index))],
            words: key.curve,
          },
        ]),
    {
      width: 24,
      draw: ({ x, y }) => [bracket({ from: x + 1, to: x + 23 }, y + 4)],
      words: key.bracket,
    },
    ...(withLeftOut === undefined ? [] : [leftOutItem(withLeftOut.contender.index, leftOut)]),
  ];
};

/** What the scale measures, under the panels. */
const axisPart = (words: string, { small, width, textRoom }: Layout, top: number): Part => {
  const split = wrapText(words, small.size, small.weight, textRoom);
  return {
    height: 5 + split.length * 19,
    marks: [
      lines([{ x1: 0, y1: top, x2: width, y2: top }], 'axis', 1),
      ...texts(split.map((line, index) => label(small, 'start', 0, top + 20 + index * 19, line))),
    ],
  };
};

/** One variant of *Where they landed* as SVG text: rows of three panels, or panels below one another. */
export const landingVariant = (drawing: LandingDrawing, variant: Variant): string => {
  const layout = layouts[variant];
  const scale = landingScale(drawing, layout);
  const shots = truePlaces(drawing.panels.map((panel) => landingMarks(panel, scale)));
  const indices = drawing.panels.map((_, index) => index);
  const rows = indices
    .filter((index) => index % scale.columns === 0)
    .map((first) => indices.slice(first, first + scale.columns));
  const counted = shots.map((panel) => panel.filter(({ leftOut }) => !leftOut));
  return renderParts(
    drawing,
    layout,
    [
      (top) => flowKey(keyItems(drawing), layout, top),
      ...rows.map((row) => (top: number) => panelRow(drawing, { row, shots, scale, layout }, top)),
      (top) => axisPart(drawing.axis, layout, top),
    ],
    shots.length > 1 ? [dotsToCopy(counted)] : [],
  );
};
