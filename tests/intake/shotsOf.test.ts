import { expect, test } from 'vitest';
import { joined, yard } from './joinedSession.ts';

test('shots count for each golfer from one, warm-ups apart', () => {
  const csv =
    'Player,Club,Warm-up,Carry (yd)\nAnn,alder,no,200\nBea,alder,no,201\nAnn,alder,yes,150\nAnn,birch,no,202\nBea,birch,no,203\n';
  const { session } = joined(
    { 'shots.csv': csv },
    {
      hitters:
        '{one: {role: customer, match: [Ann], consent: yes}, two: {role: customer, match: [Bea], consent: yes}}',
    },
  );
  expect(session.shots.map(({ hitter, order }) => [hitter, order])).toEqual([
    ['one', 1],
    ['two', 1],
    ['one', 2],
    ['two', 2],
  ]);
  expect(session.warmUps).toBe(1);
});

test('shots keep columns apart that share a unit', () => {
  const { session } = joined({
    'shots.csv': 'Club,Total (yd),Carry (yd)\nalder,220,200\nbirch,215,199\n',
  });
  const [first] = session.shots;
  expect([first?.values.carry, first?.values.total].map((own) => Math.round((own ?? 0) / yard))).toEqual([
    200, 220,
  ]);
});
