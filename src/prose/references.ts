import { closest } from 'fastest-levenshtein';
import type { ContenderSummary, MetricFindings } from '../findings/findings.ts';
import { isGap } from '../findings/verdict.ts';
import { sayClause, sayNumbers } from './english/answers.ts';
import { exploredAside } from './english/explored.ts';
import { pairAnswer } from './pairAnswer.ts';
import { printAverage, printingOf, printSize } from './printSteps.ts';
import { withUnit } from './readerUnits.ts';
import type { Telling } from './telling.ts';

/** What a reference of the narrative stands for, or why it stands for nothing. */
export type Resolved =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'chart'; readonly chart: string }
  | { readonly kind: 'unknown'; readonly expected: string; readonly nearest: string | null };

const forms = [
  'mean METRIC NAME',
  'sd METRIC NAME',
  'apart METRIC NAME NAME',
  'answer METRIC NAME NAME',
  'shots NAME',
  'chart CHART',
];

/**
 * The value behind the words of `{{ ... }}`: `mean carry alder`, `sd spin_rate alder`, `apart carry alder birch`,
 * `answer carry alder birch`, `shots alder`, `chart landing`.
 */
export function resolveReference(
  words: readonly string[],
  telling: Telling,
  charts: readonly string[],
): Resolved {
  const [form = '', ...rest] = words;
  switch (form) {
    case 'mean':
    case 'sd':
      return summaryValue(form, rest, telling);
    case 'apart':
    case 'answer':
      return pairValue(form, rest, telling);
    case 'shots':
      return shotCount(rest, telling);
    case 'chart':
      return chartReference(rest, charts);
    default: {
      const near = closest(form, ['mean', 'sd', 'apart', 'answer', 'shots', 'chart']);
      return unknown(`one of: ${forms.join(', ')}`, [near, ...rest].join(' '));
    }
  }
}

function unknown(expected: string, nearest: string | null): Resolved {
  return { kind: 'unknown', expected, nearest };
}

function metricNamed(word: string, telling: Telling): MetricFindings | null {
  return telling.findings.metrics.find(({ id }) => id === word) ?? null;
}

function nearestMetric(word: string, telling: Telling): string {
  const names = telling.findings.metrics.map(({ id }) => id);
  return names.length === 0 ? word : closest(word, names);
}

function nearestContender(word: string, telling: Telling): string {
  return closest(
    word,
    telling.findings.contenders.map(({ id }) => id),
  );
}

function summaryValue(form: 'mean' | 'sd', rest: readonly string[], telling: Telling): Resolved {
  const [metricWord = '', name = ''] = rest;
  const metric = metricNamed(metricWord, telling);
  const summary = metric?.byContender.find(({ id }) => id === name);
  if (metric === null || summary === undefined || rest.length !== 2) {
    const better = [form, metric?.id ?? nearestMetric(metricWord, telling), nearestContender(name, telling)];
    return unknown(`${form} METRIC NAME, with a metric and a contender of this report`, better.join(' '));
  }
  const printed = printSummary(form, summary, metric, telling);
  return printed === null
    ? unknown(`${form} of a contender with enough readings`, null)
    : { kind: 'text', text: printed };
}

function printSummary(
  form: 'mean' | 'sd',
  summary: ContenderSummary,
  metric: MetricFindings,
  telling: Telling,
): string | null {
  const printing = printingOf(metric, telling);
  const { mean, sd } = summary;
  if (form === 'mean') return mean === null ? null : withUnit(printAverage(mean, printing), printing.unit);
  return sd === null ? null : withUnit(printSize(sd, printing), printing.unit);
}

function pairValue(form: 'apart' | 'answer', rest: readonly string[], telling: Telling): Resolved {
  const [metricWord = '', first = '', second = ''] = rest;
  const metric = metricNamed(metricWord, telling);
  const pair = metric?.pairs.find(
    ({ a, b }) => (a === first && b === second) || (a === second && b === first),
  );
  if (metric === null || pair === undefined || rest.length !== 3) {
    const better = [
      form,
      metric?.id ?? nearestMetric(metricWord, telling),
      nearestContender(first, telling),
      nearestContender(second, telling),
    ];
    return unknown(
      `${form} METRIC NAME NAME, with a metric and two contenders of this report`,
      better.join(' '),
    );
  }
  const answer = pairAnswer(pair, metric, telling.findings.design);
  const seen = metric.role === 'exploratory' && isGap(pair.verdict);
  const aside = seen ? exploredAside(telling.findings.explored) : null;
  const withFamily = (text: string): string => (aside === null ? text : `${text} (${aside})`);
  if (form === 'answer') return { kind: 'text', text: withFamily(sayClause(answer, telling)) };
  const numbers = sayNumbers(answer, telling);
  return numbers === ''
    ? unknown('apart of two that were judged', null)
    : { kind: 'text', text: withFamily(numbers) };
}

function shotCount(rest: readonly string[], telling: Telling): Resolved {
  const [name = ''] = rest;
  const contender = telling.findings.contenders.find(({ id }) => id === name);
  if (contender === undefined || rest.length !== 1) {
    return unknown('shots NAME, with a contender of this report', `shots ${nearestContender(name, telling)}`);
  }
  return { kind: 'text', text: String(contender.shots - contender.excluded) };
}

function chartReference(rest: readonly string[], charts: readonly string[]): Resolved {
  const [name = ''] = rest;
  if (charts.includes(name) && rest.length === 1) return { kind: 'chart', chart: name };
  if (name === 'price')
    return unknown('no chart of prices: they stand in the table of all averages, side by side', null);
  const nearest = charts.length === 0 ? null : `chart ${closest(name, [...charts])}`;
  return unknown(`chart NAME, with a chart of this report: ${charts.join(', ')}`, nearest);
}
