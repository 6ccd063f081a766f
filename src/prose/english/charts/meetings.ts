import type { MetricFindings } from '../../../findings/findings.ts';
import { metrics } from '../../../trade/metrics.ts';
import { shortUnit, unitFor } from '../../readerUnits.ts';
import type { Telling } from '../../telling.ts';
import type { RowsOf } from './hitters.ts';
import { differenceHeads, inBrackets } from './ranges.ts';

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
