import { expect, it } from 'vitest';
import { checkEstimated, estimatedColumns } from '../../../../src/intake/shots/checks/estimatedColumns.ts';
import { said, sessionOf } from './sessionOf.ts';

it('accepts readings that differ, also in a column of coarse steps', () => {
  const coarse = [11, 12, 12, 12, 13, 13, 12, 11, 13, 12];
  expect(
    checkEstimated(
      sessionOf(coarse.map((launch_angle, i) => ({ launch_angle, spin_rate: 2500 + 37 * i }))),
      {},
    ),
  ).toEqual([]);
});

it('finds one number on many shots, and tells the reader', () => {
  const session = sessionOf(
    [2500, 2500, 2610, 2500, 2733, 2500, 2440, 2812].map((spin_rate) => ({ spin_rate })),
  );
  expect(estimatedColumns(session)).toEqual(['spin_rate']);
  const [problem] = checkEstimated(session, {});
  expect(problem).toMatchObject({ kind: 'column-looks-estimated', severity: 'warning', line: 2 });
  expect(said(problem)).toMatchInlineSnapshot(
    `"expected spin rate that differs from shot to shot; found the same number on 4 of 8 shots; Say under "columns" in the report whether the monitor measured spin rate; it is treated as estimated."`,
  );
  expect(problem?.forReader).toBe(
    'Spin rate has the same number on 4 of 8 shots: it looks estimated, not measured.',
  );
});
