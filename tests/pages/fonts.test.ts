import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fontMetrics } from './fontMetrics.ts';

const css = readFileSync(new URL('../../src/styles/fonts.css', import.meta.url), 'utf8');
const faces = [...css.matchAll(/@font-face \{([^}]*)\}/g)].map(([, body = '']) => body);

const value = (face: string, name: string): string =>
  new RegExp(`${name}:\\s*([^;]+);`).exec(face)?.[1]?.trim() ?? '';
const share = (face: string, name: string): number => parseFloat(value(face, name)) / 100;

interface Stand {
  readonly family: string;
  readonly weight: 400 | 600;
  readonly font: string;
  /** Average advances of ours and of the reader's font, em. */
  readonly ours: number;
  readonly theirs: number;
}

const literata = (weight: number): string =>
  `@fontsource/literata/files/literata-latin-${weight}-normal.woff`;
const sourceSans = (weight: number): string =>
  `@fontsource/source-sans-3/files/source-sans-3-latin-${weight}-normal.woff`;

/** Averages over Latin text as `@capsizecss/metrics` 4 publishes them of the fonts that systems bring; their bold stands for our 600. */
const stands: readonly Stand[] = [
  { family: 'Literata as Georgia', weight: 400, font: literata(400), ours: 0.48, theirs: 913 / 2048 },
  { family: 'Literata as Georgia', weight: 600, font: literata(600), ours: 0.5, theirs: 1062 / 2048 },
  { family: 'Literata as Noto Serif', weight: 400, font: literata(400), ours: 0.48, theirs: 0.481 },
  { family: 'Literata as Noto Serif', weight: 600, font: literata(600), ours: 0.5, theirs: 0.512 },
  { family: 'Source Sans 3 as Arial', weight: 400, font: sourceSans(400), ours: 0.418, theirs: 913 / 2048 },
  { family: 'Source Sans 3 as Arial', weight: 600, font: sourceSans(600), ours: 0.431, theirs: 983 / 2048 },
  { family: 'Source Sans 3 as Roboto', weight: 400, font: sourceSans(400), ours: 0.418, theirs: 911 / 2048 },
  { family: 'Source Sans 3 as Roboto', weight: 600, font: sourceSans(600), ours: 0.431, theirs: 926 / 2048 },
];

describe('fonts', () => {
  test('of ours are optional, so that none comes late and moves the page, and nothing else is fetched', () => {
    const fetched = faces.filter((face) => face.includes('url('));
    expect(fetched).toHaveLength(4);
    expect(fetched.map((face) => value(face, 'font-display'))).toEqual(fetched.map(() => 'optional'));
    expect(css).not.toMatch(/https?:/);
  });

  test('of the reader stand for each of ours in both weights', () => {
    const own = faces.filter((face) => !face.includes('url('));
    expect(own.map((face) => `${value(face, 'font-family')} ${value(face, 'font-weight')}`)).toEqual(
      stands.map(({ family, weight }) => `'${family}' ${weight}`),
    );
    expect(own.filter((face) => !value(face, 'src').startsWith('local('))).toEqual([]);
  });

  test.each(stands)('$family $weight takes the room of ours', ({ family, weight, font, ours, theirs }) => {
    const face =
      faces.find(
        (one) => value(one, 'font-family') === `'${family}'` && value(one, 'font-weight') === `${weight}`,
      ) ?? '';
    const { ascent, descent, lineGap, average } = fontMetrics(font);
    // The published average counts capitals and figures as well, which are a little wider.
    expect(ours / average).toBeGreaterThan(1);
    expect(ours / average).toBeLessThan(1.02);
    const stretch = ours / theirs;
    expect(share(face, 'size-adjust')).toBeCloseTo(stretch, 3);
    // The overrides are shares of the stretched em.
    expect(share(face, 'ascent-override') * stretch).toBeCloseTo(ascent, 3);
    expect(share(face, 'descent-override') * stretch).toBeCloseTo(descent, 3);
    expect(share(face, 'line-gap-override')).toBe(lineGap);
  });

  test('stand in the order ours, the reader’s stretched, the reader’s as they are', () => {
    expect(value(css, '--serif')).toMatch(
      /^'Literata', 'Literata as Georgia', 'Literata as Noto Serif', .*serif$/,
    );
    expect(value(css, '--sans')).toMatch(
      /^'Source Sans 3', 'Source Sans 3 as Arial', 'Source Sans 3 as Roboto', .*sans-serif$/,
    );
  });
});
