import { expect, it } from 'vitest';
import { checkUnitSniff } from '../../../../src/intake/shots/checks/unitSniff.ts';
import { said, sessionOf } from './sessionOf.ts';

it('accepts a driver at 155 mph and a wedge at 80', () => {
  expect(checkUnitSniff(sessionOf([{ ball_speed: 155 }]), { club: 'driver' })).toEqual([]);
  expect(checkUnitSniff(sessionOf([{ ball_speed: 80 }]), { club: 'wedge' })).toEqual([]);
});

it('warns of a driver at 69 mph: metres per second', () => {
  const [problem] = checkUnitSniff(sessionOf([{ ball_speed: 69 }, { ball_speed: 70 }, { ball_speed: 68 }]), {
    club: 'driver',
  });
  expect(problem).toMatchObject({ kind: 'unit-suspicious', severity: 'warning' });
  expect(said(problem)).toMatchInlineSnapshot(
    `"expected a middle ball speed between 85 and 200 mph; found 69.0 mph, which looks like m/s; Check the unit in the heading; if it is m/s, say so there or under "columns" in the report."`,
  );
});

it('warns of 230 mph whatever was hit: kilometres per hour', () => {
  expect(checkUnitSniff(sessionOf([{ ball_speed: 230 }]), {})[0]?.found).toContain('looks like km/h');
});
