import { describe, expect, test } from 'vitest';
import { orderClass } from '../../src/stats/orderClass.ts';
import { visitsOf } from '../../src/stats/visits.ts';

/** Worked out by hand from the docstring. */
const letters = (text: string): readonly string[] => [...text.replaceAll(' ', '')];
/** "A3@0": three shots of A in the first set. */
const told = (text: string, numbers?: readonly (number | null)[]): readonly string[] =>
  visitsOf(letters(text), numbers).map(
    ({ group, start, length, set }) => `${start}:${group}${length}@${set}`,
  );

describe('without numbers', () => {
  test('a visit is a run, and the first of each make the first set', () => {
    expect(told('AA BB AA BB')).toEqual(['0:A2@0', '2:B2@0', '4:A2@1', '6:B2@1']);
  });

  test('two that touch are one, and what its group lacks then is missing at the end', () => {
    expect(told('AA BB BB AA')).toEqual(['0:A2@0', '2:B4@0', '6:A2@1']);
  });
});

describe('with the number of the set', () => {
  test('two that touch stay two', () => {
    expect(told('AA BB BB AA', [1, 1, 1, 1, 2, 2, 2, 2])).toEqual(['0:A2@0', '2:B2@0', '4:B2@1', '6:A2@1']);
  });

  test('the last set may be short', () => {
    expect(told('AA BB BB', [1, 1, 1, 1, 2, 2])).toEqual(['0:A2@0', '2:B2@0', '4:B2@1']);
  });

  test.each([
    ['one has none', [1, 1, 1, 1, 2, 2, 2, null]],
    ['one counts visits and not sets', [1, 1, 2, 2, 3, 3, 4, 4]],
    ['a set holds a group twice', [1, 1, 1, 1, 1, 1, 1, 1]],
    ['there are too few', [1, 1, 1, 1]],
  ])('which do not fit are passed over: %s', (_, numbers) => {
    expect(told('AA BB AA BB', numbers)).toEqual(told('AA BB AA BB'));
  });
});

test('mini-blocks in sets that are numbered have as many visits as sets', () => {
  const sequence = letters('AAABBB BBBAAA AAABBB BBBAAA');
  const numbers = sequence.map((_, place) => Math.floor(place / 6) + 1);
  expect(orderClass(sequence)).toMatchObject({ kind: 'mini-blocks', fewestVisits: 2 });
  expect(orderClass(sequence, numbers)).toMatchObject({ kind: 'mini-blocks', fewestVisits: 4 });
});
