import { expect, it } from 'vitest';
import { checkMissingReadings } from '../../../../src/intake/shots/checks/missingReadings.ts';
import { said, sessionOf } from './sessionOf.ts';

it('says how many shots have no reading', () => {
  const [problem, ...others] = checkMissingReadings(
    sessionOf([
      { carry: 250, spin_rate: 2500 },
      { carry: 251, spin_rate: null },
      { carry: 252, spin_rate: null },
    ]),
    {},
  );
  expect(others).toEqual([]);
  expect(problem).toMatchObject({ kind: 'readings-missing', severity: 'warning', line: 3 });
  expect(said(problem)).toMatchInlineSnapshot(
    `"expected spin rate for every shot; found no reading; 2 shots in all, lines 3, 4; Nothing need be done: averages use the shots that have a reading, and the page says how many."`,
  );
  expect(problem?.forReader).toBe('2 shots of 3 had no spin rate reading.');
});
