import type { ContenderSummary, MetricFindings } from '../findings/findings.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';
import { printAt, stepFor } from '../prose/numbers.ts';
import { shortUnit, toReader, unitFor, unitWord } from '../prose/readerUnits.ts';
import { spreadHeading } from '../prose/spreadSentence.ts';
import type { Telling } from '../prose/telling.ts';
import { capitalised, countWord } from '../prose/words.ts';
import { contenderName } from './contenderName.ts';
import type { Figure } from './figure.ts';
import { spreadChart } from './spread.ts';
import type { SpreadGroup, SpreadRow } from './spreadInput.ts';

const id = 'spread';
const question = 'Which is more repeatable?';

/** *Spread*: the standard deviation of carry and side with each contender, with its wide interval. */
export function spreadFigure(telling: Telling): Figure {
  const shown = (['carry', 'side'] as const).flatMap((metric) => {
    const found = telling.findings.metrics.find((candidate) => candidate.id === metric);
    return found === undefined ? [] : [found];
  });
  if (shown.length === 0 || telling.findings.design.hitters !== 1) {
    return {
      kind: 'absent',
      id,
      question,
      why: 'Not drawn: it takes one golfer and a column for carry or side.',
    };
  }
  const unit = unitFor('carry', telling.system);
  const groups = shown.map((metric) => group(metric, telling));
  return spreadChart({
    id,
    question,
    subject: `How far shots scatter with each ${telling.noun}`,
    finding: `${groups.map(({ heading }) => heading).join(' ')} Ring: the standard deviation; bar: every one that would fit these shots (95\u00a0%).`,
    description: groups
      .flatMap(({ rows, heading }) => [
        heading,
        ...rows.map(
          ({ contender, figure, words }) =>
            `${contender.label}: ${figure === '' ? '' : `${figure}; `}${words}.`,
        ),
      ])
      .join(' '),
    table: {
      caption: `Standard deviation (${shortUnit(unit)})`,
      head: [capitalised(telling.noun), 'Of', 'Standard deviation', 'What would fit'],
      rows: groups.flatMap(({ rows }, index) =>
        rows.map(({ contender, figure, words }) => [
          contender.label,
          metrics[shown[index]?.id ?? 'carry'].name,
          figure === '' ? '–' : figure,
          words,
        ]),
      ),
    },
    groups,
    axis: `Standard deviation in ${unitWord(unit)}`,
  });
}

function group(metric: MetricFindings, telling: Telling): SpreadGroup {
  return {
    heading: spreadHeading(metric, telling),
    rows: metric.byContender.map((summary) => row(summary, metric.id, telling)),
  };
}

function row(summary: ContenderSummary, metric: MetricId, telling: Telling): SpreadRow {
  const read = (value: number): number => toReader(value, metric, telling.system);
  const { sd, sdCi, n } = summary;
  const contender = contenderName(summary.id, telling);
  if (sd === null)
    return { contender, spread: null, interval: null, figure: '', words: 'too few shots to say' };
  const unit = unitFor(metric, telling.system);
  const step = stepFor(unit, sdCi === null ? null : read((sdCi[1] - sdCi[0]) / 2));
  const print = (value: number): string => printAt(read(value), step);
  return {
    contender,
    spread: read(sd),
    interval: sdCi === null ? null : { low: read(sdCi[0]), high: read(sdCi[1]) },
    figure: print(sd),
    words:
      sdCi === null ? `${countWord(n)} shots cannot say` : `${print(sdCi[0])} to ${print(sdCi[1])} would fit`,
  };
}
