import { expect, it } from 'vitest';
import { checkSmashBound } from '../../../../src/intake/shots/checks/smashBound.ts';
import { said, sessionOf } from './sessionOf.ts';

it('accepts what a driver at the limit of the Rules can do', () => {
  // Bound for e 0.83 and a head of 200 g at no loft: 1.488 (Penner 2001, by way of a transcription).
  expect(checkSmashBound(sessionOf([{ ball_speed: 148.8, club_speed: 100 }]), {})).toEqual([]);
});

it('warns above 1.50 and refuses above 1.56', () => {
  const problems = checkSmashBound(
    sessionOf([
      { ball_speed: 152, club_speed: 100 },
      { ball_speed: 158, club_speed: 100 },
    ]),
    {},
  );
  expect(problems.map(({ kind }) => kind)).toEqual(['smash-above-bound', 'smash-above-bound']);
  expect(problems.map(({ severity, line }) => [severity, line])).toEqual([
    ['error', 3],
    ['warning', 2],
  ]);
  expect(said(problems[0])).toMatchInlineSnapshot(
    `"expected ball speed at most 1.56 times club speed; found 1.58 at the least; Check the units of both speeds; if they are right, leave these shots out with that reason."`,
  );
  expect(problems[1]?.forReader).toBe(
    "1 shot shows more ball speed than the club speed allows, so the monitor's club speed is in doubt.",
  );
});
