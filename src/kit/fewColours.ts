import type { Pixels } from './encodePng.ts';

/** Red, green, blue and how much it covers, 0 to 255 each; the first three multiplied by the last. */
export type Colour = readonly [red: number, green: number, blue: number, cover: number];

/** A picture in at most 256 colours. */
export interface FewColours {
  /** The most frequent first. */
  readonly palette: readonly Colour[];
  /** Each row after `before` zeros: place in the palette of each pixel, from the left; rows from the top. */
  readonly places: Uint8Array;
}

const most = 256;
/** So many of the most frequent colours are kept however near they lie to one another: they fill areas. */
const exact = 32;
/** Others no farther than this from one in the palette, as a distance in red, green, blue and cover, are taken for it. */
const alike = 8;

/** The most frequent colours of a picture; others, of edges of letters, become the nearest of these. */
export function fewColours(pixels: Pixels, before = 0): FewColours {
  const { colours, counts, runs } = runsOf(pixels);
  const { palette, placeOf } = chosen(colours, counts);
  return { palette, places: placesOf(pixels, runs, placeOf, before) };
}

/** Four bytes a pixel, in the order of the raster; places in it are four times those of pixels. */
type Bytes = Uint8Array;

interface Runs {
  /** The colours of a picture in the order in which they appear. */
  readonly colours: Bytes;
  /** How many pixels have each. */
  readonly counts: Int32Array;
  /** Pixels of one colour: its number, then where the run ends. */
  readonly runs: Int32Array;
}

// A picture has a few thousand colours and two hundred thousand runs; what the last one needed serves the next.
let slots = new Int32Array(1 << 14);
let runsRoom = new Int32Array(1 << 19);

/** A drawing is mostly paper, and few pixels differ from the one before. */
function runsOf({ width, height, rgba }: Pixels): Runs {
  const end = width * height;
  // Four bytes at once, in any order: only whether two pixels are alike matters.
  const whole = rgba.byteOffset % 4 === 0 ? rgba : rgba.slice();
  const words = new Int32Array(whole.buffer, whole.byteOffset, end);
  let known = slots.fill(0);
  let runs = runsRoom;
  let colours = new Int32Array(known.length / 2);
  let counts = new Int32Array(known.length / 2);
  let [count, length] = [0, 0];
  for (let from = 0; from < end;) {
    const word = words[from] ?? 0;
    let to = from + 1;
    while (to < end && words[to] === word) to += 1;
    if (count === colours.length) {
      colours = twice(colours);
      counts = twice(counts);
      known = slotsOf(colours.subarray(0, count), known.length * 2);
      slots = known;
    }
    const slot = slotOf(word, known, colours);
    let number = (known[slot] ?? 0) - 1;
    if (number < 0) {
      number = count;
      count += 1;
      known[slot] = count;
      colours[number] = word;
    }
    counts[number] = (counts[number] ?? 0) + to - from;
    if (length === runs.length) runs = twice(runs);
    runs[length] = number;
    runs[length + 1] = to;
    length += 2;
    from = to;
  }
  runsRoom = runs;
  return {
    colours: new Uint8Array(colours.buffer, 0, count * 4),
    counts: counts.subarray(0, count),
    runs: runs.subarray(0, length),
  };
}

function twice(numbers: Int32Array): Int32Array<ArrayBuffer> {
  const larger = new Int32Array(numbers.length * 2);
  larger.set(numbers);
  return larger;
}

/** Where the number of a colour stands, or is to stand, in a table of numbers plus one; its length is a power of two. */
function slotOf(word: number, known: Int32Array, colours: Int32Array): number {
  const last = known.length - 1;
  let slot = Math.imul(word ^ (word >>> 15), 0x2c1b3c6d);
  slot = (slot ^ (slot >>> 13)) & last;
  for (;;) {
    const number = known[slot] ?? 0;
    if (number === 0 || colours[number - 1] === word) return slot;
    slot = (slot + 1) & last;
  }
}

function slotsOf(colours: Int32Array, length: number): Int32Array<ArrayBuffer> {
  const known = new Int32Array(length);
  colours.forEach((word, number) => {
    known[slotOf(word, known, colours)] = number + 1;
  });
  return known;
}

/** The colours of the palette, and for each colour of the picture its place there. */
function chosen(
  colours: Bytes,
  counts: Int32Array,
): { readonly palette: readonly Colour[]; readonly placeOf: Uint8Array } {
  const frequent = [...counts.keys()].toSorted((x, y) => (counts[y] ?? 0) - (counts[x] ?? 0) || x - y);
  const palette = new Uint8Array(most * 4);
  const placeOf = new Uint8Array(counts.length);
  let size = 0;
  for (const number of frequent) {
    const at = number * 4;
    let place = nearest(colours, at, palette, size);
    if (size < most && (size < exact || distance(colours, at, palette, place * 4) > alike ** 2)) {
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

/** Place of the nearest of the first `size` colours of a palette; 0 where there is none. */
function nearest(colours: Bytes, at: number, palette: Bytes, size: number): number {
  let place = 0;
  let least = Infinity;
  for (let other = 0; other < size && least > 0; other += 1) {
    const far = distance(colours, at, palette, other * 4);
    if (far >= least) continue;
    least = far;
    place = other;
  }
  return place;
}

/** Square of the distance. */
function distance(ones: Bytes, one: number, others: Bytes, other: number): number {
  const red = (ones[one] ?? 0) - (others[other] ?? 0);
  const green = (ones[one + 1] ?? 0) - (others[other + 1] ?? 0);
  const blue = (ones[one + 2] ?? 0) - (others[other + 2] ?? 0);
  const cover = (ones[one + 3] ?? 0) - (others[other + 3] ?? 0);
  return red * red + green * green + blue * blue + cover * cover;
}

function placesOf(
  { width, height }: Pixels,
  runs: Int32Array,
  placeOf: Uint8Array,
  before: number,
): Uint8Array {
  const stride = before + width;
  const places = new Uint8Array(height * stride);
  let [from, row, rowEnd] = [0, 0, width];
  for (let run = 0; run < runs.length; run += 2) {
    const place = placeOf[runs[run] ?? 0] ?? 0;
    const to = runs[run + 1] ?? from;
    while (from < to) {
      const end = Math.min(to, rowEnd);
      const shift = (row + 1) * before;
      if (end - from > 40) places.fill(place, from + shift, end + shift);
      else for (let at = from; at < end; at += 1) places[at + shift] = place;
      from = end;
      if (from === rowEnd) {
        row += 1;
        rowEnd += width;
      }
    }
  }
  return places;
}
