import { describe, expect, test } from 'vitest';
import { contenderIds, hitterIds } from '../../../src/intake/draft/contenderIds.ts';
import { fromFileName } from '../../../src/intake/draft/fileName.ts';

describe('the name of a session file', () => {
  test.each([
    ['driver_heads.csv', 'Driver heads', 'driver-heads', null],
    ['driver-heads-2026-04-11.csv', 'Driver heads', 'driver-heads-2026-04-11', '2026-04-11'],
    ['20260411 Wedges.CSV', 'Wedges', '20260411-wedges', '2026-04-11'],
    ['Été  drivers (3).csv', 'Été drivers (3)', 'ete-drivers-3', null],
    ['9.0 v 10.5.csv', '9.0 v 10.5', '9-0-v-10-5', null],
    ['2026-04-11.csv', 'Session', '2026-04-11', '2026-04-11'],
    // 31 April does not exist: digits, then, not a date.
    ['test 2026-04-31.csv', 'Test 2026 04 31', 'test-2026-04-31', null],
    ['試打.csv', '試打', 'session', null],
    [
      'four driver heads on one shaft in the morning.csv',
      'Four driver heads on one shaft in the morning',
      'four-driver-heads-on-one',
      null,
    ],
  ])('%s', (name, title, slug, date) => {
    expect(fromFileName(name)).toEqual({ title, slug, date });
  });

  test('gives no title and no address with a name of a person in it', () => {
    const people = [{ whole: ['john', 'smith'], telling: ['john', 'smith'] }];
    expect(fromFileName('John Smith driver 2026-04-11.csv', people)).toEqual({
      title: 'Driver',
      slug: 'driver-2026-04-11',
      date: '2026-04-11',
    });
    expect(fromFileName('john_smith.csv', people)).toEqual({ title: 'Session', slug: 'session', date: null });
  });
});

describe('ids of contenders', () => {
  test.each([
    [
      ['Alder 9°', 'Birch 9.0'],
      ['alder-9', 'birch-9-0'],
    ],
    [
      ['7 Iron, #2', '7 Iron #2'],
      ['7-iron-2', '7-iron-2-2'],
    ],
    [
      ['試打', '打試'],
      ['contender', 'contender-2'],
    ],
    // "head-a" as an id would also be the name of the second.
    [
      ['Head A', 'head-a'],
      ['head-a-2', 'head-a'],
    ],
    [
      ['__proto__', 'constructor'],
      ['proto', 'constructor'],
    ],
  ])('of %j', (names, ids) => {
    expect(contenderIds(names)).toEqual(ids);
  });

  test('are short, of whole words, and apart', () => {
    expect(contenderIds([`${'long '.repeat(20)}one`, `${'long '.repeat(20)}two`])).toEqual([
      'long-long-long-long-long',
      'long-long-long-long-long-2',
    ]);
    expect(contenderIds(['Birch 9 with the longer of two shafts', 'x'.repeat(50)])).toEqual([
      'birch-9-with-the-longer',
      'x'.repeat(24),
    ]);
  });
});

test('ids of hitters give away no name and stand for one hitter only', () => {
  expect(hitterIds(['Anna', 'Bert'], 'new-shafts')).toEqual(['golfer-new-shafts-1', 'golfer-new-shafts-2']);
  expect(hitterIds(['golfer-new-shafts-1', 'One'], 'new-shafts')).toEqual([
    'golfer-new-shafts-1-2',
    'golfer-new-shafts-2',
  ]);
  expect(hitterIds([], 'new-shafts')).toEqual(['golfer-new-shafts']);
});
