import { metrics } from '../../../../trade/metrics.ts';
import type { SpreadStatement } from '../../../spread.ts';
import type { Telling } from '../../../telling.ts';
import { listed } from '../../../words.ts';
import { sayExplored } from '../../explored.ts';
import { byGolfers, inTest, type ChartFinding } from './chartFinding.ts';

const unplanned = ', seen but not tested for';

/** Who was more consistent than whom, and in what: "Lengths, one golfer: Short was more consistent than Long in side, ...". */
export function spreadFound(statements: readonly SpreadStatement[], telling: Telling): ChartFinding {
  const told = statements.flatMap(({ metric, differing, explored }) =>
    (differing ?? []).map(({ steadier, other }) => ({ metric, steadier, other, explored })),
  );
  const [first] = told;
  const shown = listed(statements.map(({ metric }) => metrics[metric].name));
  if (first === undefined) {
    const judged = statements.some(({ differing }) => differing !== null);
    const names = listed(telling.findings.contenders.map(({ id }) => telling.the(id)));
    return {
      forms: [
        inTest(telling, judged ? `no clear difference in consistency of ${shown}` : 'consistency not judged'),
        inTest(
          telling,
          judged
            ? `no clear difference in consistency of ${shown} between ${names}`
            : `consistency of ${names} not judged`,
        ),
      ],
      further: [],
    };
  }
  const clause = (one: typeof first): string =>
    `${telling.the(one.steadier)} was more consistent than ${telling.the(one.other)} in ${metrics[one.metric].name}`;
  const each = [
    ...Map.groupBy(told, ({ steadier, other }) => JSON.stringify([steadier, other])).values(),
  ].map((own) => {
    const [one = first] = own;
    return `${telling.the(one.steadier)} was more consistent than ${telling.the(one.other)} in ${listed(own.map(({ metric }) => metrics[metric].name))}`;
  });
  return {
    forms: [
      byGolfers(telling, `clear differences in consistency of ${shown}${unplanned}`),
      ...(told.length === 1 ? [byGolfers(telling, `${clause(first)}${unplanned}`)] : []),
      byGolfers(telling, `${listed(each)}${unplanned}`),
      inTest(telling, `${listed(each)}${unplanned}`),
    ],
    further: [sayExplored(first.explored)],
  };
}
