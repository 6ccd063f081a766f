import { expect, it } from 'vitest';
import { checkSmashAverages } from '../../../../src/intake/shots/checks/smashAverages.ts';
import { said, sessionOf } from './sessionOf.ts';

it('accepts averages that agree in the second decimal', () => {
  expect(
    checkSmashAverages(
      sessionOf([
        { ball_speed: 147, club_speed: 100 },
        { ball_speed: 148, club_speed: 100 },
      ]),
      {},
    ),
  ).toEqual([]);
});

it('says where the two ways differ', () => {
  // By hand: (140 + 80) / (100 + 50) = 1.467; (1.40 + 1.60) / 2 = 1.500.
  const [problem] = checkSmashAverages(
    sessionOf([
      { ball_speed: 140, club_speed: 100 },
      { ball_speed: 80, club_speed: 50 },
    ]),
    {},
  );
  expect(problem).toMatchObject({ kind: 'smash-averages-differ', severity: 'warning' });
  expect(said(problem)).toMatchInlineSnapshot(
    `"expected one average smash factor, whichever way it is taken; found 1.467 from the average speeds, 1.500 from each shot (alder); Nothing need be done; do not read anything into the second decimal of this average."`,
  );
});
