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
  expect(problem?.forReader).toBe('2 shots of 3 had no reading of spin rate.');
});

it('tells columns that lack the same shots in one go', () => {
  const problems = checkMissingReadings(
    sessionOf([
      { carry: 250, spin_rate: 2500, ball_speed: 66, launch_angle: 12 },
      { carry: null, spin_rate: 2600, ball_speed: null, launch_angle: 12 },
      { carry: 252, spin_rate: null, ball_speed: 67, launch_angle: 12 },
    ]),
    {},
  );
  expect(problems.map(({ line, forReader }) => [line, forReader])).toEqual([
    [3, '1 shot of 3 had no reading of ball speed or carry.'],
    [4, '1 shot of 3 had no reading of spin rate.'],
  ]);
});
