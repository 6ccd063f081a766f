import { luckFinding, luckWords, noChance } from '../prose/english/charts/luck.ts';
import { pairAnswer } from '../prose/pairAnswer.ts';
import { printDifference, printingOf, printSize } from '../prose/printSteps.ts';
import { toReader, unitsIn } from '../prose/readerUnits.ts';
import { axisBelow } from './axisBelow.ts';
import type { Shown } from './chart.ts';
import { drawnSize, sizeColumn, wordsColumn, type ChartNumbers } from './chartNumbers.ts';
import { differenceNumbers } from './differenceNumbers.ts';
import type { Layout } from './layout.ts';
import { absentChart, drawnChart, type ChartWords, type MadeChart } from './madeChart.ts';
import type { Part } from './part.ts';
import { roundScale, type RoundScale } from './roundScale.ts';
import { label, lines, ring, ringReach, texts, type Label, type Line } from './signs.ts';
import { textWidth, wrapText } from './textWidth.ts';
import { widestPair } from './widestPair.ts';

/** *How large a difference does chance make?*: how far apart equal contenders come, and the pair that came farthest apart. */
export function makeLuck({ metric, telling }: Shown): MadeChart {
  const { findings } = telling;
  const widest = widestPair(metric);
  if (metric.luck === null || widest === null)
    return absentChart({ about: { of: 'metric', metric: metric.id } }, noChance);
  const { a, b } = widest.pair;
  const about = { of: 'pair', metric: metric.id, a, b } as const;
  const printing = printingOf(metric, telling);
  const read = (value: number): number => toReader(value, metric.id, telling.system);
  const { average, upTo } = metric.luck;
  const printed = {
    average: printSize(average, printing),
    upTo: printSize(upTo, printing),
    seen: printDifference(widest.estimate, printing),
  };
  const words = luckWords(metric, widest.pair, { ...printed, unit: printing.unit }, telling);
  if (words === null) return absentChart({ about }, noChance);
  const { byChance, seen, ...rest } = words;
  return drawLuck({
    about,
    ...rest,
    finding: luckFinding(printed, pairAnswer(widest.pair, metric, findings.design), printing, telling),
    luck: { average: read(average), upTo: read(upTo), words: byChance },
    seen: { gap: read(widest.estimate), words: seen },
    roundIn: unitsIn(telling.system, metric.id, telling.scalesIn),
  });
}

/** What equal ones would differ by, and the pair that came farthest apart. */
export function luckNumbers({ metric, telling }: Shown): ChartNumbers {
  const { system } = telling;
  const widest = widestPair(metric);
  const { names } = differenceNumbers(metric, telling);
  const rows: readonly (readonly [string, number | null])[] = [
    ['By chance, typically', metric.luck?.average ?? null],
    ['By chance, passed in one test of 20', metric.luck?.upTo ?? null],
    [widest === null ? 'Seen' : names.cells(widest.pair).join(' and '), widest?.estimate ?? null],
  ];
  return {
    columns: [
      wordsColumn('What', 'Equal ones by chance, or the pair that came farthest apart.'),
      sizeColumn('Size', metric.id, system, 'Difference between the best and the last average.'),
    ],
    rows: rows.map(([what, size]) => [what, drawnSize(size, metric.id, system)]),
  };
}

/** Gaps between the best and the last average, in the unit the reader sees. */
export interface LuckInput extends ChartWords {
  /** What contenders all equal would differ by. */
  readonly luck: {
    readonly average: number;
    /** Reached one time in twenty. */
    readonly upTo: number;
    /** "By chance: typically about 3 yards, more than 6 in one test of 20". */
    readonly words: string;
  };
  readonly seen: {
    readonly gap: number;
    /** The pair and how far apart it came, and its answer: "Alder and Cedar: 12 yards apart", "Clear difference". */
    readonly words: readonly string[];
  };
  /** One of the units in which the scale ends on round numbers, in the unit of the values. */
  readonly roundIn: number;
  /** What the scale measures: "Yards between the farthest head and the shortest". */
  readonly axis: string;
}

/**
 * One rule from 0: what equal contenders would differ by below it, what was seen above it.
 * Throws on gaps that are negative, broken or out of order.
 */
export function drawLuck(input: LuckInput): MadeChart {
  const { luck, seen, roundIn, axis } = input;
  refuse(input);
  return drawnChart(input, { drawn: 1, recorded: 1, counted: 'pairs' }, (layout) => {
    const room = { from: inset, to: layout.width - inset };
    const scale = roundScale([0, luck.upTo, seen.gap], room, layout, roundIn);
    return {
      parts: [
        (top) => rulePart(input, scale, layout, top),
        (top) => axisBelow(axis, scale.ticks, layout, top),
      ],
    };
  });
}

function refuse({ luck, seen }: LuckInput): void {
  const { average, upTo } = luck;
  if (!(average > 0 && upTo >= average && Number.isFinite(upTo))) {
    throw new Error(`Luck brings ${average} on average and up to ${upTo}; these must rise from above 0.`);
  }
  if (!(seen.gap >= 0 && Number.isFinite(seen.gap))) {
    throw new Error(`The gap seen is ${seen.gap}; best minus worst cannot be under 0.`);
  }
}

const lineHeight = 20;
/** Least room between the ends of the scale and the edges, px. */
const inset = 14;
const tick = 18;

/** Words about a place on the rule, each in lines, as near to the place as the edges let them. */
const wordsAt = (
  x: number,
  words: readonly string[],
  style: Layout['sentence'],
  { width, textRoom }: Layout,
): { readonly lines: readonly string[]; readonly at: (y: number) => readonly Label[] } => {
  const split = words.flatMap((one) => wrapText(one, style.size, style.weight, textRoom));
  // As long as a line is that just fills the room.
  const half =
    ((width / textRoom) * Math.max(...split.map((line) => textWidth(line, style.size, style.weight)))) / 2;
  const middle = Math.min(Math.max(x, half), width - half);
  return {
    lines: split,
    at: (y) => split.map((line, index) => label(style, 'middle', middle, y + index * lineHeight, line)),
  };
};

const rulePart = ({ luck, seen }: LuckInput, scale: RoundScale, layout: Layout, top: number): Part => {
  const { width, sentence, name } = layout;
  const seenX = scale.place(seen.gap);
  const [averageX, upToX] = [scale.place(luck.average), scale.place(luck.upTo)];
  const above = wordsAt(seenX, seen.words, sentence, layout);
  const below = wordsAt((averageX + upToX) / 2, [luck.words], { ...name, weight: 400 }, layout);
  const seenTop = top + 20 + (above.lines.length - 1) * lineHeight + 7;
  const rule = seenTop + tick;
  const down = (x: number): Line => ({ x1: x, y1: rule, x2: x, y2: rule + tick });
  const bottom = rule + tick + 6 + below.lines.length * lineHeight;
  return {
    height: bottom + 10 - top,
    marks: [
      lines([{ x1: scale.place(0), y1: rule, x2: width - inset, y2: rule }], 'ink', 1.25),
      lines([down(averageX), down(upToX)], 'ink', 2.5),
      lines([{ x1: seenX, y1: seenTop, x2: seenX, y2: rule - ringReach }], 'ink', 2.5),
      ring({ x: seenX, y: rule }),
      ...texts([...above.at(top + 20), ...below.at(rule + tick + 21)]),
    ],
  };
};
