import { bandLabel, beyondBand } from './apartRow.ts';
import { contenderMark } from './contenderMarks.ts';
import { endNumbers, type BarNumbers } from './endNumbers.ts';
import type { Layout } from './layout.ts';
import type { Tick } from './gapScale.ts';
import type { Part } from './part.ts';
import {
  bar,
  barWithRing,
  hatched,
  label,
  lines,
  marks,
  openBar,
  ring,
  texts,
  type Label,
  type Line,
  type Stretch,
} from './signs.ts';
import { fitText, textWidth, wrapEvenly } from './textWidth.ts';

export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** One line of a chart of intervals; in the unit the reader sees. */
export interface IntervalRow {
  readonly name: string;
  /** The contender whose mark stands before the name, by its place in the report's list; null for none. */
  readonly contender: number | null;
  /** The estimate as printed: "9". May be empty. */
  readonly figure: string;
  /** What goes with it: "likely 2 to 16 yards". */
  readonly words: string;
  /** Numbers under the ring and the ends of the bar, which stand there instead of figure and words where a row is narrow; else null. */
  readonly printed: BarNumbers | null;
  /** Where the ring stands; null without one. */
  readonly estimate: number | null;
  /** The likely range; null where too little to say. */
  readonly interval: Interval | null;
  /** Whether a darker rule sets it off from the rows above: a sum, a remainder. */
  readonly setOff: boolean;
  /** Whether the cause of the difference is open: then the bar is not filled. */
  readonly open: boolean;
}

/** Where names, figures, bars and words stand, px. */
interface RowColumns {
  readonly nameWidth: number;
  /** Right edge of the figures. */
  readonly figureEnd: number;
  readonly track: Stretch;
  readonly wordsWidth: number;
}

/** What rows have in common. */
interface RowStyle {
  readonly columns: RowColumns;
  readonly place: (value: number) => number;
  /** Numbered steps, ruled through the rows. */
  readonly ticks: readonly Tick[];
  /** Gaps up to this are too small to matter and lie in the band; null where bars are of no gaps. */
  readonly matters: number | null;
}

const widestName = 190;
const widestWords = 200;
const columnGap = 16;
const lineHeight = 19;
const trackInset = 10;

const widest = (words: readonly string[], { size, weight }: Layout['name']): number =>
  Math.ceil(Math.max(0, ...words.map((one) => textWidth(one, size, weight))));

const insetOf = ({ contender }: IntervalRow, { nameInset }: Layout): number =>
  contender === null ? 0 : nameInset;

/** Columns in which all `rows` fit, long names and words in lines. */
export const rowColumns = (rows: readonly IntervalRow[], layout: Layout): RowColumns => {
  const { name, estimate, numbers, width } = layout;
  const inset = Math.max(0, ...rows.map((row) => insetOf(row, layout)));
  const names = rows.map((row) => row.name);
  const figureWidth = widest(
    rows.map(({ figure }) => figure),
    estimate,
  );
  if (layout.variant === 'narrow') {
    return {
      nameWidth: width - figureWidth - columnGap,
      figureEnd: width,
      track: { from: trackInset, to: width - trackInset },
      wordsWidth: width,
    };
  }
  const nameWidth = inset + Math.min(widestName, widest(names, name));
  const words = rows.map((row) => row.words);
  const wordsWidth = Math.min(widestWords, widest(words, numbers));
  const figureEnd = nameWidth + columnGap + figureWidth;
  return {
    nameWidth,
    figureEnd,
    track: { from: figureEnd + columnGap + trackInset, to: width - wordsWidth - columnGap - trackInset },
    wordsWidth,
  };
};

/** Band, rules, bar and ring of a row between two heights, px. */
const track = (
  { estimate, interval, open }: IntervalRow,
  { place, ticks, matters, columns }: RowStyle,
  [from, to]: readonly [number, number],
  middle: number,
): Part['marks'] => {
  const upright = (x: number): Line => ({ x1: x, y1: from, x2: x, y2: to });
  const along = (low: number, high: number): Stretch => ({ from: place(low), to: place(high) });
  const clipped = (x: number): number => Math.min(Math.max(x, columns.track.from), columns.track.to);
  const ground =
    matters === null
      ? [
          lines(
            ticks.map(({ x }) => upright(x)),
            'rule',
            1,
          ),
        ]
      : [
          ...(matters > 0
            ? [
                hatched([{ ...upright(clipped(place(-matters))), x2: clipped(place(matters)) }]),
                lines([upright(place(-matters)), upright(place(matters))], 'band-edge', 1.25),
              ]
            : []),
          lines([upright(place(0))], 'ink', 1.25),
        ];
  const thick =
    interval === null || matters === null
      ? []
      : beyondBand(interval.low, interval.high, matters).map(([low, high]) => along(low, high));
  if (interval === null) {
    return [...ground, ...(estimate === null ? [] : [ring({ x: place(estimate), y: middle })])];
  }
  const whole = along(interval.low, interval.high);
  return [
    ...ground,
    ...(estimate === null
      ? open
        ? openBar(middle, whole, thick)
        : bar(middle, whole, thick)
      : barWithRing({ x: place(estimate), y: middle }, whole, thick, open)),
  ];
};

/** Whether a narrow row's words stand at the right of its name, and where its figure then ends, px. */
const besideName = (
  figure: string,
  names: readonly string[],
  words: readonly string[],
  { variant, name, estimate, numbers, nameInset, width }: Layout,
): { readonly beside: boolean; readonly figureAt: number | null } => {
  const [first = ''] = names;
  const [only = ''] = words;
  const wordsWidth = textWidth(only, numbers.size, numbers.weight);
  const figureWidth = figure === '' ? 0 : textWidth(figure, estimate.size, estimate.weight) + 8;
  const taken = nameInset + textWidth(first, name.size, name.weight) + columnGap + figureWidth + wordsWidth;
  const beside = variant === 'narrow' && names.length === 1 && words.length === 1 && taken <= width;
  return { beside, figureAt: beside ? width - wordsWidth - 8 : null };
};

/**
 * One row under its rule: name, figure, bar and words in columns, or bar under the rest where narrow. `bandWords` stand over the band
 * of the first one, in columns over the row.
 */
export const intervalRow = (
  row: IntervalRow,
  style: RowStyle,
  layout: Layout,
  rowTop: number,
  bandWords: string | null = null,
): Part => {
  const { name, estimate, numbers, width } = layout;
  const { columns } = style;
  const inset = insetOf(row, layout);
  const names = fitText(row.name, name.size, name.weight, columns.nameWidth - inset, 2);
  const wide = layout.variant === 'wide';
  const { interval } = row;
  const under = wide || interval === null ? null : row.printed;
  const figure = under === null ? row.figure : '';
  const words = under === null ? wrapEvenly(row.words, numbers.size, numbers.weight, columns.wordsWidth) : [];
  const { beside, figureAt } = besideName(figure, names, words, layout);
  const labelAt = (at: number) =>
    bandWords === null ? null : bandLabel(bandWords, style.place(0), layout, at);
  const top = rowTop + (wide ? (labelAt(rowTop)?.height ?? 0) + (bandWords === null ? 0 : 4) : 0);
  const most = wide ? Math.max(names.length, words.length) : names.length;
  const first = top + layout.firstBaseline;
  const textBottom = first + (most - 1) * lineHeight + (wide || beside ? 0 : words.length * lineHeight);
  const drawn = row.estimate !== null || row.interval !== null;
  const over = labelAt(wide ? rowTop : textBottom + 3);
  const overHeight = wide ? 0 : (over?.height ?? 0);
  const height = textBottom + 12 + (wide || !drawn ? 0 : 26 + overHeight + (under === null ? 0 : 12)) - top;
  const middle = wide ? top + height / 2 : textBottom + 20 + overHeight;
  const underBar =
    under === null || interval === null
      ? []
      : endNumbers(
          { ...interval, estimate: row.estimate ?? (interval.low + interval.high) / 2, printed: under },
          style.place,
          layout,
          middle + 27,
        );
  // In columns lines stand about the middle of the row.
  const centred = (count: number): number => (wide ? first + ((most - count) * lineHeight) / 2 : first);
  const labels: readonly Label[] = [
    ...names.map((line, index) =>
      label(name, 'start', inset, centred(names.length) + index * lineHeight, line),
    ),
    ...(figure === '' ? [] : [label(estimate, 'end', figureAt ?? columns.figureEnd, centred(1), figure)]),
    ...words.map((line, index) =>
      wide || beside
        ? label(numbers, 'end', width, centred(words.length) + index * lineHeight, line)
        : label(numbers, 'start', 0, first + (names.length + index) * lineHeight, line),
    ),
  ];
  const ground = wide ? ([top, top + height] as const) : ([middle - 12, middle + 12] as const);
  return {
    height: height + top - rowTop,
    marks: [
      ...(wide || drawn ? track(row, style, ground, middle) : []),
      lines([{ x1: 0, y1: rowTop, x2: width, y2: rowTop }], row.setOff ? 'axis' : 'rule', 1),
      ...(row.contender === null
        ? []
        : [
            marks(
              [{ x: layout.markInset, y: centred(names.length) - 5 }],
              contenderMark(row.contender),
              layout.markRadius,
            ),
          ]),
      ...texts([...labels, ...(over?.labels ?? []), ...underBar]),
    ],
  };
};

/** Throws unless every number of a row is finite and low to high rise about the estimate. */
export const refuseRow = ({ name, estimate, interval }: IntervalRow): void => {
  const numbers = [interval?.low, estimate, interval?.high].filter((value) => value != null);
  if (numbers.some((value, index) => !Number.isFinite(value) || value < (numbers[index - 1] ?? -Infinity))) {
    throw new Error(`${name}: ${numbers.join(', ')} must be numbers in rising order.`);
  }
};
