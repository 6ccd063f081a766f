import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { literalColours, palette, type Ground, type Token } from '../../src/charts/palette.ts';
import { ciede2000, colourDistance, contrast, hueOf, type Triple, type Vision } from './colourScience.ts';

const css = readFileSync(new URL('../../src/styles/tokens.css', import.meta.url), 'utf8');

const frames = readFileSync(new URL('../../src/styles/frameThemes.css', import.meta.url), 'utf8');

/** The hex custom properties of the `:root` rule that follows `start`. */
const declared = (start: string, sheet = css): ReadonlyMap<string, string> => {
  const from = sheet.indexOf(start);
  const rule = sheet.slice(from, sheet.indexOf('}', from));
  return new Map(
    [...rule.matchAll(/--([a-z0-9-]+): (#[0-9a-f]{6});/g)].map(([, name = '', hex = '']) => [name, hex]),
  );
};

const tokens = Object.keys(palette) as Token[];
const contenders = ['umber', 'bluebell', 'pine', 'rose', 'heather', 'lichen'] as const;

describe('tokens.css', () => {
  test('declares every colour of the palette for the light ground and no other', () => {
    expect(Object.fromEntries(declared('color-scheme: light dark'))).toEqual(
      Object.fromEntries(tokens.map((token) => [token, palette[token].light])),
    );
  });

  test('declares for the dark ground every colour that differs there', () => {
    const differing = tokens.filter((token) => palette[token].light !== palette[token].dark);
    expect(Object.fromEntries(declared('prefers-color-scheme: dark'))).toEqual(
      Object.fromEntries(differing.map((token) => [token, palette[token].dark])),
    );
  });

  test('gives every colour a system colour where colours are forced', () => {
    const forced = css.slice(css.indexOf('forced-colors'));
    for (const token of tokens) {
      expect(forced).toMatch(new RegExp(`--${token}: (Canvas|CanvasText|GrayText|LinkText|VisitedText);`));
    }
  });
});

test('frameThemes.css declares the same colours for either ground', () => {
  const sameAs = (rule: string, start: string): void =>
    expect(Object.fromEntries(declared(rule, frames))).toEqual(Object.fromEntries(declared(start)));
  sameAs("data-theme='light'", 'color-scheme: light dark');
  sameAs("data-theme='dark'", 'prefers-color-scheme: dark');
});

describe('contrast, by the WCAG 2.2 formula', () => {
  test('the formula gives 21 for black on white and 4.54 for #767676 on white', () => {
    // WCAG 2.2 definition of contrast ratio; #767676 is the well-known lightest grey to pass 4.5 (from memory).
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
    expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
  });

  // Success criteria 1.4.6 (7:1, text), 1.4.11 (3:1, graphics); rule and hatch are decoration and carry no meaning of their own. The band's are ours.
  const needed: readonly (readonly [Token, Token, number])[] = [
    ['ink', 'paper', 7],
    ['ink-2', 'paper', 7],
    ['link', 'paper', 7],
    ['visited', 'paper', 7],
    ['ink', 'band', 7],
    ['ink', 'hatch', 4.5],
    ['axis', 'paper', 3],
    ['band-edge', 'paper', 3],
    ['band-edge', 'band', 3],
    // What does not matter has to be seen as an area, and its hatch on it.
    ['band', 'paper', 1.6],
    ['hatch', 'band', 1.25],
    ...contenders.map((colour) => [colour, 'paper', 3] as const),
  ];
  test.each((['light', 'dark'] as const).flatMap((ground) => needed.map((row) => [ground, ...row] as const)))(
    '%s: %s on %s reaches %d',
    (ground, front, back, least) => {
      expect(contrast(palette[front][ground], palette[back][ground])).toBeGreaterThanOrEqual(least);
    },
  );

  test('contenders and lines reach 3 on the white of print', () => {
    for (const token of [...contenders, 'axis', 'band-edge'] as const) {
      expect(contrast(palette[token].light, '#ffffff')).toBeGreaterThanOrEqual(3);
    }
  });
});

describe('contenders for eyes that tell colours apart differently', () => {
  // Published test pairs of CIEDE2000: Sharma, Wu & Dalal 2005, table 1 (from memory).
  test.each<readonly [Triple, Triple, number]>([
    [[50, 2.6772, -79.7751], [50, 0, -82.7485], 2.0425],
    [[50, -1.3802, -84.2814], [50, 0, -82.7485], 1],
    [[50, 0, 0], [50, -1, 2], 2.3669],
    [[50, 2.49, -0.001], [50, -2.49, 0.0009], 7.1792],
    [[50, 2.5, 0], [73, 25, -18], 27.1492],
    [[50, 2.5, 0], [61, -5, 29], 22.8977],
    [[60.2574, -34.0099, 36.2677], [60.4626, -34.1751, 39.4387], 1.2644],
    [[2.0776, 0.0795, -1.135], [0.9033, -0.0636, -0.5514], 0.9082],
  ])('the distance of %j and %j is %d', (one, other, expected) => {
    expect(ciede2000(one, other)).toBeCloseTo(expected, 4);
  });

  const nearest = (of: number, vision: Vision, ground: Ground = 'light'): number => {
    const hexes = contenders.slice(0, of).map((colour) => palette[colour][ground]);
    return Math.min(
      ...hexes.flatMap((one, i) => hexes.slice(i + 1).map((other) => colourDistance(one, other, vision))),
    );
  };

  // 14 is our own bar: several times a just noticeable difference (common practice, no source).
  test.each(['normal', 'protan', 'deutan', 'tritan'] as const)(
    '%s: no two of six nearer than 14',
    (vision) => {
      expect(nearest(6, vision)).toBeGreaterThan(14);
    },
  );

  test.each(['normal', 'protan', 'deutan', 'tritan'] as const)(
    '%s: no two of six nearer than 14 on the dark ground',
    (vision) => {
      expect(nearest(6, vision, 'dark')).toBeGreaterThan(14);
    },
  );

  test('on the dark ground the darker three reach 4.5 and keep their hue within 10 degrees', () => {
    for (const colour of ['umber', 'pine', 'heather'] as const) {
      const { light, dark } = palette[colour];
      expect(contrast(dark, palette.paper.dark)).toBeGreaterThanOrEqual(4.5);
      expect(contrast(dark, palette.paper.dark)).toBeGreaterThan(contrast(light, palette.paper.dark));
      const turn = Math.abs(hueOf(dark) - hueOf(light));
      expect(Math.min(turn, 360 - turn)).toBeLessThan(10);
    }
  });

  test('the first two are farther apart than any later choice', () => {
    const worst = (of: number): number =>
      Math.min(...(['normal', 'protan', 'deutan', 'tritan'] as const).map((vision) => nearest(of, vision)));
    // Figures of the palette's design.
    expect([2, 3, 4, 6].map((of) => worst(of).toFixed(1))).toEqual(['49.8', '16.3', '14.9', '14.5']);
  });
});

describe('literalColours', () => {
  test.each<Ground>(['light', 'dark'])('puts the %s values in place of the names', (ground) => {
    expect(literalColours('<g fill="var(--ink)" stroke="var(--band-edge)"/>', ground)).toBe(
      `<g fill="${palette.ink[ground]}" stroke="${palette['band-edge'][ground]}"/>`,
    );
  });

  test('refuses a colour that is not in the palette', () => {
    expect(() => literalColours('<g fill="var(--gold)"/>', 'light')).toThrow(
      'The palette has no colour "gold".',
    );
  });
});
