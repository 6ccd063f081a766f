import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { onClearGround } from '../../src/kit/clearGround.ts';
import { encodePng } from '../../src/kit/encodePng.ts';

const ground = { width: 40, height: 30, left: 10, top: 20 };

/** An opaque picture of as many colours as there are, one step apart. */
function pictureOf(width: number, height: number, step: number) {
  const rgba = new Uint8Array(width * height * 4);
  for (let at = 0; at < width * height; at += 1) rgba.set([(at * step) % 256, at >> 4, 200, 255], at * 4);
  return { width, height, rgba };
}

async function decoded(png: Uint8Array) {
  const { data, info } = await sharp(png).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  const pixel = (x: number, y: number): readonly number[] => [
    ...data.subarray((y * info.width + x) * 4, (y * info.width + x) * 4 + 4),
  ];
  return { info, pixel, opacities: new Set(data.filter((_, index) => index % 4 === 3)) };
}

describe('the PNG of a picture on a clear ground', () => {
  test('is opaque where it stands and clear everywhere else', async () => {
    const png = encodePng(onClearGround(pictureOf(20, 8, 1), ground));
    const { info, pixel, opacities } = await decoded(png);
    expect([info.width, info.height]).toEqual([40, 30]);
    expect([...opacities].toSorted((x, y) => x - y)).toEqual([0, 255]);
    expect(pixel(10, 20)).toEqual([0, 0, 200, 255]);
    // Colours that do not fill an area may become one that is near.
    const [red = 0, green = 0, ...rest] = pixel(29, 27);
    expect(Math.abs(red - 159) + Math.abs(green - 9)).toBeLessThanOrEqual(8);
    expect(rest).toEqual([200, 255]);
    for (const [x, y] of [
      [9, 20],
      [30, 20],
      [10, 19],
      [10, 28],
      [0, 0],
      [39, 29],
    ] as const)
      expect(pixel(x, y)[3]).toBe(0);
  });

  test('stays opaque where it has more colours than there are places', async () => {
    const { opacities, pixel } = await decoded(
      encodePng(onClearGround(pictureOf(30, 10, 37), { ...ground, left: 5 })),
    );
    expect([...opacities].toSorted((x, y) => x - y)).toEqual([0, 255]);
    for (let x = 5; x < 35; x += 1) expect(pixel(x, 25)[3]).toBe(255);
  });

  test.each([
    { left: 21, top: 20 },
    { left: 10, top: 23 },
    { left: -1, top: 0 },
  ])('has to lie within it: %j', (place) => {
    expect(() => onClearGround(pictureOf(20, 8, 1), { ...ground, ...place })).toThrow('does not lie within');
  });
});
