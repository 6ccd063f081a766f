import type { ContenderSummary, MetricFindings } from '../findings/findings.ts';
import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import { spreadLimits } from '../prose/english/charts/ranges.ts';
import { spreadFinding, spreadRowWords, spreadWords } from '../prose/english/charts/spread.ts';
import { saySpread } from '../prose/english/spread.ts';
import { printingOf, printSize, type Printing } from '../prose/printSteps.ts';
import { toReader } from '../prose/readerUnits.ts';
import { spreadOf } from '../prose/spread.ts';
import type { Telling } from '../prose/telling.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';
import { contenderName } from './contenderName.ts';
import { absentFigure, figureHead, type Figure } from './figure.ts';
import { spreadChart } from './spread.ts';
import type { SpreadRow } from './spreadInput.ts';

const shownMetrics: readonly MetricId[] = ['carry', 'side'];

/** *Which is more consistent?*: the standard deviation of carry and side with each contender, with its wide range. */
export function spreadFigure(telling: Telling): Figure {
  const { findings } = telling;
  const head = figureHead('spread', { of: 'report' }, findings);
  const shown = shownMetrics.flatMap((id) => findings.metrics.find((metric) => metric.id === id) ?? []);
  if (shown.length === 0 || findings.design.hitters !== 1)
    return absentFigure(head, notDrawn.noSpreadColumns);
  const groups = shown.map((metric) => ({ metric, ...groupOf(metric, telling) }));
  const { tableCaption, tableHead, ...words } = spreadWords(
    shown,
    groups.map(({ heading }) => heading),
    telling,
  );
  return spreadChart({
    ...head,
    ...words,
    finding: spreadFinding(
      shown.map((metric) => spreadOf(metric, findings)),
      telling,
    ),
    description: groups
      .flatMap(({ rows, heading }) => [
        heading,
        ...rows.map(
          ({ contender, figure, words: said }) =>
            `${contender.label}: ${figure === '' ? '' : `${figure}, `}${said}.`,
        ),
      ])
      .join(' '),
    table: {
      caption: tableCaption,
      head: tableHead,
      rows: groups.flatMap(({ metric, rows }) =>
        rows.map(({ contender, figure, range }) => [
          contender.label,
          metrics[metric.id].name,
          figure === '' ? '–' : figure,
          ...(range ?? ['–', '–']),
        ]),
      ),
    },
    groups,
  });
}

interface PrintedRow extends SpreadRow {
  /** Both limits as printed. */
  readonly range: readonly [string, string] | null;
}

function groupOf(
  metric: MetricFindings,
  telling: Telling,
): { readonly heading: string; readonly rows: readonly PrintedRow[] } {
  const printing = printingOf(metric, telling);
  return {
    heading: saySpread(spreadOf(metric, telling.findings), telling),
    rows: metric.byContender.map((summary) => rowOf(summary, metric.id, printing, telling)),
  };
}

function rowOf(
  { id, sd, sdCi, n }: ContenderSummary,
  metric: MetricId,
  printing: Printing,
  telling: Telling,
): PrintedRow {
  const read = (value: number): number => toReader(value, metric, telling.system);
  const range = sdCi === null ? null : spreadLimits(sdCi, printing);
  return {
    contender: contenderName(id, telling),
    spread: sd === null ? null : read(sd),
    interval: sd === null || sdCi === null ? null : { low: read(sdCi[0]), high: read(sdCi[1]) },
    figure: sd === null ? '' : printSize(sd, printing),
    words: spreadRowWords(n, sd === null ? null : range),
    range,
  };
}
