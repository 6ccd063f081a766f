import { expect, test } from 'vitest';
import { onceEachFigure } from '../../src/kit/onceEachFigure.ts';
import { offered } from './content.ts';

test('work is done once for a chart of a report, and anew for the same chart in a report told otherwise', () => {
  const [first] = offered;
  if (first === undefined) throw new Error('A report is offered.');
  const [, report, figure] = first;
  let done = 0;
  const worked = onceEachFigure((own) => {
    done += 1;
    return own.telling.system;
  });
  expect([worked(report, figure), worked(report, figure)]).toEqual(['yards', 'yards']);
  expect(done).toBe(1);
  const other = { ...report, telling: { ...report.telling, system: 'metres' as const } };
  expect(worked(other, figure)).toBe('metres');
  expect(done).toBe(2);
});
