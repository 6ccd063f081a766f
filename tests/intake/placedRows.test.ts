import { expect, test } from 'vitest';
import { joined } from './joinedSession.ts';

const head = 'Club,Carry (yd)';

test('rows of a file that names nothing are of the contender in its name', () => {
  const { carries, problems } = joined({
    'alder.csv': 'Carry (yd)\n200\n201\n',
    'birch.csv': 'Carry (yd)\n190\n191\n',
  });
  expect(carries).toEqual([
    ['alder', 200],
    ['alder', 201],
    ['birch', 190],
    ['birch', 191],
  ]);
  expect(problems).toEqual([]);
});

test('rows stand in the order of the files, and by time only where every row has one', () => {
  const timed = (hour: string): string =>
    `Club,Time,Carry (yd)\nalder,2026-04-11 ${hour}:01:00,20${hour}\nbirch,2026-04-11 ${hour}:02:00,10${hour}\n`;
  const early = timed('09').replace('2009', '209').replace('1009', '109');
  const late = timed('10').replace('2010', '210').replace('1010', '110');
  expect(joined({ 'late.csv': late, 'early.csv': early }).carries.map(([, carry]) => carry)).toEqual([
    209, 109, 210, 110,
  ]);
  const untimed = `${head}\nalder,300\nbirch,301\n`;
  expect(joined({ 'late.csv': late, 'more.csv': untimed }).carries.map(([, carry]) => carry)).toEqual([
    210, 110, 300, 301,
  ]);
});
