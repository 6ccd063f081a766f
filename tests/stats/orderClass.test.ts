import { describe, expect, test } from 'vitest';
import { lever, meanPlace } from '../../src/stats/lever.ts';
import { orderClass } from '../../src/stats/orderClass.ts';
import { rotationOf } from '../../src/stats/rotation.ts';
import { runsOf } from '../../src/stats/runs.ts';

/** Sequences and classes worked out by hand from the rules in the docstrings. */
const letters = (text: string): readonly string[] => [...text.replaceAll(' ', '')];
const kindOf = (text: string, rounds?: readonly (number | null)[]): string =>
  orderClass(letters(text), rounds).kind;

test('runs', () => {
  expect(runsOf(letters('AAB A'))).toEqual([
    { group: 'A', start: 0, length: 2 },
    { group: 'B', start: 2, length: 1 },
    { group: 'A', start: 3, length: 1 },
  ]);
});

describe('one after another', () => {
  test.each(['AAAAA BBBBB CCCCC', 'A', 'AB', 'AAAAAAAA BB BBBBBBBB AA'])('%s', (text) => {
    expect(kindOf(text)).toBe('one-after-another');
  });

  test('80 % in the longest run is enough, just under is not', () => {
    expect(kindOf('AAAA BBBB A B')).toBe('one-after-another'); // 4 of 5
    expect(kindOf('AAA BBB A B')).not.toBe('one-after-another'); // 3 of 4
  });
});

describe('mini-blocks', () => {
  test('three visits of three', () => {
    const order = orderClass(letters('AAABBB AAABBB AAABBB'));
    expect(order).toMatchObject({ kind: 'mini-blocks', fewestVisits: 3 });
  });

  test('one stray shot in ten is allowed, two are not', () => {
    expect(kindOf('AAA BBB AAA BBB AAA BBBB A')).toBe('mini-blocks'); // A: 9 of 10 in runs of two
    expect(kindOf('AAA BBB AAA BBB AA BBB A B A B')).not.toBe('mini-blocks');
  });

  test('a group visited once makes it something else', () => {
    expect(kindOf('AA BB AA BB AA BB CCCCC')).toBe('mixed');
  });
});

describe('the order turned every round', () => {
  test.each([3, 4, 9, 10, 19, 20, 40])('ABBA and its repeats, %i rounds, are a rotation', (rounds) => {
    const sequence = letters('AB BA '.repeat(rounds)).slice(0, 2 * rounds);
    expect(orderClass(sequence)).toMatchObject({ kind: 'rotation', order: 'changed', complete: rounds });
  });

  test('three groups, the last round short', () => {
    expect(orderClass(letters('ABC CBA ABC CBA A'))).toMatchObject({ kind: 'rotation', complete: 4 });
  });

  test('runs of two in one order are mini-blocks', () => {
    expect(kindOf('AABB '.repeat(10))).toBe('mini-blocks');
  });
});

describe('round numbers', () => {
  // AB BA AB AB BA BA ...: runs of two for nine shots in ten
  const text = `${'AB BA '.repeat(10)}AB AB ${'BA AB '.repeat(9)}`;
  const count = letters(text).length;
  const numbers = Array.from({ length: count }, (_, place) => Math.floor(place / 2) + 1);

  test('come first', () => {
    expect(kindOf(text)).toBe('mini-blocks');
    expect(orderClass(letters(text), numbers)).toMatchObject({ kind: 'rotation', order: 'changed' });
  });

  test('which do not fit are passed over', () => {
    expect(
      kindOf(
        'AABB '.repeat(10),
        Array.from({ length: 40 }, (_, place) => Math.floor(place / 4)),
      ),
    ).toBe('mini-blocks');
  });
});

describe('rotation', () => {
  test('same order, last round short', () => {
    expect(orderClass(letters('ABC ABC ABC AB'))).toMatchObject({
      kind: 'rotation',
      order: 'same',
      complete: 3,
      rounds: [
        [0, 1, 2],
        [3, 4, 5],
        [6, 7, 8],
        [9, 10],
      ],
      reHits: [],
    });
  });

  test('order changed', () => {
    expect(orderClass(letters('ABC BCA CAB'))).toMatchObject({ kind: 'rotation', order: 'changed' });
    expect(orderClass(letters('AB BA AB BA AB'))).toMatchObject({ kind: 'rotation', order: 'changed' });
  });

  test('an immediate repeat is a re-hit, up to a tenth of the shots', () => {
    expect(orderClass(letters('ABC AABC ABC ABC'))).toMatchObject({
      kind: 'rotation',
      reHits: [4],
      complete: 4,
    });
    expect(kindOf('ABBC ABBC ABC')).toBe('mixed'); // 2 of 11
  });

  test('a repeat after a full round may belong to either; the reading with fewest re-hits counts', () => {
    expect(rotationOf(letters('AB BA AB AB AB'))?.reHits).toEqual([]);
    expect(rotationOf(letters('ABB AB BA AB AB'))?.reHits).toHaveLength(1);
  });

  test('fewer than three rounds are none', () => {
    expect(kindOf('ABC BCA')).toBe('mixed');
  });

  test('a group missing from a round in the middle breaks it', () => {
    expect(kindOf('ABC AB ABC ABC CAB')).toBe('mixed');
  });

  test('by the round column', () => {
    const rounds = [1, 1, 1, 2, 2, 2, 3, 3, 3];
    expect(orderClass(letters('ABC CAB BCA'), rounds)).toMatchObject({ kind: 'rotation', order: 'changed' });
    // a column that says nothing does not hide the rotation that is there
    expect(kindOf('ABC CAB BCA', new Array<number>(9).fill(1))).toBe('rotation');
    expect(kindOf('ABC CAB BCA', [1, 1, null, 2, 2, 2, 3, 3, 3])).toBe('rotation');
  });
});

test('mixed', () => {
  expect(kindOf('ABA CCB ABB CAC BAC')).toBe('mixed');
});

test('two hundred thousand shots are read in well under a second', () => {
  const many = Array.from({ length: 200_000 }, (_, i) => 'ABC'[i % 3] ?? 'A');
  expect(orderClass(many)).toMatchObject({ kind: 'rotation', complete: 66_666 });
});

test('nothing cannot be classed', () => {
  expect(() => orderClass([])).toThrow('needs at least 1 shots, got 0');
});

describe('lever', () => {
  test('places and lever by hand', () => {
    const blocks = letters('AAABBB');
    expect(meanPlace(blocks, 'A')).toBe(2);
    expect(meanPlace(blocks, 'B')).toBe(5);
    expect(lever(blocks, 'A', 'B')).toBe(3 / 5);
    expect(lever(blocks, 'B', 'A')).toBe(3 / 5);
    expect(lever(letters('ABBA'), 'A', 'B')).toBe(0);
  });

  test('a straight drift of D moves the gap by D x lever', () => {
    const sequence = letters('AABCCBACBB');
    const drift = 8;
    const shot = (i: number): number => (drift * i) / (sequence.length - 1);
    const mean = (group: string): number => {
      const places = sequence.flatMap((member, i) => (member === group ? [i] : []));
      return places.reduce((sum, i) => sum + shot(i), 0) / places.length;
    };
    expect(Math.abs(mean('A') - mean('C'))).toBeCloseTo(drift * lever(sequence, 'A', 'C'), 12);
  });

  test('a group without shots is refused', () => {
    expect(() => lever(letters('AAB'), 'A', 'C')).toThrow('needs at least 1 shots of C, got 0');
  });
});
