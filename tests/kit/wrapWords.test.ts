import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textWidth, wrapText } from '../../src/charts/textWidth.ts';
import { wrapWords } from '../../src/kit/wrapWords.ts';

const words = fc.array(fc.stringMatching(/^[a-z]{1,9}$/), { minLength: 1, maxLength: 40 });

describe('wrapWords', () => {
  test('breaks lines as charts do', () => {
    fc.assert(
      fc.property(words, fc.integer({ min: 400, max: 900 }), (some, room) => {
        const told = some.join(' ');
        expect(wrapWords(told, 30, 400, room)).toEqual(wrapText(told, 30, 400, room));
      }),
    );
  });

  test('parts what is wider than a line after a sign, and leaves nothing out', () => {
    const address = 'golf.example/a-long-folder/of-tests/reports/range-balls-replaced,';
    const lines = wrapWords(`At ${address} version 1.0.1`, 40, 400, 500);
    expect(lines).toEqual([
      'At',
      'golf.example/a-long-folder/',
      'of-tests/reports/range-balls-',
      'replaced, version 1.0.1',
    ]);
    for (const line of lines) expect(textWidth(line, 40, 400)).toBeLessThanOrEqual(500);
  });

  test('parts a word without signs anywhere', () => {
    const word = 'm'.repeat(50);
    const lines = wrapWords(word, 40, 600, 300);
    expect(lines.length).toBeGreaterThan(4);
    expect(lines.join('')).toBe(word);
    for (const line of lines) expect(textWidth(line, 40, 600)).toBeLessThanOrEqual(300);
  });

  test('has no line for nothing', () => {
    expect(wrapWords('  ', 40, 400, 300)).toEqual([]);
  });
});
