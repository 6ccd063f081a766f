import { expect, test } from 'vitest';
import { joined } from './joinedSession.ts';

const head = 'Club,Carry (yd)';

test('of a file that is not there nothing is missed', () => {
  const { problems } = joined({ 'shots.csv': `${head}\nalder,200\n` }, { session: '[shots.csv, more.csv]' });
  expect(problems).toEqual([]);
});
