import { expect, test } from 'vitest';
import { answerOfFigure } from '../../src/kit/figureAnswer.ts';
import { figureInterest } from '../../src/kit/figureInterest.ts';
import { textOf } from '../../src/kit/said.ts';
import { around, reportOf } from '../findings/reportOf.ts';

test('of two that came out ahead a short caption tells of the one that was lent, not of the customer’s own', () => {
  const report = reportOf({
    shots: { 'Carry (yd)': { alder: around(240), birch: around(241).toReversed(), cedar: around(215) } },
    front: {
      contenders:
        "{alder: {label: Alder, supplied_by: the customer's own, sold_here: new}, " +
        'birch: {label: Birch, supplied_by: lent by its maker, sold_here: new}, ' +
        'cedar: {label: Cedar, supplied_by: our stock, sold_here: new}}',
    },
  });
  const [figure] = report.figures.filter(({ kind }) => kind === 'drawn');
  if (figure?.kind !== 'drawn') throw new Error('No chart was drawn.');
  const { one } = figureInterest(report, figure, answerOfFigure(report, figure));
  expect(one.map(textOf).join(' ')).toContain('Birch');
  expect(one.map(textOf).join(' ')).not.toContain('Alder');
});
