import { describe, expect, test } from 'vitest';
import advances from '../../src/charts/sourceSansAdvances.json' with { type: 'json' };
import { fitText, shortenText, textWidth, wrapEvenly, wrapText } from '../../src/charts/textWidth.ts';
import { woffAdvances } from './woffAdvances.ts';

describe('advance widths', () => {
  test.each([
    ['regular', 400],
    ['semibold', 600],
  ] as const)('%s are those of the font file, for every character it holds', (name, weight) => {
    const font = woffAdvances(`@fontsource/source-sans-3/files/source-sans-3-latin-${weight}-normal.woff`);
    const table = new Map(
      advances.runs.flatMap((run) => run[name].map((width, index) => [run.first + index, width] as const)),
    );
    const printable = new Map([...font].filter(([code]) => code >= 32));
    expect(printable.size).toBeGreaterThan(200);
    expect(table).toEqual(printable);
  });

  test('a line is as wide as its letters together', () => {
    // Source Sans 3: digits are 497 thousandths of an em, each of them.
    expect(textWidth('2026', 14, 400)).toBeCloseTo((4 * 497 * 14) / 1000, 10);
    expect(textWidth('', 14, 400)).toBe(0);
  });

  test('a letter of another script counts as a whole em', () => {
    expect(textWidth('漢', 14, 400)).toBe(14);
    expect(textWidth('\u{20bb7}', 14, 400)).toBe(14);
  });
});

describe('shortenText and wrapText', () => {
  test('text that fits stays as it is', () => {
    expect(shortenText('Alder', 15, 600, 100)).toBe('Alder');
  });

  test('text that does not is cut with an ellipsis and fits', () => {
    const cut = shortenText('Wintergreen Extra Long Name', 15, 600, 100);
    expect(cut).toMatch(/^Wintergr.*…$/);
    expect(textWidth(cut, 15, 600)).toBeLessThanOrEqual(100);
  });

  test('breaks between words, no line wider than the room', () => {
    const lines = wrapText('Alder farther than Birch, size unsure.', 16, 600, 140);
    expect(lines.join(' ')).toBe('Alder farther than Birch, size unsure.');
    for (const line of lines) expect(textWidth(line, 16, 600)).toBeLessThanOrEqual(140);
  });

  test('even lines are as many as they must be, and none ends in a word alone', () => {
    const words = 'anything from 30 yards for Fairway wood to 14 for Hybrid';
    const room = 180;
    expect(wrapText(words, 15, 400, room).at(-1)).toBe('Hybrid');
    const lines = wrapEvenly(words, 15, 400, room);
    expect(lines.join(' ')).toBe(words);
    expect(lines).toHaveLength(wrapText(words, 15, 400, room).length);
    const widths = lines.map((line) => textWidth(line, 15, 400));
    expect(Math.max(...widths)).toBeLessThanOrEqual(room);
    expect(Math.min(...widths)).toBeGreaterThan(room / 2);
    expect(wrapEvenly('Sorrel', 15, 400, 20)).toEqual(wrapText('Sorrel', 15, 400, 20));
  });

  test('at most as many lines as asked for', () => {
    const lines = fitText('one two three four five six seven', 14, 400, 60, 2);
    expect(lines).toHaveLength(2);
    expect(lines[1]).toMatch(/…$/);
    for (const line of lines) expect(textWidth(line, 14, 400)).toBeLessThanOrEqual(60);
  });
});

test('a letter that no table holds is an em wide, one beyond the first plane of signs too', () => {
  for (const letter of ['漢', '😀', '\ud83d']) expect(textWidth(letter, 20, 400)).toBe(20);
  expect(textWidth('a😀b', 20, 600)).toBe(textWidth('a', 20, 600) + 20 + textWidth('b', 20, 600));
});
