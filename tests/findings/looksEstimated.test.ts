import { expect, test } from 'vitest';
import { cautionsOf } from '../../src/prose/cautions.ts';
import { sayCaution } from '../../src/prose/english/cautions.ts';
import { around, reportOf } from './reportOf.ts';

/** Eight of twelve carries with either head are one number. */
const filled = (average: number, own: number): readonly number[] =>
  around(average).map((carry, turn) => (turn % 3 === 0 ? carry : own));
const contenders =
  '{alder: {label: Alder, supplied_by: our stock, sold_here: new}, birch: {label: Birch, supplied_by: our stock, sold_here: new}}';
const said = (columns: string): readonly string[] => {
  const { findings, telling } = reportOf({
    shots: { 'Carry (yd)': { alder: filled(231, 230), birch: filled(229, 230) } },
    front: { contenders, columns },
  });
  return cautionsOf(findings).map((caution) => sayCaution(caution, telling));
};

test('a column that merely repeats a number looks estimated: more is not known', () => {
  expect(said('{}')).toContain('Carry looks estimated: one number stands on many shots.');
});

test('one that the shop calls estimated is', () => {
  const told = said('{carry: {heading: Carry (yd), class: estimated}}');
  expect(told).toContain('Carry was estimated by the monitor, not measured.');
  expect(told.join(' ')).not.toContain('looks estimated');
});
