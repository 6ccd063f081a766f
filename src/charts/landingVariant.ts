import { contenderMark } from './contenderMarks.ts';
import { leftOutKey, signKey } from './keys.ts';
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
import { dotsToCopy, greyDots, lineSample } from './outlineSigns.ts';
import type { Part } from './part.ts';
import { renderParts } from './renderParts.ts';
import { label, lines, texts } from './signs.ts';
import { wrapText } from './textWidth.ts';
import { truePlaces, type SizedMark } from './truePlaces.ts';

/** What one variant shows, with the image's name. */
export type LandingDrawing = Omit<
  LandingInput,
  'question' | 'subject' | 'finding' | 'description' | 'table'
> & {
  readonly name: string;
};

type PanelShots = readonly SizedMark<LandingMark>[];

/** Panels side by side under a rule. */
const panelRow = (
  drawing: LandingDrawing,
  shots: readonly PanelShots[],
  row: readonly number[],
  scale: LandingScale,
  layout: Layout,
  top: number,
): Part => {
  const { panels, within } = drawing;
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
          panel,
          shots[index] ?? [],
          panels.flatMap((_, other) => (other === index ? [] : [other])),
          { left: scale.lefts[column] ?? 0, top, text, within, numbered: column === 0 },
          scale,
          layout,
        ),
      ),
    ],
  };
};

/** What the scale measures and what each sign means, as far as it occurs. */
const keyParts = (drawing: LandingDrawing, layout: Layout): readonly ((top: number) => Part)[] => {
  const { panels } = drawing;
  const curved = panels.find(({ curve }) => curve !== null);
  const leftOut = panels.find(({ shots }) => shots.some((shot) => shot.leftOut));
  const { small, width } = layout;
  const axis = wrapText(drawing.axis, small.size, small.weight, width);
  return [
    (top) => ({
      height: 5 + axis.length * 19,
      marks: [
        lines([{ x1: 0, y1: top, x2: width, y2: top }], 'axis', 1),
        ...texts(axis.map((line, index) => label(small, 'start', 0, top + 24 + index * 19, line))),
      ],
    }),
    ...(curved === undefined
      ? []
      : [
          (top: number) =>
            signKey(
              ({ y }) => [lineSample({ x: 0, y }, 34, contenderMark(curved.contender.index))],
              drawing.curveWords,
              layout,
              top,
              44,
            ),
        ]),
    ...(panels.length < 2
      ? []
      : [
          (top: number) =>
            signKey(
              ({ x, y }) => [
                greyDots([x - 5, x, x + 5].map((dotX, index) => ({ x: dotX, y: y + (index % 2) * 3 - 1 }))),
              ],
              drawing.others,
              layout,
              top,
            ),
        ]),
    ...(leftOut === undefined
      ? []
      : [(top: number) => leftOutKey(drawing.leftOut, leftOut.contender.index, layout, top)]),
  ];
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
      ...rows.map((row) => (top: number) => panelRow(drawing, shots, row, scale, layout, top)),
      ...keyParts(drawing, layout),
    ],
    shots.length > 1 ? [dotsToCopy(counted)] : [],
  );
};
