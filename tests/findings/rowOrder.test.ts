import { describe, expect, test } from 'vitest';
import { around, madeReport, reportOf } from './reportOf.ts';

/** Carries of two heads in rows sorted by head, with shot numbers of one count. */
function csv(numbers: {
  readonly alder: (turn: number) => number;
  readonly birch: (turn: number) => number;
}): string {
  const rows = (['alder', 'birch'] as const).flatMap((club) =>
    around(club === 'alder' ? 237 : 225).map(
      (carry, turn) => `${club},${numbers[club](turn)},${carry.toFixed(1)}`,
    ),
  );
  return ['Club,Shot,Carry (yd)', ...rows, ''].join('\n');
}
const contenders =
  '{alder: {label: Alder, supplied_by: our stock, sold_here: new}, birch: {label: Birch, supplied_by: our stock, sold_here: new}}';
const inTurnBySheet = csv({ alder: (turn) => 2 * turn + 1, birch: (turn) => 2 * turn + 2 });

describe('rows sorted by club, with numbers 1, 3, 5 and 2, 4, 6', () => {
  const report = reportOf({ csv: inTurnBySheet, front: { contenders } });
  const { design, metrics } = report.findings;

  test('tell no order: nothing is first or last, and every cause is open', () => {
    expect(design).toMatchObject({ order: 'unknown', sequence: null });
    expect(metrics[0]?.pairs[0]).toMatchObject({ openBecause: 'order-unknown', status: 'cause-unclear' });
    expect(metrics[0]?.trends).toEqual([]);
  });

  test('are a warning that says what to do', () => {
    const { problems } = madeReport({ csv: inTurnBySheet, front: { contenders } });
    const [own] = problems.filter(({ kind }) => kind === 'rows-not-by-number');
    expect(own).toMatchObject({
      severity: 'warning',
      file: 'reports/invented/shots.csv',
      line: 14,
      found: 'shot 2 below a later one',
      cure: 'If the numbers are the order of hitting, sort the rows by them; if the rows are, number them as they stand. If neither is, write "rows: not-in-hit-order" and the order under plan.',
    });
  });

  test('are settled by what the shop states', () => {
    const stated = reportOf({
      csv: inTurnBySheet,
      front: { contenders, rows: 'not-in-hit-order', plan: '{order: rotation}' },
    });
    expect(stated.findings.design.order).toBe('stated-rotation');
    expect(stated.findings.metrics[0]?.pairs[0]?.credit).toBe('contender');
  });
});

test.each([
  ['numbers that rise', csv({ alder: (turn) => turn + 1, birch: (turn) => turn + 13 })],
  ['numbers that start anew with each', csv({ alder: (turn) => turn + 1, birch: (turn) => turn + 1 })],
])('%s leave the rows as they are', (_name, own) => {
  const { problems, report } = madeReport({ csv: own, front: { contenders } });
  expect(problems.map(({ kind }) => kind)).not.toContain('rows-not-by-number');
  expect(report?.findings.design.order).toBe('one-after-another');
});
