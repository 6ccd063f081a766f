import type { Pixels } from './encodePng.ts';

/** A picture in at most 256 colours. */
export interface FewColours {
  /** Colours as red, green and blue, eight bits each, the most frequent first. */
  readonly palette: readonly number[];
  /** Place in the palette of each pixel, from the top left. */
  readonly places: Uint8Array;
}

const most = 256;
/** So many of the most frequent colours are kept however near they lie to one another: they fill areas. */
const exact = 32;
/** Others closer than this to one in the palette, as a distance in red, green and blue, are taken for it. */
const alike = 8;

/** The most frequent colours of a picture; others, of edges of letters, become the nearest of these. */
export function fewColours({ width, height, rgba }: Pixels): FewColours {
  const colours = Uint32Array.from({ length: width * height }, (_, pixel) => {
    const from = pixel * 4;
    return ((rgba[from] ?? 0) << 16) | ((rgba[from + 1] ?? 0) << 8) | (rgba[from + 2] ?? 0);
  });
  const counts = new Map<number, number>();
  for (const colour of colours) counts.set(colour, (counts.get(colour) ?? 0) + 1);
  const frequent = [...counts].toSorted(([x, often], [y, seldom]) => seldom - often || x - y);
  const palette: number[] = [];
  for (const [colour] of frequent) {
    const own = palette.length < exact || palette.every((other) => distance(colour, other) > alike);
    if (palette.length < most && own) palette.push(colour);
  }
  const placeOf = new Map(frequent.map(([colour]) => [colour, nearest(colour, palette)]));
  return { palette, places: Uint8Array.from(colours, (colour) => placeOf.get(colour) ?? 0) };
}

function nearest(colour: number, palette: readonly number[]): number {
  const distances = palette.map((other) => distance(colour, other));
  return distances.indexOf(Math.min(...distances));
}

function distance(one: number, other: number): number {
  return Math.hypot(
    (one >> 16) - (other >> 16),
    ((one >> 8) & 255) - ((other >> 8) & 255),
    (one & 255) - (other & 255),
  );
}
