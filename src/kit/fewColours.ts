import type { Pixels } from './encodePng.ts';

/** Red, green, blue and how much it covers, 0 to 255 each; the first three multiplied by the last. */
export type Colour = readonly [red: number, green: number, blue: number, cover: number];

/** A picture in at most 256 colours. */
export interface FewColours {
  /** The most frequent first. */
  readonly palette: readonly Colour[];
  /** Place in the palette of each pixel, from the top left. */
  readonly places: Uint8Array;
}

const most = 256;
/** So many of the most frequent colours are kept however near they lie to one another: they fill areas. */
const exact = 32;
/** Others no farther than this from one in the palette, as a distance in red, green, blue and cover, are taken for it. */
const alike = 8;

const clear: Colour = [0, 0, 0, 0];

/** The most frequent colours of a picture; others, of edges of letters, become the nearest of these. */
export function fewColours(pixels: Pixels): FewColours {
  const { colours, counts, runs } = runsOf(pixels);
  const frequent = [...colours.keys()].toSorted((x, y) => (counts[y] ?? 0) - (counts[x] ?? 0) || x - y);
  const palette: Colour[] = [];
  for (const number of frequent) {
    if (palette.length === most) break;
    const colour = colours[number] ?? clear;
    const own = palette.length < exact || palette.every((other) => distance(colour, other) > alike ** 2);
    if (own) palette.push(colour);
  }
  const placeOf = Uint8Array.from(colours, (colour) => nearest(colour, palette));
  const places = new Uint8Array(pixels.width * pixels.height);
  let from = 0;
  for (let run = 0; run < runs.length; run += 2) {
    const to = runs[run + 1] ?? from;
    places.fill(placeOf[runs[run] ?? 0] ?? 0, from, to);
    from = to;
  }
  return { palette, places };
}

/**
 * The colours of a picture in the order in which they appear, and how often each does; and its runs of pixels of one
 * colour: the colour's number, then where the run ends. A drawing is mostly paper, and few pixels differ from the one
 * before.
 */
function runsOf({ width, height, rgba }: Pixels): {
  readonly colours: readonly Colour[];
  readonly counts: readonly number[];
  readonly runs: readonly number[];
} {
  const end = width * height;
  // Four bytes at once, in any order: only whether two pixels are alike matters. Signed, since maps are fast with those.
  const whole = rgba.byteOffset % 4 === 0 ? rgba : rgba.slice();
  const words = new Int32Array(whole.buffer, whole.byteOffset, end);
  const colours: Colour[] = [];
  const counts: number[] = [];
  const runs: number[] = [];
  const known = new Map<number, number>();
  for (let from = 0; from < end;) {
    const word = words[from] ?? 0;
    let to = from + 1;
    while (to < end && words[to] === word) to += 1;
    let number = known.get(word);
    if (number === undefined) {
      number = colours.length;
      known.set(word, number);
      const [red = 0, green = 0, blue = 0, cover = 0] = rgba.subarray(from * 4, from * 4 + 4);
      colours.push([red, green, blue, cover]);
      counts.push(0);
    }
    counts[number] = (counts[number] ?? 0) + to - from;
    runs.push(number, to);
    from = to;
  }
  return { colours, counts, runs };
}

// Asked a hundred thousand times a picture: no iterators.
function nearest(colour: Colour, palette: readonly Colour[]): number {
  let place = 0;
  let least = Infinity;
  for (let at = 0; at < palette.length && least > 0; at += 1) {
    const far = distance(colour, palette[at] ?? clear);
    if (far >= least) continue;
    least = far;
    place = at;
  }
  return place;
}

/** Square of the distance. */
function distance(one: Colour, other: Colour): number {
  const red = one[0] - other[0];
  const green = one[1] - other[1];
  const blue = one[2] - other[2];
  const cover = one[3] - other[3];
  return red * red + green * green + blue * blue + cover * cover;
}
