import type { MetricFindings } from '../../../findings/findings.ts';
import { metrics } from '../../../trade/metrics.ts';
import { shortUnit, unitFor, unitWord } from '../../readerUnits.ts';
import type { Telling } from '../../telling.ts';
import { capitalised, counted, countWord, listed } from '../../words.ts';
import { comparedNames } from './ranges.ts';
import type { SpreadStatement } from '../../spread.ts';
import { unplanned } from './unplanned.ts';

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

/** "No clear difference in consistency", or who was more consistent in what. */
export function spreadFinding(statements: readonly SpreadStatement[], telling: Telling): string {
  if (statements.every(({ differing }) => differing === null)) return 'Consistency was not judged';
  const parts = statements.flatMap(({ metric, differing }) =>
    (differing ?? []).map(
      ({ steadier, other }) =>
        `${telling.the(steadier)} was more consistent than ${telling.the(other)} in ${metrics[metric].name}`,
    ),
  );
  const [first, second, ...rest] = parts;
  if (first === undefined) return 'No clear difference in consistency';
  const more = rest.length === 0 ? [] : [counted(rest.length, 'more difference')];
  return capitalised(`${listed([first, ...(second === undefined ? [] : [second]), ...more])}${unplanned}`);
}

/** Why it is not drawn. */
export const noSpreadColumns = 'This chart takes one golfer and a column for carry or side.';
export const tooFewToScatter = 'The shots are too few to speak of consistency.';
