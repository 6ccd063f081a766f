import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { palette } from '../../src/charts/palette.ts';
import { contrast, hexOf, linearOf } from '../../src/site/brand/contrast.ts';
import { linearOfOklch, oklchOf } from '../../src/site/brand/oklch.ts';
import { nearestAccent } from '../../src/site/brand/nearestAccent.ts';

const colours = fc
  .integer({ min: 0, max: 0xffffff })
  .map((value) => `#${value.toString(16).padStart(6, '0')}`);
const degrees = (hue: number): number => ((hue * 180) / Math.PI + 360) % 360;

describe('contrast', () => {
  test('is that of WCAG 2.2', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
    expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
    expect(contrast(palette.link.light, palette.paper.light)).toBeCloseTo(7.7, 1);
  });

  test('light and colour are each other’s reverse', () => {
    fc.assert(
      fc.property(colours, (colour) => {
        expect(hexOf(linearOf(colour))).toBe(colour);
      }),
    );
  });
});

describe('OKLCH', () => {
  // CSS Color 4, sample values of sRGB colours.
  test.each([
    ['#ff0000', 0.62796, 0.25768, 29.23],
    ['#008000', 0.51975, 0.17686, 142.5],
    ['#0000ff', 0.45201, 0.31321, 264.05],
    ['#ffffff', 1, 0, null],
  ] as const)('of %s is the published one', (hex, lightness, chroma, hue) => {
    const found = oklchOf(linearOf(hex));
    expect(found.lightness).toBeCloseTo(lightness, 4);
    expect(found.chroma).toBeCloseTo(chroma, 4);
    if (hue !== null) expect(degrees(found.hue)).toBeCloseTo(hue, 1);
  });

  test('leads back to the same light', () => {
    fc.assert(
      fc.property(colours, (colour) => {
        expect(hexOf(linearOfOklch(oklchOf(linearOf(colour))))).toBe(colour);
      }),
    );
  });
});

describe('the nearest accent', () => {
  const grounds = fc.constantFrom(palette.paper.light, palette.paper.dark);

  test('stands out, is of the same hue, and no lighter or darker than it must be', () => {
    fc.assert(
      fc.property(colours, grounds, (colour, ground) => {
        const found = nearestAccent(colour, ground, 4.5);
        expect(contrast(found, ground)).toBeGreaterThanOrEqual(4.5);
        if (contrast(colour, ground) >= 4.5) {
          expect(found).toBe(colour);
          return;
        }
        const [own, given] = [oklchOf(linearOf(found)), oklchOf(linearOf(colour))];
        // A step of eight bits turns the hue of a nearly grey colour by any angle.
        if (own.chroma > 0.06) {
          const turned = Math.abs(degrees(own.hue - given.hue));
          expect(Math.min(turned, 360 - turned)).toBeLessThan(3);
        }
        expect(contrast(found, ground)).toBeLessThan(4.75);
      }),
    );
  });

  test('is darker on the light ground and lighter on the dark one', () => {
    expect(nearestAccent('#c98a3b', palette.paper.light, 4.5)).toBe('#a16502');
    expect(nearestAccent('#7a4a12', palette.paper.dark, 4.5)).toBe('#a97643');
  });
});
