import type { Drawing } from './drawnTwice.ts';
import type { Edit } from './htmlEdits.ts';
import type { Picture } from './insidePictures.ts';

/**
 * A file without fonts made small enough, where it is not: the largest pictures give way to their words; then the
 * largest drawings are there once, as for phones, instead of twice; and if that is not enough the largest are left to
 * their words and numbers.
 *
 * @param limit bytes
 */
export function withinLimit(
  limit: number,
  pictures: readonly Picture[],
  drawn: readonly Drawing[],
  written: (edits: readonly Edit[]) => string,
): string {
  // What stands in the place of each, smaller from step to step.
  const places: Edit[][] = [...pictures.map(({ inside }) => [inside]), ...drawn.map(() => [])];
  const steps = [
    ...largestFirst(pictures).map(({ at, of }) => ({ at, edits: [of.inWords] })),
    ...largestFirst(drawn).map(({ at, of }) => ({ at: pictures.length + at, edits: of.once })),
    ...largestFirst(drawn).map(({ at, of }) => ({ at: pictures.length + at, edits: [of.inWords] })),
  ];
  let file = written(places.flat());
  for (const { at, edits } of steps) {
    if (Buffer.byteLength(file) < limit) return file;
    places[at] = [...edits];
    file = written(places.flat());
  }
  return file;
}

function largestFirst<Of extends { readonly size: number }>(
  all: readonly Of[],
): readonly { readonly at: number; readonly of: Of }[] {
  return all.map((of, at) => ({ at, of })).toSorted((x, y) => y.of.size - x.of.size);
}
