import type { SwingFindings } from '../../../../findings/findings.ts';
import { metrics } from '../../../../trade/metrics.ts';
import { swingRow, swingSummary, swingUnmeasured, type SwingRow } from '../../../swing.ts';
import type { Telling } from '../../../telling.ts';
import { listed } from '../../../words.ts';
import { saySwingSummary, saySwingUnmeasured, swingAnswerClause, swingClause } from '../../swing.ts';
import { anyOf, inTest, type ChartFinding } from './chartFinding.ts';

/** What of the swing differed most between which two, and what that could be worth; or that it did not, or is not known. */
export function deliveryFound(swing: SwingFindings, telling: Telling): ChartFinding {
  const summary = swingSummary(swing);
  const unmeasured = saySwingUnmeasured(swingUnmeasured(swing));
  const rows = swing.measures.flatMap(({ id, pairs }) => pairs.map((pair) => swingRow(id, pair, swing)));
  const [largest] = rows.filter(({ answer }) => answer === 'different').toSorted((x, y) => most(y) - most(x));
  if (largest !== undefined)
    return {
      forms: [
        inTest(telling, swingAnswerClause(largest, telling)),
        inTest(telling, swingClause(largest, telling)),
      ],
      further: [
        ...(largest.worth === null
          ? []
          : [
              `What that is worth in ${metrics[swing.metric].name} was calculated, by a flight model or a rule of thumb.`,
            ]),
        saySwingSummary(summary, telling),
        unmeasured,
      ].filter((words) => words !== ''),
    };
  const names = anyOf([...new Set(rows.flatMap(({ a, b }) => [a, b]))], telling, 'and');
  const measures = listed(swing.measures.map(({ id }) => metrics[id].name));
  const told =
    summary.kind === 'swing-too-few'
      ? 'there are too few readings of the swing to compare it'
      : summary.kind === 'swing-same'
        ? `the swing was the same with ${names}, as far as we measured it (${measures})`
        : `we cannot tell whether the swing was the same with ${names} (${measures})`;
  return {
    forms: [inTest(telling, told)],
    further: unmeasured === '' ? [] : [unmeasured],
  };
}

/** The most that a difference could be worth, m. */
const most = ({ worth }: SwingRow): number => (worth === null ? 0 : Math.max(...worth.ci.map(Math.abs)));
