import { escapeXml } from '../prose/escapeXml.ts';
import { paint } from './palette.ts';
import type { RingAndBar, RingAndBarRow } from './ringAndBar.ts';
import { textWidth } from './textWidth.ts';

/** Lengths of the picture in px; all but `width` grow together on a picture to be seen from farther away. */
interface RingAndBarSize {
  readonly width: number;
  readonly row: number;
  readonly thin: number;
  readonly thick: number;
  readonly ring: number;
  readonly ringStroke: number;
  readonly text: number;
  /** Side of the square that the hatch repeats: whole pixels, which are drawn sooner and take less to keep. */
  readonly hatch: number;
}

/** As it stands in a list of reports; a screen of 320 px leaves 288, where its letters are still 13.9 px. */
export const inList: RingAndBarSize = ringAndBarSize(300, 1);

/** The picture at another width, its signs and letters `scale` times as large. */
export function ringAndBarSize(width: number, scale: number): RingAndBarSize {
  return {
    width,
    row: 22 * scale,
    thin: 2.5 * scale,
    thick: 8 * scale,
    ring: 5 * scale,
    ringStroke: 2.5 * scale,
    text: 14.5 * scale,
    hatch: Math.round(8.5 * scale),
  };
}

/** Marks and words without the `svg` around them, from the top left corner on. */
interface RingAndBarDrawing {
  readonly width: number;
  readonly height: number;
  readonly marks: string;
}

/**
 * The band of what is too small to matter, and on it a bar for each pair: thin inside the band and thick outside, filled
 * unless the order leaves the cause open, with a ring for the best estimate. Colours are names of tokens, see
 * `literalColours`.
 *
 * @param prefix of the one id inside, unique on its page
 * @param scale whether its numbers stand below; without them it has the scale of one that is drawn under it
 */
export function ringAndBarDrawing(
  sign: RingAndBar,
  prefix: string,
  size: RingAndBarSize = inList,
  { scale = true } = {},
): RingAndBarDrawing {
  const { width, row, ring, ringStroke, thick, text } = size;
  const inset = ring + ringStroke / 2;
  const { from, to, matters, far } = sign;
  const x = (value: number): number => inset + ((value - from) / (to - from)) * (width - 2 * inset);
  const bottom = sign.rows.length * row;
  const height = Math.ceil(scale ? bottom + text * 1.5 : bottom + 1);
  const [left, right] = [x(-matters), x(matters)];
  const upright = (at: number): string => `M${px(at)},0V${px(bottom)}`;
  const hatch = `${prefix}-hatch`;
  const band =
    matters > 0
      ? hatched(hatch, size.hatch) +
        `<rect x="${px(left)}" y="0" width="${px(right - left)}" height="${px(bottom)}" fill="url(#${hatch})"/>` +
        `<path d="${upright(left)}${upright(right)}" stroke="${paint('band-edge')}" stroke-width="1.25"/>`
      : '';
  const zero = `<path d="${upright(x(0))}" stroke="${paint('ink')}" stroke-width="1.25"/>`;
  const rows = sign.rows.map((one, index) => drawnRow(one, matters, x, row * (index + 0.5), size));
  // The zero moves aside where the words at the other end would run into it.
  const farWidth = textWidth(far.words, text, 400);
  const besides = x(0) + text / 2 > width - farWidth;
  const tick = `<path d="M${px(x(far.at))},${px(bottom)}v${px(thick / 2)}" stroke="${paint('axis')}" stroke-width="1.25"/>`;
  const words = (at: number, anchor: string, said: string): string =>
    `<text x="${px(at)}" y="${px(bottom + text * 1.25)}" text-anchor="${anchor}">${escapeXml(said)}</text>`;
  return {
    width,
    height,
    marks:
      band +
      zero +
      `<path d="M${px(x(from))},${px(bottom)}H${px(x(to))}" stroke="${paint('axis')}" stroke-width="1"/>` +
      `<g fill="none" stroke="${paint('ink')}">${rows.join('')}</g>` +
      (scale
        ? tick +
          `<g font-size="${px(text)}" fill="${paint('ink-2')}">` +
          words(x(0) - (besides ? text / 4 : 0), besides ? 'end' : 'middle', '0') +
          words(width, 'end', far.words) +
          `</g>`
        : ''),
  };
}

/** The pattern of the band, in strokes as wide as they are in a list beside their distance. */
function hatched(id: string, side: number): string {
  const [less, more] = [px(side * 0.75), px(side * 1.25)];
  const strokes = `M0,${side}L${side},0M${px(-side / 4)},${px(side / 4)}L${px(side / 4)},${px(-side / 4)}M${less},${more}L${more},${less}`;
  return (
    `<defs><pattern id="${id}" width="${side}" height="${side}" patternUnits="userSpaceOnUse"><rect width="${side}" height="${side}" fill="${paint('band')}"/>` +
    `<path d="${strokes}" stroke="${paint('hatch')}" stroke-width="${px(side * 0.18)}"/></pattern></defs>`
  );
}

/** One pair: a thin line, thick ends, the ring over them; where the cause is open neither line nor ends are filled. */
function drawnRow(
  { estimate, low, high, credit }: RingAndBarRow,
  matters: number,
  x: (value: number) => number,
  y: number,
  { thin, thick, ring, ringStroke }: RingAndBarSize,
): string {
  const beyond = [[low, Math.min(high, -matters)] as const, [Math.max(low, matters), high] as const].filter(
    ([start, end]) => start < end,
  );
  const line = (from: number, to: number): string => `M${px(x(from))},${px(y)}H${px(x(to))}`;
  const box = ([from, to]: readonly [number, number], tall: number): string => {
    const [left, right] = [x(from) + thin / 4, x(to) - thin / 4];
    return `M${px(left)},${px(y - tall / 2 + thin / 4)}H${px(right)}v${px(tall - thin / 2)}H${px(left)}z`;
  };
  const ends = beyond
    .map(([from, to]) => (credit === 'open' ? box([from, to], thick) : line(from, to)))
    .join('');
  const drawnEnds =
    ends === ''
      ? ''
      : credit === 'open'
        ? `<path d="${ends}" fill="${paint('paper')}" stroke-width="${px(thin / 2)}"/>`
        : `<path d="${ends}" stroke-width="${px(thick)}"/>`;
  const shown = `<circle cx="${px(x(estimate))}" cy="${px(y)}" r="${px(ring)}" fill="${paint('paper')}" stroke-width="${px(ringStroke)}"/>`;
  const within = [Math.max(low, -matters), Math.min(high, matters)] as const;
  const inside = within[0] < within[1] ? box(within, 2 * thin) : '';
  const hollow =
    inside === '' ? '' : `<path d="${inside}" fill="${paint('paper')}" stroke-width="${px(thin / 2)}"/>`;
  const whole = credit === 'open' ? hollow : `<path d="${line(low, high)}" stroke-width="${px(thin)}"/>`;
  // A bar shorter than the ring is drawn inside it, or nothing would be seen of it.
  return x(high) - x(low) < 2 * ring + ringStroke + thin
    ? shown + whole + drawnEnds
    : whole + drawnEnds + shown;
}

/** A tenth of a pixel is finer than any screen. */
function px(value: number): string {
  return String(Math.round(value * 10) / 10 + 0);
}

/** What names the picture: words of its own, or the id of the finding that stands beside it on the page. */
type RingAndBarName = { readonly title: string } | { readonly labelledBy: string };

/** The picture as one named image. */
export function ringAndBarSvg(
  sign: RingAndBar,
  name: RingAndBarName,
  prefix: string,
  size: RingAndBarSize = inList,
): string {
  const { width, height, marks } = ringAndBarDrawing(sign, prefix, size);
  const own = 'title' in name ? `${prefix}-name` : name.labelledBy;
  const title = 'title' in name ? `<title id="${own}">${escapeXml(name.title)}</title>` : '';
  return `<svg class="chart" xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="${own}">${title}${marks}</svg>`;
}
