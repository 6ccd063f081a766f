import { expect, it } from 'vitest';
import { checkSmashMatches } from '../../../../src/intake/shots/checks/smashMatches.ts';
import { said, sessionOf } from './sessionOf.ts';

it('accepts what rounding allows', () => {
  // 150.0 / 102.0 = 1.4706: written 1.47 rounded and 1.47 cut off; 1.46 would be one step below a cut-off digit.
  const session = sessionOf([
    { ball_speed: 150, club_speed: 102, smash: 1.47 },
    { ball_speed: 150, club_speed: 102, smash: 1.48 },
    { ball_speed: 150, club_speed: null, smash: 1.2 },
  ]);
  expect(checkSmashMatches(session, {})).toEqual([]);
});

it('refuses another ratio and says which it should be', () => {
  const session = sessionOf([
    { ball_speed: 150, club_speed: 102, smash: 1.47 },
    { ball_speed: 150, club_speed: 102, smash: 1.4 },
    { ball_speed: 150, club_speed: 102, smash: 1.52 },
  ]);
  const [problem] = checkSmashMatches(session, {});
  expect(problem).toMatchObject({
    kind: 'smash-mismatch',
    severity: 'error',
    file: 'shots.csv',
    line: 3,
    column: 3,
  });
  expect(said(problem)).toMatchInlineSnapshot(
    `"expected 1.47, which is ball speed divided by club speed; found smash factor 1.40 beside ball speed 150.0 mph and club speed 102.0 mph; 2 shots in all, lines 3, 4; Check the units of both speeds, then the cells of these rows."`,
  );
});

it('does not look at shots that the report leaves out', () => {
  const excluded = { rule: 'mishit', reason: 'topped' };
  expect(
    checkSmashMatches(sessionOf([{ ball_speed: 150, club_speed: 102, smash: 1.2, extra: { excluded } }]), {}),
  ).toEqual([]);
});
