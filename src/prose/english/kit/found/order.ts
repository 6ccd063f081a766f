import type { MetricFindings } from '../../../../findings/findings.ts';
import { metrics } from '../../../../trade/metrics.ts';
import type { AnswerBlock } from '../../../statement.ts';
import type { Telling } from '../../../telling.ts';
import { countWord } from '../../../words.ts';
import { printingFor } from '../../../telling.ts';
import { headOf } from '../../answerHead.ts';
import { trendWords } from '../../charts/order.ts';
import { namesOf } from '../../names.ts';
import { anyOf, clauses, theseMany, type ChartFinding } from './chartFinding.ts';

type Trend = MetricFindings['trends'][number];

/** Whether readings went up or down as the test went on: "Carry of irons, one golfer, in the order hit: rose with Teasel." */
export function orderFound(block: AnswerBlock, metric: MetricFindings, telling: Telling): ChartFinding {
  const { drift, trends } = metric;
  const { name } = metrics[metric.id];
  const head = `${headOf(block, telling)}, in the order hit`;
  const brief = `${headOf(block, telling, { form: 'short' })}, shot by shot`;
  if (trends.length === 0)
    return {
      forms: [
        `${head}: too few shots to see a trend with ${anyOf(
          telling.findings.contenders.map(({ id }) => id),
          telling,
        )}.`,
      ],
      further: [],
    };
  const ids = (went: Went): readonly string[] =>
    trends.filter((trend) => wentOf(trend) === went).map(({ id }) => id);
  const [rose, fell, unclear] = [ids('rose'), ids('fell'), ids('unclear')];
  const over = drift === null ? 'unclear' : wentOf(drift);
  const went = clauses([
    rose.length === 0 ? '' : `rose with ${namesOf(rose, telling)}`,
    fell.length === 0 ? '' : `fell with ${namesOf(fell, telling)}`,
  ]);
  const told = clauses([
    went,
    unclear.length === 0 ? '' : `no clear trend with ${anyOf(unclear, telling)}`,
    // What no one of them shows by itself may show over all of them.
    rose.length + fell.length > 0 || over === 'unclear' ? '' : `over all shots together it ${over}`,
  ]);
  const counts =
    rose.length + fell.length === 0
      ? `no clear trend with any of ${theseMany(trends.length, telling)}${over === 'unclear' ? '' : `; over all it ${over}`}`
      : clauses([
          rose.length === 0 ? '' : `rose with ${countWord(rose.length)}`,
          fell.length === 0 ? '' : `fell with ${countWord(fell.length)}`,
        ]) + ` of ${theseMany(trends.length, telling)}`;
  const clear = trends.filter((trend) => wentOf(trend) !== 'unclear');
  return {
    forms: [
      `${brief}: ${counts}.`,
      ...(went === '' ? [] : [`${brief}: ${went}.`]),
      `${brief}: ${told}.`,
      `${head}: ${told}.`,
    ],
    further:
      clear.length > 0
        ? clear.map((trend) => `${trendWords(metric, trend, printingFor(metric.id, telling), telling)}.`)
        : over === 'unclear'
          ? [`A drift in ${name} may have gone unseen.`]
          : [],
  };
}

type Went = 'rose' | 'fell' | 'unclear';

function wentOf({ ci }: Pick<Trend, 'ci'>): Went {
  if (ci[0] > 0) return 'rose';
  return ci[1] < 0 ? 'fell' : 'unclear';
}
