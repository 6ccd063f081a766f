import { expect, it } from 'vitest';
import { checkRoll } from '../../../../src/intake/shots/checks/roll.ts';
import { said, sessionOf } from './sessionOf.ts';

it('accepts a driver that rolls 25 yards', () => {
  expect(checkRoll(sessionOf([{ carry: 250, total: 275 }]), { club: 'driver' })).toEqual([]);
});

it('accepts a wedge that spins back', () => {
  expect(checkRoll(sessionOf([{ carry: 100, total: 97.5 }]), { club: 'wedge' })).toEqual([]);
});

it('warns of a total below the carry and of a very long roll', () => {
  const problems = checkRoll(
    sessionOf([
      { carry: 250, total: 245 },
      { carry: 250, total: 320 },
    ]),
    {},
  );
  expect(problems.map(({ kind, severity, line }) => [kind, severity, line])).toEqual([
    ['total-below-carry', 'warning', 2],
    ['roll-long', 'warning', 3],
  ]);
  expect(said(problems[0])).toMatchInlineSnapshot(
    `"expected a total not below the carry, unless the ball spins back; found total distance 245.0 yd after carry 250.0 yd; Nothing need be done if these balls spun back; else check that the two columns are not exchanged."`,
  );
  expect(said(problems[1])).toMatchInlineSnapshot(
    `"expected a roll of at most 60 yd; found total distance 320.0 yd after carry 250.0 yd; Check the two columns; the roll is an assumption about the ground, so do not compare totals."`,
  );
});

it('holds irons to 25 yards', () => {
  expect(checkRoll(sessionOf([{ carry: 160, total: 190 }]), { club: 'iron' })[0]?.kind).toBe('roll-long');
});
