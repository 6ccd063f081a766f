import { describe, expect, test } from 'vitest';
import { caveats } from '../../src/kit/caveatStrip.ts';
import { frameWords } from '../../src/kit/frameWords.ts';
import { kitOf } from '../../src/kit/kitOf.ts';
import { textOf } from '../../src/kit/said.ts';
import { standingWords } from '../../src/prose/english/kit/standing.ts';
import { reportOf, threeHeads } from '../findings/reportOf.ts';
import { offered } from './content.ts';

describe.each(offered)('the frame of %s', (_, report, figure) => {
  const { stamp, about, weighing } = frameWords(report, figure);

  test('says above the chart what marks its report, and no less below it than any picture does', () => {
    expect(stamp).toBe(standingWords(report.source));
    const told = [stamp, about, weighing].filter((words) => words !== '');
    expect(told.join(' ')).toBe(textOf(caveats(report, figure)));
  });
});

test('a report that stands as it was, of real shots, is marked by nothing', () => {
  const report = reportOf({ shots: threeHeads ?? {} });
  const [first] = kitOf(report).offered;
  if (first === undefined) throw new Error('no chart');
  expect(frameWords(report, first.figure).stamp).toBe('');
});
