import { describe, expect, test } from 'vitest';
import { joined, yard } from './joinedSession.ts';

const head = 'Club,Carry (yd)';

describe('columns of several files', () => {
  const files = {
    'alder.csv': 'Carry (yd)\n200.4\n201.3\n',
    'birch.csv': 'Carry (yd)\n190\n191\n',
  };

  test('have the coarsest step', () => {
    expect(joined(files).session.columns.carry?.step).toBeCloseTo(yard, 10);
  });

  test('are read as the monitor’s answer says, before the column’s own and what is usual', () => {
    const of = (front: Readonly<Record<string, string>>): string | undefined =>
      joined(files, front).session.columns.carry?.class;
    expect(of({})).toBe('measured');
    const columns = '{carry: {heading: Carry (yd), class: estimated}}';
    expect(of({ columns })).toBe('estimated');
    expect(of({ columns, conditions: '{monitor: {columns: {carry: modelled}}}' })).toBe('modelled');
  });
});

test('a main metric without a column', () => {
  const { problems } = joined(
    { 'shots.csv': `${head}\nalder,200\nbirch,199\n` },
    { primary: 'ball_speed', matters: null },
  );
  expect(problems).toMatchObject([
    { kind: 'primary-column-missing', what: 'columns understood: Carry (yd)' },
  ]);
});
