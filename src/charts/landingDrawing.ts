import { contenderMark } from './contenderMarks.ts';
import { flowKey, type KeyItem } from './flowKey.ts';
import { ringItem } from './gapKey.ts';
import { leftOutItem, shotItem } from './keys.ts';
import type { LandingPanel } from './landings.ts';
import {
  landingMarks,
  landingPanel,
  mostText,
  panelHeights,
  panelText,
  type LandingMark,
} from './landingPanel.ts';
import { landingScale, type LandingScale } from './landingScale.ts';
import type { Layout } from './layout.ts';
import { absentChart, drawnChart, type ShotChartWords, type MadeChart } from './madeChart.ts';
import { bracket, dotsToCopy, greyDots, lineSample } from './outlineSigns.ts';
import type { Part } from './part.ts';
import { label, lines, texts, type Spot } from './signs.ts';
import { wrapText } from './textWidth.ts';
import { truePlaces, type SizedMark } from './truePlaces.ts';
import { noPlaces } from '../prose/english/charts/landing.ts';

export interface LandingInput extends ShotChartWords {
  /** In the order contenders are listed. */
  readonly panels: readonly LandingPanel[];
  /** Half the width of the lane the bracket spans, in the unit of the shots. */
  readonly within: number;
  /** What the scale measures: "Yards. Up: carry. Across: left and right of the target line. Same scale in all panels.". */
  readonly axis: string;
  /** What the signs are called; those that do not occur are not shown. */
  readonly key: {
    readonly shot: string;
    readonly ring: string;
    /** "nine in ten further shots should land inside" */
    readonly curve: string;
    /** "the other two heads" */
    readonly others: string;
    /** "within 15 yards of the line" */
    readonly bracket: string;
  };
}

/**
 * One panel a contender, seen from above on one scale, in rows of three or below one another; its shots at their true places, the
 * others' as grey dots, the average as a ring, the curve the next shot would land inside, and the share within the lane. Absent
 * without shots. Throws on values that are not finite, a lane without width, a seventh contender, more shots than recorded.
 */
export function drawLanding(input: LandingInput): MadeChart {
  const drawn = refuse(input);
  if (drawn === 0) return absentChart(input, noPlaces);
  return drawnChart(input, { drawn, recorded: input.recorded, counted: 'shots' }, (layout) => {
    const scale = landingScale(input, layout);
    const shots = truePlaces(input.panels.map((panel) => landingMarks(panel, scale)));
    const indices = input.panels.map((_, index) => index);
    const rows = indices
      .filter((index) => index % scale.columns === 0)
      .map((first) => indices.slice(first, first + scale.columns));
    const counted = shots.map((panel) => panel.filter(({ leftOut }) => !leftOut));
    return {
      parts: [
        (top) => flowKey(keyItems(input), layout, top),
        ...rows.map((row) => (top: number) => panelRow(input, { row, shots, scale, layout }, top)),
        (top) => axisPart(input.axis, layout, top),
      ],
      behind: shots.length > 1 ? [dotsToCopy(counted)] : [],
    };
  });
}

const numbersOf = ({ shots, average, curve }: LandingPanel): readonly number[] => [
  ...[...shots, ...(average === null ? [] : [average])].flatMap(({ side, carry }) => [side, carry]),
  ...(curve === null ? [] : [...curve.centre, ...curve.halfAxes, curve.angle]),
];

/** How many shots there are to draw. */
function refuse({ panels, within, recorded }: LandingInput): number {
  if (!(within > 0 && Number.isFinite(within))) {
    throw new Error(`The lane is ${within} to either side; it must be more than 0.`);
  }
  let drawn = 0;
  for (const panel of panels) {
    contenderMark(panel.contender.index);
    const broken = numbersOf(panel).find((value) => !Number.isFinite(value));
    if (broken !== undefined)
      throw new Error(`${panel.contender.label} has the value ${broken}, which cannot be drawn.`);
    drawn += panel.shots.length;
  }
  if (drawn > recorded) throw new Error(`${drawn} shots to draw but only ${recorded} recorded.`);
  return drawn;
}

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
  { panels, within }: LandingInput,
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
const keyItems = ({ panels, key, leftOut }: LandingInput): readonly KeyItem[] => {
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
