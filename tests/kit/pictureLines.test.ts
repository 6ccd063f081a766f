import { describe, expect, test } from 'vitest';
import { literataWidth } from '../../src/charts/literataWidth.ts';
import { textWidth } from '../../src/charts/textWidth.ts';
import { exportedSvg } from '../../src/kit/exportedSvg.ts';
import { pictureForms, roomIn, slack } from '../../src/kit/pictureForm.ts';
import {
  sans,
  serif,
  wrapped,
  wrappedEvenly,
  wrappedWithoutWidow,
  widthOf,
} from '../../src/kit/pictureLines.ts';
import { offered } from './content.ts';

const type = serif(19);
const room = roomIn(pictureForms.wide);
const widow =
  'One golfer: Heron carried farther than Wren and Plover, by how much is uncertain; Wren and Plover stood not far apart.';

const unevenness = (lines: readonly string[]): number =>
  lines.reduce((sum, line) => sum + widthOf(line, type) ** 2, 0);

/** Every way to break words into `count` lines. */
function allWays(words: readonly string[], count: number): readonly (readonly string[])[] {
  if (count === 1) return [[words.join(' ')]];
  return words
    .slice(1)
    .flatMap((_, at) =>
      allWays(words.slice(at + 1), count - 1).map((rest) => [words.slice(0, at + 1).join(' '), ...rest]),
    );
}

describe('lines that are even', () => {
  test('leave no short word alone, in as many lines', () => {
    // For all but the last word.
    const px = (widthOf(widow.slice(0, -' apart.'.length), type) + 1) * (1 + slack);
    const lines = wrappedEvenly(widow, type, px);
    expect(wrapped(widow, type, px).at(-1)).toBe('apart.');
    expect(lines).toHaveLength(2);
    expect(lines.join(' ')).toBe(widow);
    const [first = 0, last = 0] = lines.map((line) => widthOf(line, type));
    expect(last).toBeGreaterThan(0.8 * first);
  });

  test.each([360, 420, 500, room, 900])('are the least uneven of all ways, in %d px', (px) => {
    const lines = wrappedEvenly(widow, type, px);
    const { length } = wrapped(widow, type, px);
    expect(lines).toHaveLength(length);
    const most = px / (1 + slack);
    const ways = allWays(widow.split(' '), length).filter((way) =>
      way.every((line) => widthOf(line, type) <= most),
    );
    expect(ways.length).toBeGreaterThan(1);
    expect(unevenness(lines)).toBeCloseTo(Math.min(...ways.map(unevenness)), 6);
    expect(ways).toContainEqual(lines);
  });

  test('running text has them only where it would leave a word alone', () => {
    const all = widthOf(widow, type);
    // For all but the last word, and for all but the last two.
    const [one = 0, two = 0] = [' apart.', ' far apart.'].map(
      (end) => (widthOf(widow.slice(0, -end.length), type) + 1) * (1 + slack),
    );
    expect(wrapped(widow, type, two).at(-1)).toBe('far apart.');
    expect(wrappedWithoutWidow(widow, type, two)).toEqual(wrapped(widow, type, two));
    expect(wrappedWithoutWidow(widow, type, one)).toEqual(wrappedEvenly(widow, type, one));
    expect(wrappedWithoutWidow(widow, type, one).at(-1)).toMatch(/^\S+ \S+ .*apart\.$/);
    expect(wrappedWithoutWidow(widow, type, 2 * all)).toEqual([widow]);
  });

  test('cut no word that has room, and go on with one that has none', () => {
    expect(wrappedEvenly('a extraordinarily', type, 170)).toEqual(wrapped('a extraordinarily', type, 170));
    const address = `example.test/reports/${'long-'.repeat(30)}end`;
    const lines = wrappedEvenly(address, sans(14, 400), 300);
    expect(lines.join('').replaceAll(' ', '')).toBe(address);
    expect(Math.max(...lines.map((line) => widthOf(line, sans(14, 400))))).toBeLessThanOrEqual(
      300 / (1 + slack),
    );
  });

  test('one line stays one line, and nothing nothing', () => {
    expect(wrappedEvenly('Short.', type, room)).toEqual(['Short.']);
    expect(wrappedEvenly('', type, room)).toEqual([]);
  });
});

test.each(offered.flatMap(([name, report, figure]) => [[name, report, figure] as const]))(
  'no headline of %s ends in a line of one short word',
  (_, report, figure) => {
    for (const form of ['wide', 'phone'] as const) {
      const svg = exportedSvg(report, figure, form);
      const head = /<g font-family="Literata[^>]*>((?:<text[^>]*>[^<]*<\/text>)+)<\/g>/.exec(svg)?.[1] ?? '';
      const lines = [...head.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, line = '']) =>
        line.replaceAll(/&\w+;/g, '&'),
      );
      if (lines.length < 2) continue;
      const widths = lines.map((line) => widthOf(line, type));
      expect(widths.at(-1), lines.join(' / ')).toBeGreaterThan(0.25 * Math.max(...widths));
    }
  },
);

test('a line is as wide as its words and the spaces between them, to the last digit', () => {
  for (const own of [serif(19), sans(14, 400), sans(13, 600)]) {
    const words = widow.split(' ');
    const advance = words.reduce((sum, word) => sum + own.advanceOf(word), 0);
    expect(own.advanceOf(widow)).toBe(advance + (words.length - 1) * own.advanceOf(' '));
  }
  expect(widthOf(widow, serif(19))).toBe(literataWidth(widow, 19));
  expect(widthOf(widow, sans(14, 400))).toBe(textWidth(widow, 14, 400));
});
