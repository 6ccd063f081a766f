import { colourRuns, type ColourRuns } from './colourRuns.ts';
import type { Pixels } from './pixels.ts';

/** Red, green, blue and how much it covers, 0 to 255 each; the first three multiplied by the last. */
export type Colour = readonly [red: number, green: number, blue: number, cover: number];

/** A picture in at most 256 colours. */
interface FewColours {
  /** The most frequent first. */
  readonly palette: readonly Colour[];
  /**
   * Each row after `before` zeros: place in the palette of each pixel, from the left; rows from the top. Holds until the
   * next picture is read.
   */
  readonly places: Uint8Array;
}

const most = 256;
/** So many of the most frequent colours are kept however near they lie to one another: they fill areas. */
const exact = 32;
/** Others no farther than this from one in the palette, as a distance in red, green, blue and cover, are taken for it. */
const alike = 8;

/** The most frequent colours of a picture; others, of edges of letters, become the nearest of these. */
export function fewColours(pixels: Pixels, before = 0): FewColours {
  const runs = colourRuns(pixels);
  const { palette, placeOf } = chosen(runs);
  return { palette, places: placesOf(pixels, runs, placeOf, before) };
}

/** The colours of the palette, and for each colour of the picture its place there. */
function chosen({ colours, counts }: ColourRuns): {
  readonly palette: readonly Colour[];
  readonly placeOf: Uint8Array;
} {
  const palette = new Uint8Array(most * 4);
  const placeOf = new Uint8Array(counts.length);
  let size = 0;
  for (const number of frequentFirst(counts)) {
    const at = number * 4;
    let { place, far } = nearest(colours, at, palette, size);
    if (size < most && (size < exact || far > alike ** 2)) {
      place = size;
      size += 1;
      palette.set(colours.subarray(at, at + 4), place * 4);
    }
    placeOf[number] = place;
  }
  return {
    palette: Array.from({ length: size }, (_, place): Colour => {
      const [red = 0, green = 0, blue = 0, cover = 0] = palette.subarray(place * 4, place * 4 + 4);
      return [red, green, blue, cover];
    }),
    placeOf,
  };
}

/** Numbers of colours by how many pixels they have, of equal ones the first to appear. */
function frequentFirst(counts: Int32Array): Int32Array {
  // As one number each they are sorted without a function: no picture has as many colours as fit below the counts.
  const below = 2 ** 24;
  const keys = Float64Array.from(counts, (count, number) => number - count * below).sort();
  return Int32Array.from(keys, (key) => key - Math.floor(key / below) * below);
}

/** The nearest of the first `size` colours of a palette, and the square of its distance; the first where there is none. */
function nearest(
  colours: Uint8Array,
  at: number,
  palette: Uint8Array,
  size: number,
): { readonly place: number; readonly far: number } {
  const [red = 0, green = 0, blue = 0, cover = 0] = colours.subarray(at, at + 4);
  let place = 0;
  let far = Infinity;
  for (let other = 0; other < size && far > 0; other += 1) {
    const r = red - (palette[other * 4] ?? 0);
    const g = green - (palette[other * 4 + 1] ?? 0);
    const b = blue - (palette[other * 4 + 2] ?? 0);
    const c = cover - (palette[other * 4 + 3] ?? 0);
    const distance = r * r + g * g + b * b + c * c;
    if (distance >= far) continue;
    far = distance;
    place = other;
  }
  return { place, far };
}

// Memory that is asked for anew is cleared page by page, which takes as long as the work itself.
let room = new Uint8Array(1 << 20);

function placesOf(
  { width, height }: Pixels,
  { runs, ends }: ColourRuns,
  placeOf: Uint8Array,
  before: number,
): Uint8Array {
  const stride = before + width;
  if (room.length < height * stride) room = new Uint8Array(height * stride);
  const places = room.subarray(0, height * stride);
  let run = 0;
  for (let row = 0; row < height; row += 1) {
    const start = row * stride;
    const end = ends[row] ?? run;
    if (run === end) {
      places.copyWithin(start, start - stride, start);
      continue;
    }
    let at = start + before;
    places.fill(0, start, at);
    for (; run < end; run += 2) {
      const place = placeOf[runs[run] ?? 0] ?? 0;
      const to = start + before + (runs[run + 1] ?? 0);
      if (to - at > 40) places.fill(place, at, to);
      else for (; at < to; at += 1) places[at] = place;
      at = to;
    }
  }
  return places;
}
