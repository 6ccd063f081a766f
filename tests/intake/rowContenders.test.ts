import { expect, test } from 'vitest';
import { joined } from './joinedSession.ts';

const head = 'Club,Carry (yd)';

test('rows get their contender by id, label or a name under match, in any casing', () => {
  const csv = `${head}\nalder,200\nALDER 9°,201\nA9,202\nbirch,203\n`;
  expect(joined({ 'shots.csv': csv }).carries).toEqual([
    ['alder', 200],
    ['alder', 201],
    ['alder', 202],
    ['birch', 203],
  ]);
});

test('a name that no contender has, once, with its first line, its count and the nearest id', () => {
  expect(joined({ 'shots.csv': `${head}\nalder,200\nbirc,190\nbirch,191\nbirc,192\n` }).problems).toEqual([
    {
      kind: 'contender-not-in-report',
      file: 'reports/invented/shots.csv',
      line: 3,
      what: 'birc (2 shots)',
      cure: 'If it is birch, add "match: [\'birc\']" to that contender; else add it to the contenders of the report.',
    },
  ]);
});
