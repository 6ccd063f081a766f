import type { MetricFindings } from '../findings/findings.ts';
import { metrics } from '../trade/metrics.ts';
import { printAt, stepFor } from '../prose/numbers.ts';
import { luckSentence } from '../prose/reachSentences.ts';
import { shortUnit, toReader, unitFor, unitsIn, unitWord, withUnit } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';
import { capitalised } from '../prose/words.ts';
import type { Figure } from './figure.ts';
import { luckChart } from './luck.ts';

const id = 'luck';
const question = 'How big a gap does luck make?';

/** *Luck yardstick*: best minus worst average, by luck and as seen. */
export function luckFigure(metric: MetricFindings, telling: Telling): Figure {
  const judged = metric.byContender.filter(({ n }) => n >= 5);
  const means = judged.flatMap(({ mean }) => mean ?? []);
  const words = luckSentence(metric, telling);
  if (metric.luck === null || words === null || means.length < 2) {
    return {
      kind: 'absent',
      id,
      question,
      why: 'Not drawn: luck can be told only for one golfer with five shots or more each.',
    };
  }
  const unit = unitFor(metric.id, telling.system);
  const read = (value: number): number => toReader(value, metric.id, telling.system);
  const gap = read(Math.max(...means) - Math.min(...means));
  const average = read(metric.luck.average);
  const upTo = read(metric.luck.upTo);
  const step = stepFor(unit, average);
  const seen = withUnit(printAt(gap, step), unit);
  const { name } = metrics[metric.id];
  const sign = shortUnit(unit);
  return luckChart({
    id,
    question,
    subject: `Largest minus smallest average ${name}, by luck and as seen`,
    finding: `${words} Seen here: ${seen} between the highest and the lowest average. A rough yardstick, not a test.`,
    description: `${words} Seen here: ${seen}.`,
    table: {
      caption: `Largest minus smallest average ${name}${sign === '' ? '' : ` (${sign})`}`,
      head: ['What', 'Size'],
      rows: [
        ['By luck, on average', printAt(average, step)],
        ['By luck, passed in 5 of 100 tests', printAt(upTo, step)],
        ['Seen here', printAt(gap, step)],
      ],
    },
    luck: {
      average,
      upTo,
      words: `By luck: about ${withUnit(printAt(average, step), unit)}, now and then ${printAt(upTo, step)}`,
    },
    seen: { gap, words: `Seen here: ${seen}` },
    roundIn: unitsIn(telling.system, metric.id, telling.scalesIn),
    axis: capitalised(`${unitWord(unit)} between the highest and the lowest average`.trim()),
  });
}
