import type { SwingFindings } from '../../../../findings/findings.ts';
import { metrics } from '../../../../trade/metrics.ts';
import { swingRow, swingSummary, swingUnmeasured, type SwingRow } from '../../../swing.ts';
import type { Telling } from '../../../telling.ts';
import { listed } from '../../../words.ts';
import { saySwingSummary, saySwingUnmeasured, swingAnswerClause, swingClause } from '../../swing.ts';
import { anyOf, byGolfers, inTest, theseMany, type ChartFinding } from './chartFinding.ts';

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
        inTest(
          telling,
          largest.worth === null
            ? swingClause(largest, telling)
            : `${swingClause(largest, telling)} in ${metrics[swing.metric].name}, as calculated`,
        ),
      ],
      further: [saySwingSummary(summary, telling), unmeasured].filter((words) => words !== ''),
    };
  const ids = [...new Set(rows.flatMap(({ a, b }) => [a, b]))];
  const names = anyOf(ids, telling, 'and');
  const inBrackets =
    swing.measures.length === 0 ? '' : ` (${listed(swing.measures.map(({ id }) => metrics[id].name))})`;
  const told = (whom: string): string =>
    summary.kind === 'swing-too-few'
      ? 'there are too few readings of the swing to compare it'
      : summary.kind === 'swing-same'
        ? `the swing was the same with ${whom}, as far as we measured it`
        : `we cannot tell whether the swing was the same with ${whom}`;
  return {
    forms: [
      byGolfers(telling, told(theseMany(ids.length, telling))),
      byGolfers(telling, told(names)),
      byGolfers(telling, `${told(names)}${inBrackets}`),
      inTest(telling, `${told(names)}${inBrackets}`),
    ],
    further: unmeasured === '' ? [] : [unmeasured],
  };
}

/** The most that a difference could be worth, m. */
const most = ({ worth }: SwingRow): number => (worth === null ? 0 : Math.max(...worth.ci.map(Math.abs)));
