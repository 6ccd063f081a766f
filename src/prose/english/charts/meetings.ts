import type { MetricFindings } from '../../../findings/findings.ts';
import { metrics, type MetricId } from '../../../trade/metrics.ts';
import { shortUnit, unitFor } from '../../readerUnits.ts';
import type { Telling } from '../../telling.ts';
import type { RowsAhead, RowsOf } from './hitters.ts';
import { differenceHeads, inBrackets } from './ranges.ts';
import { countWord } from '../../words.ts';
import { comparisonOf } from '../comparisons.ts';

/** The words of a pair's difference report by report, `a` ahead in the newest. */
export function meetingsWords({ id, matters }: MetricFindings, { a, b, more }: RowsOf, { system }: Telling) {
  const { name } = metrics[id];
  return {
    subject: `Difference in average ${name} between ${a} and ${b} in each report`,
    found: [],
    signs: [],
    foot: `Difference in average ${name}, report by report.`,
    key: {
      ring: 'best estimate',
      bar: 'likely range',
      thick: matters > 0 ? 'large enough to matter' : null,
      open: null,
      filled: true,
    },
    opening: `Differences in ${name}, counted towards ${a}.`,
    numbers: `${name} differences, report by report`,
    tableCaption: `${a} and ${b}, report by report: difference in average ${name}. Positive: ${a} ${more}.`,
    tableHead: ['Report', ...differenceHeads(inBrackets(shortUnit(unitFor(id, system))))],
  };
}

/** "On average Sorrel carried farther than Rowan in three of four reports". */
export function meetingsFinding(
  { ahead: count, of }: RowsAhead,
  [ahead, behind]: readonly [string, string],
  metric: MetricId,
  by: 'more' | 'less',
): string {
  const { verb, [by]: more } = comparisonOf(metric);
  const all = of === 2 ? 'both reports' : `all ${countWord(of)} reports`;
  const reports = count === of ? all : `${countWord(count)} of ${countWord(of)} reports`;
  return `On average ${ahead} ${verb} ${more} than ${behind} in ${reports}`;
}

/** Why it is not drawn. */
export const oneReport = 'There is one report so far; its own page has the chart.';
