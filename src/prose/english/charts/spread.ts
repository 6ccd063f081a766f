import type { MetricFindings } from '../../../findings/findings.ts';
import { metrics } from '../../../trade/metrics.ts';
import { shortUnit, unitFor, unitWord } from '../../readerUnits.ts';
import type { Telling } from '../../telling.ts';
import { capitalised, countWord, listed } from '../../words.ts';
import { comparedNames } from './ranges.ts';

/** The words of *Which is more consistent?*, of these metrics. */
export function spreadWords(shown: readonly MetricFindings[], headings: readonly string[], telling: Telling) {
  const unit = unitFor('carry', telling.system);
  const names = comparedNames(telling);
  return {
    subject: `How far ${listed(shown.map(({ id }) => metrics[id].name))} scattered with ${names}`,
    found: headings,
    signs: [],
    key: {
      ring: 'standard deviation, from shot to shot',
      bar: 'likely range (95% confidence, each by itself)',
    },
    numbers: 'consistency',
    axis: `Standard deviation in ${unitWord(unit)}`,
    tableCaption: `Standard deviation (${shortUnit(unit)})`,
    tableHead: [capitalised(telling.noun), 'Of', 'Standard deviation', 'Likely range, from', 'to'],
  };
}

/** Beside a bar: "likely 6 to 12"; what takes its place where shots are too few. */
export function spreadRowWords(shots: number, range: readonly [string, string] | null): string {
  if (range !== null) return `likely ${range[0]} to ${range[1]}`;
  return `${countWord(shots)} ${shots === 1 ? 'shot is' : 'shots are'} too few to say`;
}
