import type { MetricId } from '../trade/metrics.ts';
import type { Shown } from './chart.ts';
import { countColumn, drawnSize, readingColumn, wordsColumn, type ChartNumbers } from './chartNumbers.ts';
import { drawnShots } from './drawnShots.ts';

/** Shots that a chart draws as marks: those that have each of these measures. */
export function shotNumbers(
  { session, telling }: Pick<Shown, 'session' | 'telling'>,
  drawn: readonly MetricId[],
): ChartNumbers {
  const { system } = telling;
  return {
    columns: [
      wordsColumn('Label', `The ${telling.noun} hit.`),
      wordsColumn('Golfer', 'Who hit: an id, no name.'),
      countColumn('Order', "Place among this golfer's shots, in the order of the file."),
      ...drawn.map((metric) => readingColumn(metric, system)),
      wordsColumn('Left out', '"yes" for a shot left out of every figure.'),
    ],
    rows: drawnShots(session)
      .filter(({ values }) => drawn.every((metric) => typeof values[metric] === 'number'))
      .map(({ contender, hitter, order, values, excluded }) => [
        telling.nameOf(contender),
        hitter,
        order,
        ...drawn.map((metric) => drawnSize(values[metric], metric, system)),
        excluded === null ? '' : 'yes',
      ]),
  };
}
