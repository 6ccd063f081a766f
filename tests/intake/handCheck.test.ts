import { describe, expect, test } from 'vitest';
import type { Problem } from '../../src/problems/problem.ts';
import { around, madeReport } from '../findings/reportOf.ts';

const rows = (hitters: readonly string[]): string =>
  [
    'Shot,Hitter,Club,Carry (yd)',
    ...hitters.flatMap((hitter, place) =>
      ['alder', 'birch', 'cedar'].flatMap((club, index) =>
        around(230 - 5 * index).map(
          (carry, shot) => `${100 * place + 3 * shot + index},${hitter},${club},${carry}`,
        ),
      ),
    ),
    '',
  ].join('\n');

function handsOf(front: Readonly<Record<string, string>>, csv = rows(['ann', 'bea'])): readonly Problem[] {
  const hitters =
    '{ann: {role: customer, hand: right, consent: yes}, bea: {role: customer, hand: left, consent: yes}}';
  const { problems } = madeReport({ front: { hitters, ...front }, csv });
  expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  return problems.filter(({ kind }) => kind === 'hands-differ');
}

describe('golfers of both hands', () => {
  test('cannot have hit the same head, and the page says so', () => {
    const [problem, ...more] = handsOf({});
    expect(more).toEqual([]);
    expect(problem).toMatchObject({
      severity: 'warning',
      columnName: 'hitters.bea.hand',
      expected: 'golfers of one hand, or heads for both hands',
      found: 'bea left-handed and ann right-handed, all with Alder 9°, Birch 9°, Cedar 9°',
      cure: 'Correct the hand. If there was a head for each hand, say so where the head stands: "head: one left-handed and one right-handed of each".',
      forReader:
        'Right- and left-handed golfers hit the same clubs. That there was a head for each hand is not recorded.',
    });
  });

  test.each([
    ['a head for each hand', { held: '{head: one right-handed and one left-handed of each}' }],
    ['balls', { varied: 'ball' }],
    [
      'golfers of one hand',
      {
        hitters:
          '{ann: {role: customer, hand: right, consent: yes}, bea: {role: customer, hand: right, consent: yes}}',
      },
    ],
    [
      'a hand that nobody recorded',
      { hitters: '{ann: {role: customer, consent: yes}, bea: {role: customer, hand: left, consent: yes}}' },
    ],
  ])('%s', (_, front) => {
    expect(handsOf(front)).toEqual([]);
  });
});
