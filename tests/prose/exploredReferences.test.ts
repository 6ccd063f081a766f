import { expect, test } from 'vitest';
import { around, reportOf } from '../findings/reportOf.ts';

const contenders =
  '{alder: {label: Alder, supplied_by: our stock, sold_here: new}, birch: {label: Birch, supplied_by: our stock, sold_here: new}}';
const told = (reference: string): string =>
  reportOf({
    shots: {
      'Carry (yd)': { alder: around(237, 0.3), birch: around(225, 0.3) },
      'Launch Angle (deg)': { alder: around(15, 0.05), birch: around(12, 0.05) },
      'Apex (ft)': { alder: around(90, 0.5), birch: around(90, 0.5).toReversed() },
    },
    front: { contenders },
    narrative: `We saw this: {{ ${reference} }}.`,
  }).narrativeHtml.replace(/\s+/g, ' ');

const family = /\(one of two measures looked at; fewer than one of them shows such a difference by chance\)/;

test.each(['answer launch_angle alder birch', 'apart launch_angle alder birch'])(
  '{{ %s }}: a difference that was not planned stands with its family',
  (reference) => {
    expect(told(reference)).toMatch(family);
  },
);

test.each(['answer carry alder birch', 'answer apex alder birch'])('{{ %s }} has none', (reference) => {
  expect(told(reference)).not.toMatch(/measures looked at/);
});
