import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fewColours } from '../../src/kit/fewColours.ts';
import type { Pixels } from '../../src/kit/pixels.ts';

const bytesOf = (words: readonly number[]): Uint8Array => new Uint8Array(Uint32Array.from(words).buffer);

const picture = (width: number, words: readonly number[]): Pixels => ({
  width,
  height: words.length / width,
  rgba: bytesOf(words),
});

/** The same choice by the book: colours counted, the most frequent first, others given to the nearest. */
function byTheBook({ rgba }: Pixels): { readonly palette: number[][]; readonly places: number[] } {
  const pixels = Array.from({ length: rgba.length / 4 }, (_, at) => [...rgba.subarray(at * 4, at * 4 + 4)]);
  const counted = new Map<string, { readonly colour: number[]; count: number }>();
  for (const colour of pixels) {
    const known = counted.get(colour.join()) ?? { colour, count: 0 };
    known.count += 1;
    counted.set(colour.join(), known);
  }
  const far = (one: number[], other: number[]): number =>
    one.reduce((sum, part, at) => sum + (part - (other[at] ?? NaN)) ** 2, 0);
  const palette: number[][] = [];
  const placeOf = new Map<string, number>();
  for (const { colour } of [...counted.values()].toSorted((x, y) => y.count - x.count)) {
    const distances = palette.map((one) => far(colour, one));
    const least = Math.min(...distances);
    const taken = palette.length < 256 && (palette.length < 32 || least > 64);
    placeOf.set(colour.join(), taken ? palette.push(colour) - 1 : distances.indexOf(least));
  }
  return { palette, places: pixels.map((colour) => placeOf.get(colour.join()) ?? NaN) };
}

function expectByTheBook(pixels: Pixels): void {
  const { palette, places } = fewColours(pixels);
  const expected = byTheBook(pixels);
  expect(palette).toEqual(expected.palette);
  expect([...places]).toEqual(expected.places);
}

const word = fc.oneof(fc.constantFrom(0xfff2f8fa, 0xff25211d, 0), fc.integer({ min: 0, max: 2 ** 32 - 1 }));

test('colours and places are those of counting and comparing pixel by pixel, rows alike among them', () => {
  const rows = fc
    .integer({ min: 1, max: 60 })
    .chain((width) =>
      fc.array(
        fc.tuple(fc.array(word, { minLength: width, maxLength: width }), fc.integer({ min: 1, max: 3 })),
        { minLength: 1, maxLength: 8 },
      ),
    );
  fc.assert(
    fc.property(rows, (drawn) => {
      const all = drawn.flatMap(([row, times]) => Array.from({ length: times }, () => row));
      expectByTheBook(picture(all[0]?.length ?? 1, all.flat()));
    }),
    { numRuns: 60 },
  );
});

test('more colours than there is room for at first are all counted', () => {
  const words = Array.from({ length: 9_000 }, (_, at) => Math.imul(at % 4_500, 0x9e3779b1) >>> 0);
  expectByTheBook(picture(90, words));
});

test('rows stand after as many zeros as are asked for, whatever the picture before was like', () => {
  fewColours(picture(3, [1, 2, 3, 4, 5, 6, 7, 8, 9]));
  const { places } = fewColours(picture(2, [7, 8, 7, 8, 8, 8]), 1);
  expect([...places]).toEqual([0, 1, 0, 0, 1, 0, 0, 0, 0]);
});

test('pixels that do not start at a whole word are read as well', () => {
  const rgba = new Uint8Array(17).subarray(1);
  rgba.set(bytesOf([0xffffffff, 0xff000000, 0xffffffff, 0xffffffff]));
  expect([...fewColours({ width: 2, height: 2, rgba }).places]).toEqual([0, 1, 0, 0]);
});
