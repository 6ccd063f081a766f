import type { dot } from '@observablehq/plot';
import type { ContenderMark } from './contenderMarks.ts';
import { noMark, ownMark, type Mark } from './mark.ts';
import { paint, type Token } from './palette.ts';
import { svgElement } from './svgElement.ts';
import type { Weight } from './textWidth.ts';

/** A place in px from the top left corner of the chart. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** One line of text; `y` is its baseline. */
export interface Label extends Spot {
  readonly text: string;
  readonly size: number;
  readonly weight: Weight;
  readonly colour: 'ink' | 'ink-2';
  readonly anchor: 'start' | 'middle' | 'end';
}

export const label = (
  style: Pick<Label, 'size' | 'weight' | 'colour'>,
  anchor: Label['anchor'],
  x: number,
  y: number,
  words: string,
): Label => ({ ...style, anchor, x, y, text: words });

/** A straight line, or an area by two corners. */
export interface Line {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

interface Channel {
  readonly value: readonly number[];
  readonly scale: null;
}

/** Numbers for a mark of Plot that are px already. Without a scale it neither converts nor copies them. */
const inPx = (value: readonly number[]): Channel => ({ value, scale: null });

/** Where a mark of Plot shows each of these. */
export const at = (spots: readonly Spot[]): { readonly x: Channel; readonly y: Channel } => ({
  x: inPx(spots.map(({ x }) => x)),
  y: inPx(spots.map(({ y }) => y)),
});

/** Dots stay in the order given, which Plot need not find out. */
const unsorted = { sort: null } as const;

/** Texts, those of one style in one group; where lines run behind them, `clear` keeps a margin of paper round the letters. */
export const texts = (labels: readonly Label[], { clear = false } = {}): readonly Mark[] =>
  [
    ...Map.groupBy(labels, ({ size, weight, colour, anchor }) =>
      [size, weight, colour, anchor].join(),
    ).values(),
  ].flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    return [
      ({ text }: Parameters<Mark>[0]) =>
        text(group, {
          ...at(group),
          text: ({ text: words }: Label) => words.replaceAll(/\s+/g, ' '),
          fontSize: first.size,
          fontWeight: first.weight,
          fill: paint(first.colour),
          ...(clear ? { stroke: paint('paper'), strokeWidth: 4 } : {}),
          textAnchor: first.anchor,
          lineAnchor: 'bottom',
        }),
    ];
  });

/** From one end of a line to the other; along the page and up it one number is enough. */
const lineTo = ({ x1, y1, x2, y2 }: Line): string =>
  `M${x1},${y1}${y1 === y2 ? `H${x2}` : x1 === x2 ? `V${y2}` : `L${x2},${y2}`}`;

/** Straight lines of one kind, as one path. */
export const lines = (of: readonly Line[], colour: Token, width: number): Mark =>
  of.length === 0
    ? noMark
    : ownMark((document) =>
        svgElement(document, 'path', {
          d: of.map(lineTo).join(''),
          fill: 'none',
          stroke: paint(colour),
          'stroke-width': width,
        }),
      );

const ringRadius = 7;
const ringStroke = 3;

/** From the ring's centre to its outer edge, px. */
export const ringReach = ringRadius + ringStroke / 2;

/** The ring: an average or an estimated gap. */
export const ring =
  (spot: Spot, radius = ringRadius): Mark =>
  ({ dot }) =>
    dot([spot], {
      ...at([spot]),
      ...unsorted,
      r: radius,
      fill: paint('paper'),
      stroke: paint('ink'),
      strokeWidth: ringStroke,
    });

/** A stretch of a horizontal bar, px. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** The bar: a likely range. Thin throughout, thick where it would matter. */
export const bar = (y: number, whole: Stretch, thick: readonly Stretch[], thickness = 9): readonly Mark[] => {
  const along = ({ from, to }: Stretch): Line => ({ x1: from, y1: y, x2: to, y2: y });
  return [lines([along(whole)], 'ink', 2.5), lines(thick.map(along), 'ink', thickness)];
};

/** The bar of a difference whose cause is open: as wide as `bar`, and not filled. */
export const openBar = (y: number, whole: Stretch, thick: readonly Stretch[]): readonly Mark[] => [
  outlined([whole], y, 2.5),
  outlined(thick, y, 4.5),
];

const openStroke = 1.5;

/** Boxes about a height, `half` px up and down with their outline. */
const outlined = (stretches: readonly Stretch[], y: number, half: number): Mark =>
  stretches.length === 0
    ? noMark
    : ownMark((document) =>
        svgElement(document, 'path', {
          d: stretches
            .map(({ from, to }) => {
              const reach = half - openStroke / 2;
              return `M${from},${y - reach}H${to}V${y + reach}H${from}Z`;
            })
            .join(''),
          fill: paint('paper'),
          stroke: paint('ink'),
          'stroke-width': openStroke,
        }),
      );

/** Bar and ring together; a bar shorter than the ring is drawn inside it and slighter, or nothing would be seen of it. */
export const barWithRing = (
  { x, y }: Spot,
  whole: Stretch,
  thick: readonly Stretch[],
  open = false,
): readonly Mark[] => {
  const shown = ring({ x, y });
  if (open) return [...openBar(y, whole, thick), shown];
  return Math.abs(whole.to - whole.from) < 2 * ringReach + 6
    ? [shown, ...bar(y, whole, thick, 5)]
    : [...bar(y, whole, thick), shown];
};

/**
 * The pattern behind what is too small to matter, for `hatched`. It repeats every 14 px of an exported picture, which is 1200 px for
 * 768, so that the picture stays small.
 */
export const hatch: Mark = ownMark((document) => {
  const side = 8.96;
  const size = { width: side, height: side };
  return svgElement(document, 'defs', {}, [
    svgElement(document, 'pattern', { id: 'hatch', ...size, patternUnits: 'userSpaceOnUse' }, [
      svgElement(document, 'rect', { ...size, fill: paint('band') }),
      svgElement(document, 'path', {
        d: `M0 ${side}L${side} 0M-2 2L2 -2M${side - 2} ${side + 2}L${side + 2} ${side - 2}`,
        stroke: paint('hatch'),
        'stroke-width': 1.5,
      }),
    ]),
  ]);
});

/** Areas filled with the hatch; corners in px. */
export const hatched =
  (areas: readonly Line[]): Mark =>
  ({ rect }) =>
    rect(areas, {
      x1: inPx(areas.map(({ x1 }) => x1)),
      y1: inPx(areas.map(({ y1 }) => y1)),
      x2: inPx(areas.map(({ x2 }) => x2)),
      y2: inPx(areas.map(({ y2 }) => y2)),
      fill: 'url(#hatch)',
    });

/** What Plot hands a symbol to draw itself with. */
interface Pen {
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  closePath(): void;
}

/** A contender's outline for Plot, at the radius the mark is drawn with. */
const symbolOf = ({
  corners,
}: ContenderMark): NonNullable<NonNullable<Parameters<typeof dot>[1]>['symbol']> =>
  corners.length === 0
    ? 'circle'
    : {
        draw(path: Pen, area: number) {
          const radius = Math.sqrt(area / Math.PI);
          for (const [index, [x, y]] of corners.entries()) {
            if (index === 0) path.moveTo(x * radius, y * radius);
            else path.lineTo(x * radius, y * radius);
          }
          path.closePath();
        },
      };

/** Filled marks of one contender, with a hair of paper round them that keeps neighbours apart. */
export const marks =
  (spots: readonly Spot[], mark: ContenderMark, radius: number): Mark =>
  ({ dot }) =>
    dot(spots, {
      ...at(spots),
      ...unsorted,
      r: radius,
      symbol: symbolOf(mark),
      fill: paint(mark.colour),
      stroke: paint('paper'),
      strokeWidth: 1,
      paintOrder: 'stroke',
    });

/** Marks of shots that were left out: hollow, one stroke through. */
export const leftOutMarks = (
  spots: readonly Spot[],
  mark: ContenderMark,
  radius: number,
): readonly Mark[] => {
  if (spots.length === 0) return [];
  const hollow: Mark = ({ dot }) =>
    dot(spots, {
      ...at(spots),
      ...unsorted,
      r: radius * 0.875,
      symbol: symbolOf(mark),
      fill: paint('paper'),
      stroke: paint(mark.colour),
      strokeWidth: 1.5,
    });
  const through = spots.map(({ x, y }) => ({
    x1: x - radius,
    y1: y + radius,
    x2: x + radius,
    y2: y - radius,
  }));
  return [hollow, lines(through, mark.colour, 1.25)];
};
