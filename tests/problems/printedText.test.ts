import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { padded, wrapped } from '../../src/problems/printedText.ts';

// Wide and Fullwidth of UAX #11 take two columns; a cluster of UAX #29 takes what its first letter takes.
const widths: readonly (readonly [text: string, columns: number])[] = [
  ['Alder', 5],
  ['Größe 9°', 8],
  ['Gro\u0308\u00dfe', 5],
  ['球桿', 4],
  ['🏌️‍♀️', 2],
  ['🇯🇵', 2],
  ['', 0],
];

describe('columns', () => {
  test.each(widths)('%s is filled up to the same place as any other', (text, columns) => {
    expect(padded(text, 10)).toBe(text + ' '.repeat(10 - columns));
  });

  test('what is longer stays as it is', () => {
    expect(padded('球桿球桿', 5)).toBe('球桿球桿');
  });
});

describe('wrapping', () => {
  test('breaks at blanks, wide letters counted twice', () => {
    expect(wrapped('球桿 球桿 球桿', 10)).toEqual(['球桿 球桿', '球桿']);
    expect(wrapped('one two three', 7)).toEqual(['one two', 'three']);
  });

  test('breaks a word without blanks where the line ends, never between a letter and its marks', () => {
    expect(wrapped('球'.repeat(7), 5)).toEqual(['球球', '球球', '球球', '球']);
    expect(wrapped('b\u0308'.repeat(5), 3)).toEqual(['b\u0308'.repeat(3), 'b\u0308'.repeat(2)]);
    expect(wrapped('🏌️‍♀️'.repeat(3), 4)).toEqual(['🏌️‍♀️🏌️‍♀️', '🏌️‍♀️']);
  });

  test('no line is longer than it may be, and no word is lost', () => {
    const word = fc.string({
      unit: fc.constantFrom('a', 'ö', '球', '🏌️‍♀️', 'b\u0308'),
      minLength: 1,
      maxLength: 60,
    });
    fc.assert(
      fc.property(fc.array(word, { maxLength: 20 }), fc.integer({ min: 28, max: 90 }), (words, columns) => {
        const lines = wrapped(words.join(' '), columns);
        expect(lines.filter((line) => padded(line, columns + 1) === line)).toEqual([]);
        expect(lines.join('').replaceAll(' ', '')).toBe(words.join(''));
      }),
    );
  });

  test('letters whose marks have a letter of their own come out as that one', () => {
    expect(wrapped('Gro\u0308\u00dfe', 40)).toEqual(['Gr\u00f6\u00dfe']);
  });
});
