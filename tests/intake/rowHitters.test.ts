import { expect, test } from 'vitest';
import { joined } from './joinedSession.ts';

const head = 'Club,Carry (yd)';

test('a golfer that the report does not list, and rows without one where several hit', () => {
  const csv = 'Player,Club,Carry (yd)\nAnn,alder,200\nCleo,birch,201\n,birch,202\n';
  const { problems } = joined(
    { 'shots.csv': csv },
    { hitters: '{one: {role: customer, match: [Ann], consent: yes}, two: {role: customer, consent: yes}}' },
  );
  expect(problems.map(({ kind, line, what, cure }) => [kind, line, what, cure])).toEqual([
    [
      'hitter-not-in-report',
      3,
      'Cleo (1 shots)',
      'Add "match: [\'Cleo\']" to the hitter it is, or add that hitter to the report.',
    ],
    [
      'hitter-not-in-report',
      4,
      'no hitter (1 shots)',
      'Give every row its hitter, or name one hitter only in the report.',
    ],
    [
      'contender-not-in-csv',
      expect.any(Number),
      'none',
      expect.stringContaining('take birch out of the report'),
    ],
    ['hitter-not-in-csv', expect.any(Number), 'none', expect.stringContaining('take two out of the report')],
  ]);
});

test('a row without a golfer is the only golfer’s; a name is not', () => {
  const { session, problems } = joined({ 'shots.csv': `${head}\nalder,200\nbirch,199\n` });
  expect(session.shots.map(({ hitter }) => hitter)).toEqual(['one', 'one']);
  expect(problems).toEqual([]);
  expect(
    joined({ 'shots.csv': 'Player,Club,Carry (yd)\nAnn,alder,200\nAnn,birch,199\n' }).problems[0]?.kind,
  ).toBe('hitter-not-in-report');
});
