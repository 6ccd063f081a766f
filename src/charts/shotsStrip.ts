import { greatestOf } from '../stats/extremes.ts';
import type { ContenderName } from './contenderName.ts';
import { contenderMark, markExtent, type ContenderMark, type Extent } from './contenderMarks.ts';
import type { Layout } from './layout.ts';
import type { Part } from './part.ts';
import type { RoundScale } from './roundScale.ts';
import {
  barWithRing,
  label,
  leftOutMarks,
  lines,
  marks,
  ring,
  ringReach,
  texts,
  type Spot,
} from './signs.ts';
import { swarm } from './swarm.ts';
import { fitText, textWidth, wrapText } from './textWidth.ts';

interface Shot {
  /** In the unit the reader sees. */
  readonly value: number;
  readonly leftOut: boolean;
}

interface Average {
  readonly value: number;
  /** Rounded, without unit. */
  readonly text: string;
  /** The likely range of the average; null where too few shots to say. */
  readonly interval: { readonly low: number; readonly high: number } | null;
}

/** The shots of one contender. */
export interface ShotsStrip {
  readonly contender: ContenderName;
  readonly shots: readonly Shot[];
  /** Said beside the name: "12 shots, 225 to 245, average 237". */
  readonly numbers: string;
  readonly average: Average | null;
}

const gap = 1;
/** Least height of the band of shots, px. */
const least = 24;

/** How far a shot's mark reaches: the hair of paper round it, or the stroke through it. */
export const shotExtent = (mark: ContenderMark, leftOut: boolean, radius: number): Extent => {
  const { left, right, up, down } = markExtent(mark, leftOut ? radius * 0.875 : radius);
  const outline = leftOut ? 0.75 : 0.5;
  const stroke = leftOut ? radius + 0.5 : 0;
  const reach = (side: number): number => Math.max(side + outline, stroke);
  return { left: reach(left), right: reach(right), up: reach(up), down: reach(down) };
};

/** Shots of a strip with their places about its middle line, and how far they reach above and below it, px. */
const spread = ({ contender, shots }: ShotsStrip, scale: RoundScale, radius: number) => {
  const mark = contenderMark(contender.index);
  const sized = shots.map(({ value, leftOut }) => ({
    x: scale.place(value),
    extent: shotExtent(mark, leftOut, radius),
    shape: leftOut ? null : mark.shape,
    leftOut,
  }));
  const heights = swarm(sized, gap);
  const placed = sized.map((shot, index) => ({ ...shot, y: heights[index] ?? 0 }));
  return {
    placed,
    up: Math.max(least / 2, greatestOf(placed.map(({ y, extent }) => extent.up - y))),
    down: Math.max(least / 2, greatestOf(placed.map(({ y, extent }) => extent.down + y))),
  };
};

/** Radii of a shot's mark, px: the usual one, and smaller ones for crowds. */
const radii = [4.5, 3.8, 3.2, 2.7] as const;
/** The height of shots from which a smaller mark is tried, px. */
const tall = 150;

/** The largest radius at which no strip grows tall; one for all strips, so that no contender's marks weigh more. */
export const shotRadius = (strips: readonly ShotsStrip[], scale: RoundScale): number =>
  radii.find((radius) =>
    strips.every((strip) => {
      const { up, down } = spread(strip, scale, radius);
      return up + down <= tall;
    }),
  ) ?? radii[3];

/** Whether name and numbers of a strip fit on one line. */
export const headFits = (
  { contender, numbers }: ShotsStrip,
  { name, numbers: style, nameInset, width }: Layout,
): boolean =>
  nameInset +
    textWidth(contender.label, name.size, name.weight) +
    24 +
    textWidth(numbers, style.size, style.weight) <=
  width;

/** Name, and numbers beside it or below. */
const head = ({ contender, numbers: words }: ShotsStrip, beside: boolean, layout: Layout, top: number) => {
  const { name, numbers, nameInset, width, textRoom } = layout;
  const [fitted = ''] = fitText(contender.label, name.size, name.weight, width - nameInset, 1);
  const first = label(name, 'start', nameInset, top + 22, fitted);
  if (beside) return { labels: [first, label(numbers, 'end', width, top + 22, words)], bottom: top + 22 };
  const below = wrapText(words, numbers.size, numbers.weight, textRoom);
  return {
    labels: [first, ...below.map((line, index) => label(numbers, 'start', 0, top + 42 + index * 19, line))],
    bottom: top + 23 + below.length * 19,
  };
};

/** Ring and bar of the average under the shots, with its words beside, or where neither side has room below. */
const averagePart = (
  { average }: ShotsStrip,
  scale: RoundScale,
  { estimate, width, textRoom }: Layout,
  middle: number,
) => {
  if (average === null) return { marks: [], height: -8 };
  const x = scale.place(average.value);
  const { interval } = average;
  const whole =
    interval === null
      ? { from: x, to: x }
      : { from: scale.place(interval.low), to: scale.place(interval.high) };
  // As wide as in the letters of others.
  const wordsWidth = (textWidth(average.text, estimate.size, estimate.weight) * width) / textRoom;
  const spot = { x, y: middle };
  const after = Math.max(whole.to, x + ringReach) + 7;
  const beforeEnd = Math.min(whole.from, x - ringReach) - 7;
  const under = after + wordsWidth > width && beforeEnd < wordsWidth;
  const words = under
    ? label(
        estimate,
        'middle',
        Math.min(Math.max(x, wordsWidth / 2), width - wordsWidth / 2),
        middle + 24,
        average.text,
      )
    : after + wordsWidth <= width
      ? label(estimate, 'start', after, middle + 5, average.text)
      : label(estimate, 'end', beforeEnd, middle + 5, average.text);
  return {
    marks: [
      ...(interval === null ? [ring(spot)] : barWithRing(spot, whole, [])),
      ...texts([words], { clear: true }),
    ],
    height: under ? 34 : 20,
  };
};

/** What all strips of a chart share. */
interface StripStyle {
  /** Of a shot's mark, px. */
  readonly radius: number;
  /** Whether numbers stand beside the names. */
  readonly beside: boolean;
}

/** One contender's shots, with its average below; a rule above, and one at every numbered step. */
export const shotsStrip = (
  strip: ShotsStrip,
  scale: RoundScale,
  { radius, beside }: StripStyle,
  layout: Layout,
  top: number,
): Part => {
  const mark = contenderMark(strip.contender.index);
  const { labels, bottom } = head(strip, beside, layout, top);
  const { placed, up, down } = spread(strip, scale, radius);
  const middle = bottom + 12 + up;
  const averageMiddle = middle + down + 16;
  const shown = averagePart(strip, scale, layout, averageMiddle);
  const end = averageMiddle + shown.height;
  const spots = (leftOut: boolean): readonly Spot[] =>
    placed.filter((shot) => shot.leftOut === leftOut).map(({ x, y }) => ({ x, y: middle + y }));
  return {
    height: end - top,
    marks: [
      lines([{ x1: 0, y1: top, x2: layout.width, y2: top }], 'rule', 1),
      lines(
        scale.ticks.map(({ x }) => ({ x1: x, y1: bottom + 8, x2: x, y2: end })),
        'rule',
        1,
      ),
      ...shown.marks,
      marks([{ x: layout.markInset, y: top + 17 }], mark, layout.markRadius),
      ...texts(labels),
      ...leftOutMarks(spots(true), mark, radius),
      marks(spots(false), mark, radius),
    ],
  };
};
