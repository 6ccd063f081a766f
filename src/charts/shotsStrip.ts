import type { Shot, ShotsStrip } from './allShotsInput.ts';
import { contenderMark, markExtent, type ContenderMark, type Extent } from './contenderMarks.ts';
import type { Layout } from './layout.ts';
import type { Part } from './part.ts';
import type { ShotsScale } from './shotsScale.ts';
import { bar, label, leftOutMarks, lines, marks, ring, ringReach, texts } from './signs.ts';
import { swarm } from './swarm.ts';
import { fitText, textWidth, wrapText } from './textWidth.ts';

/** Radius of a shot's mark: smaller where many crowd a narrow strip. */
export const shotRadius = (most: number, layout: Layout): number =>
  most > (layout.variant === 'wide' ? 120 : 60) ? 3.4 : 4.5;

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
  const { name, numbers, nameInset, width } = layout;
  const [fitted = ''] = fitText(contender.label, name.size, name.weight, width - nameInset, 1);
  const first = label(name, 'start', nameInset, top + 22, fitted);
  if (beside) return { labels: [first, label(numbers, 'end', width, top + 22, words)], bottom: top + 22 };
  const below = wrapText(words, numbers.size, numbers.weight, width);
  return {
    labels: [first, ...below.map((line, index) => label(numbers, 'start', 0, top + 42 + index * 19, line))],
    bottom: top + 23 + below.length * 19,
  };
};

/** Ring and bar of the average with its number beside, under the shots. */
const averagePart = (
  { average }: ShotsStrip,
  scale: ShotsScale,
  { estimate, width }: Layout,
  middle: number,
) => {
  if (average === null) return [];
  const x = scale.place(average.value);
  const { interval } = average;
  const whole =
    interval === null
      ? { from: x, to: x }
      : { from: scale.place(interval.low), to: scale.place(interval.high) };
  const wordsWidth = textWidth(average.text, estimate.size, estimate.weight);
  const fits = interval === null ? [] : bar(middle, whole, []);
  const shown = ring({ x, y: middle });
  const after = Math.max(whole.to, x + ringReach) + 7;
  const beforeEnd = Math.min(whole.from, x - ringReach) - 7;
  return [
    ...(whole.to - whole.from < 2 * ringReach ? [shown, ...fits] : [...fits, shown]),
    ...texts([
      after + wordsWidth <= width
        ? label(estimate, 'start', after, middle + 5, average.text)
        : label(estimate, 'end', beforeEnd, middle + 5, average.text),
    ]),
  ];
};

/** What all strips of a chart share. */
export interface StripStyle {
  /** Of a shot's mark, px. */
  readonly radius: number;
  /** Whether numbers stand beside the names. */
  readonly beside: boolean;
}

/** One contender's shots, with its average below; a rule above, and one at every numbered step. */
export const shotsStrip = (
  strip: ShotsStrip,
  scale: ShotsScale,
  { radius, beside }: StripStyle,
  layout: Layout,
  top: number,
): Part => {
  const mark = contenderMark(strip.contender.index);
  const { labels, bottom } = head(strip, beside, layout, top);
  const sized = strip.shots.map((shot) => ({
    x: scale.place(shot.value),
    extent: shotExtent(mark, shot.leftOut, radius),
    shape: shot.leftOut ? null : mark.shape,
  }));
  const heights = swarm(sized, gap);
  const reach = (side: 'up' | 'down', sign: 1 | -1): number =>
    Math.max(least / 2, ...sized.map(({ extent }, index) => sign * (heights[index] ?? 0) + extent[side]));
  const middle = bottom + 12 + reach('up', -1);
  const averageMiddle = middle + reach('down', 1) + 16;
  const end = averageMiddle + (strip.average === null ? -8 : 20);
  const spots = (wanted: (shot: Shot) => boolean) =>
    strip.shots.flatMap((shot, index) => {
      const item = sized[index];
      return item !== undefined && wanted(shot) ? [{ x: item.x, y: middle + (heights[index] ?? 0) }] : [];
    });
  return {
    height: end - top,
    marks: [
      lines([{ x1: 0, y1: top, x2: layout.width, y2: top }], 'rule', 1),
      lines(
        scale.ticks.map(({ x }) => ({ x1: x, y1: bottom + 8, x2: x, y2: end })),
        'rule',
        1,
      ),
      ...averagePart(strip, scale, layout, averageMiddle),
      marks([{ x: layout.markInset, y: top + 17 }], mark, layout.markRadius),
      ...texts(labels),
      ...leftOutMarks(
        spots((shot) => shot.leftOut),
        mark,
        radius,
      ),
      marks(
        spots((shot) => !shot.leftOut),
        mark,
        radius,
      ),
    ],
  };
};
