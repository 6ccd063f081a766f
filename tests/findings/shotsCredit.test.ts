import { describe, expect, test } from 'vitest';
import { around, madeReport } from './reportOf.ts';

const shots = (each: number) => ({
  'Carry (yd)': {
    alder: around(237).slice(0, each),
    birch: around(231).slice(0, each),
    cedar: around(225).slice(0, each),
  },
});
const kindsOf = (each: number, order: 'in turn' | 'one after another', front = {}) =>
  madeReport({ shots: shots(each), order, front }).problems.filter(
    ({ kind }) => kind === 'order-credits-nothing',
  );

describe('a session that can credit nothing, whatever the truth', () => {
  test('is told at once: what, where and what to do', () => {
    const [problem] = kindsOf(5, 'one after another');
    expect(problem).toMatchObject({
      severity: 'warning',
      file: 'reports/invented/shots.csv',
      expected:
        'shots in turns; one after another, and with under 8 shots each, no difference is put down to what was tested, whatever the truth',
      found: 'all shots with one, then all with the next: 5 each',
      cure: 'Hit the test again in an order of turns: npm run plan writes one, and says how many shots it takes. A report of these shots can only say that the cause is open.',
    });
  });

  test('by what the shop states, where the rows are in no order', () => {
    const front = { rows: 'not-in-hit-order', plan: '{order: one after another}' };
    expect(kindsOf(7, 'in turn', front)).toHaveLength(1);
  });

  test('and has no difference that is credited', () => {
    const { report } = madeReport({ shots: shots(7), order: 'one after another' });
    const pairs = report?.findings.metrics[0]?.pairs ?? [];
    expect(pairs).toHaveLength(3);
    expect(pairs.map(({ credit }) => credit)).toEqual(['open', 'open', 'open']);
  });
});

test.each([
  [5, 'in turn'],
  [8, 'one after another'],
] as const)('%i shots each, %s: nothing is said', (each, order) => {
  expect(kindsOf(each, order)).toEqual([]);
});
