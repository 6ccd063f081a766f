import type { MetricFindings, PairFindings } from '../findings/findings.ts';
import { turnedPair } from '../charts/turnedPair.ts';
import { swingRowAnswers } from '../prose/english/charts/delivery.ts';
import { partName } from '../prose/english/yards.ts';
import { shortUnit, unitFor } from '../prose/readerUnits.ts';
import { capitalised } from '../prose/words.ts';
import { yardsPart } from '../prose/yardsSplit.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';
import { drawnSize, sizeColumn, wordsColumn, type ChartNumbers } from './chartNumbers.ts';
import type { Report } from './report.ts';

const none: ChartNumbers = { columns: [], rows: [] };

/** *Which is more consistent?*: the standard deviation of each measure with each contender. */
export function spreadNumbers({ telling }: Report, shown: readonly MetricFindings[]): ChartNumbers {
  const { system } = telling;
  const of = shown[0]?.id ?? 'carry';
  return {
    columns: [
      wordsColumn('Label', `The ${telling.noun} hit.`),
      wordsColumn('Of', 'The measure that scatters.'),
      sizeColumn('Standard deviation', of, system, 'Of the counted shots.'),
      sizeColumn('From', of, system, 'Where its likely range begins.'),
      sizeColumn('To', of, system, 'Where its likely range ends.'),
    ],
    rows: shown.flatMap(({ id: metric, byContender }) =>
      byContender.map(({ id, sd, sdCi }) => [
        telling.nameOf(id),
        metrics[metric].name,
        ...[sd, sdCi?.[0], sdCi?.[1]].map((value) => drawnSize(value, metric, system)),
      ]),
    ),
  };
}

/** *Was it the same swing?*: each difference of the swing, and what it could be worth, both counted towards the first. */
export function deliveryNumbers({ findings, telling }: Report): ChartNumbers {
  const { swing } = findings;
  if (swing === null) return none;
  const { system } = telling;
  const worthIn = (name: string, words: string) => sizeColumn(name, swing.metric, system, words);
  return {
    columns: [
      wordsColumn('Measure', 'The measure of the swing.'),
      wordsColumn('Unit', 'Of the difference; empty for a ratio.'),
      wordsColumn('First', 'Differences are counted towards this one.'),
      wordsColumn('Second', 'What it is compared with.'),
      ...(['Difference', 'Difference from', 'Difference to'] as const).map((name) => ({
        ...wordsColumn(
          name,
          'In the unit of the row: best estimate, and where its likely range begins and ends.',
        ),
        type: 'number' as const,
      })),
      worthIn('Worth', `What it could be worth in ${metrics[swing.metric].name}.`),
      worthIn('Worth from', 'Where the range of that begins.'),
      worthIn('Worth to', 'Where the range of that ends.'),
      wordsColumn('Answer', 'Whether the swing was the same.'),
    ],
    rows: swing.measures.flatMap(({ id, pairs }) =>
      pairs.map(({ a, b, estimate, ci, worth, answer }) => [
        metrics[id].name,
        shortUnit(unitFor(id, system)),
        telling.nameOf(a),
        telling.nameOf(b),
        ...[estimate, ...ci].map((value) => drawnSize(value, id, system)),
        ...[worth?.estimate, worth?.ci[0], worth?.ci[1]].map((value) =>
          drawnSize(value, swing.metric, system),
        ),
        answer === 'not-known' ? 'Not known' : swingRowAnswers[answer],
      ]),
    ),
  };
}

/** *Where do the yards come from?*: the difference of one pair, its parts and what they leave over. */
export function yardsNumbers(report: Report, metric: MetricFindings, pair: PairFindings): ChartNumbers {
  const { findings, telling } = report;
  const split = findings.yards.find(({ a, b }) => a === pair.a && b === pair.b);
  if (split?.attribution.state !== 'attributed') return none;
  const { parts, unexplained } = split.attribution;
  const turned = turnedPair(pair, metric, telling);
  const flip = turned.estimate(1) > 0 ? 1 : -1;
  const size = (value: number | null | undefined) =>
    drawnSize(value, 'carry' satisfies MetricId, telling.system);
  const part = (name: string, found: (typeof parts)[number] | typeof unexplained) => {
    const { told, value, range } = yardsPart(null, found, flip);
    return [name, turned.a.label, turned.b.label, told ? size(value) : null, size(range[0]), size(range[1])];
  };
  const [low, high] = pair.ci === null ? [null, null] : turned.ci(pair.ci);
  const whole = pair.estimate === null ? null : turned.estimate(pair.estimate);
  return {
    columns: [
      wordsColumn('Part', 'What the difference is put down to by a flight model.'),
      wordsColumn('First', 'Differences are counted towards this one.'),
      wordsColumn('Second', 'What it is compared with.'),
      sizeColumn(
        'Best estimate',
        'carry',
        telling.system,
        'Empty where a part is too small or too uncertain.',
      ),
      sizeColumn('From', 'carry', telling.system, 'Where its likely range begins.'),
      sizeColumn('To', 'carry', telling.system, 'Where its likely range ends.'),
    ],
    rows: [
      ['Whole difference', turned.a.label, turned.b.label, size(whole), size(low), size(high)],
      ...parts.map((found) => part(capitalised(partName(found.id, telling)), found)),
      part('Not explained', unexplained),
    ],
  };
}
