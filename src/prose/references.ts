import { closest } from 'fastest-levenshtein';
import type { ContenderSummary, MetricFindings } from '../findings/findings.ts';
import { isMetricId } from '../trade/metrics.ts';
import { printAt, stepFor } from './numbers.ts';
import { answerClause, gapNumbers } from './pairSentence.ts';
import { toReader, unitFor, withUnit } from './readerUnits.ts';
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
  const value = form === 'mean' ? summary.mean : summary.sd;
  if (value === null || !isMetricId(metric.id)) return null;
  const unit = unitFor(metric.id, telling.system);
  const halfWidth =
    summary.ci === null ? null : toReader((summary.ci[1] - summary.ci[0]) / 2, metric.id, telling.system);
  return withUnit(printAt(toReader(value, metric.id, telling.system), stepFor(unit, halfWidth)), unit);
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
  const text =
    form === 'answer' ? answerClause(pair, metric, telling) : withoutStop(gapNumbers(pair, metric, telling));
  return { kind: 'text', text: form === 'answer' ? text : lowerFirst(text) };
}

function withoutStop(text: string): string {
  return text.replace(/\.$/, '');
}

function lowerFirst(text: string): string {
  return text.startsWith('About ') ? `a${text.slice(1)}` : text;
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
  const nearest = charts.length === 0 ? null : `chart ${closest(name, [...charts])}`;
  return unknown(`chart NAME, with a chart of this report: ${charts.join(', ')}`, nearest);
}
