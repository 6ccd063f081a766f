import type { ContenderSummary, MetricFindings } from '../findings/findings.ts';
import { isGap } from '../findings/verdict.ts';
import { metricNamed } from '../intake/authored/metricName.ts';
import type { UnitId } from '../trade/units.ts';
import { sayClause, sayNumbers } from './english/pairInWords.ts';
import { exploredAside } from './english/explored.ts';
import { formNames, formText, isFormName, type FormName } from './narrativeForms.ts';
import { pairAnswer } from './pairAnswer.ts';
import { printAverage, printingOf, printReading, printSize } from './printSteps.ts';
import { withUnit } from './readerUnits.ts';
import { suggestedReference } from './suggestedReference.ts';
import type { Telling } from './telling.ts';

/** What a reference of the narrative stands for, or why it stands for nothing. */
export type Resolved =
  /** A printed number with the unit that it brings along. */
  | { readonly kind: 'number'; readonly printed: string; readonly unit: UnitId }
  /** Words of a sentence, whose last number is in `unit`; a clause is one that could be a sentence. */
  | { readonly kind: 'words'; readonly text: string; readonly unit: UnitId; readonly isClause: boolean }
  | { readonly kind: 'count'; readonly text: string }
  | { readonly kind: 'chart'; readonly chart: string }
  | Unknown;

interface Unknown {
  readonly kind: 'unknown';
  readonly expected: string;
  /** What to do, a whole sentence; a reference that it names is one that resolves. */
  readonly cure: string;
}

type Summarised = 'mean' | 'median' | 'min' | 'max' | 'sd';

/**
 * The value behind the words of `{{ ... }}`: `mean carry alder`, `max ball speed alder`, `apart carry alder birch`,
 * `chart landing`. Metrics by their ids or the trade's words.
 *
 * @param charts names of the charts that may be referred to
 */
export function resolveReference(
  words: readonly string[],
  telling: Telling,
  charts: readonly string[],
): Resolved {
  const resolved = resolve(words, telling, charts);
  if (resolved.kind !== 'unknown' || resolved.cure !== '') return resolved;
  const near = suggestedReference(words, telling, charts, (other) => {
    const { kind } = resolve(other, telling, charts);
    return kind !== 'unknown';
  });
  const cure =
    near === null ? 'Write one that is there, or take the reference out.' : `Did you mean {{ ${near} }}?`;
  return { ...resolved, cure };
}

/** The same, without a cure where a suggestion might be one. */
function resolve(words: readonly string[], telling: Telling, charts: readonly string[]): Resolved {
  const [form = '', ...rest] = words;
  if (form === 'best') {
    return unknown(
      'a value that does not grow with the number of shots',
      'There is no "best": of more shots the best is better, whatever was hit. Write mean or median; of one shot, max or min.',
    );
  }
  if (!isFormName(form)) return unknown(`one of: ${formNames.map(formText).join(', ')}`);
  switch (form) {
    case 'mean':
    case 'median':
    case 'min':
    case 'max':
    case 'sd':
      return summaryValue(form, rest, telling);
    case 'apart':
    case 'answer':
      return pairValue(form, rest, telling);
    case 'shots':
      return shotCount(rest, telling);
    case 'chart':
      return chartReference(rest, charts);
  }
}

const unknown = (expected: string, cure = ''): Unknown => ({ kind: 'unknown', expected, cure });

const misnamed = (form: FormName, what: string, telling: Telling): Unknown =>
  unknown(`${formText(form)}, with ${what} of this report: ${thereIs(telling)}`);

function thereIs({ findings }: Telling): string {
  const metrics = findings.metrics.map(({ id }) => id);
  const names = findings.contenders.map(({ id }) => id);
  return `${metrics.join(', ')}; ${names.join(', ')}`;
}

function metricOf(words: readonly string[], telling: Telling): MetricFindings | null {
  const id = metricNamed(words.join(' '));
  return telling.findings.metrics.find((metric) => metric.id === id) ?? null;
}

function summaryValue(form: Summarised, rest: readonly string[], telling: Telling): Resolved {
  const metric = metricOf(rest.slice(0, -1), telling);
  const summary = metric?.byContender.find(({ id }) => id === rest.at(-1));
  if (metric === null || summary === undefined) return misnamed(form, 'a metric and a contender', telling);
  const printing = printingOf(metric, telling);
  const printed = printSummary(form, summary, printing);
  return printed === null
    ? unknown(`${form} of a contender with enough readings`, 'Take the reference out.')
    : { kind: 'number', printed, unit: printing.unit };
}

function printSummary(
  form: Summarised,
  summary: ContenderSummary,
  printing: Parameters<typeof printAverage>[1],
): string | null {
  const value = summary[form];
  if (value === null) return null;
  switch (form) {
    case 'mean':
    case 'median':
      return printAverage(value, printing);
    case 'min':
    case 'max':
      return printReading(value, printing);
    case 'sd':
      return printSize(value, printing);
  }
}

function pairValue(form: 'apart' | 'answer', rest: readonly string[], telling: Telling): Resolved {
  const metric = metricOf(rest.slice(0, -2), telling);
  const [first, second] = rest.slice(-2);
  const pair = metric?.pairs.find(
    ({ a, b }) => (a === first && b === second) || (a === second && b === first),
  );
  if (metric === null || pair === undefined) return misnamed(form, 'a metric and two contenders', telling);
  const answer = pairAnswer(pair, metric, telling.findings.design);
  const seen = metric.role === 'exploratory' && isGap(pair.verdict);
  const aside = seen ? exploredAside(telling.findings.explored) : null;
  const { unit } = printingOf(metric, telling);
  const told = (text: string): Resolved => ({
    kind: 'words',
    text: aside === null ? text : `${text} (${aside})`,
    unit,
    isClause: form === 'answer',
  });
  if (form === 'answer') return told(sayClause(answer, telling));
  const numbers = sayNumbers(answer, telling);
  return numbers === ''
    ? unknown(
        'apart of two that were judged',
        `Write {{ ${['answer', metric.id, pair.a, pair.b].join(' ')} }}, which says why.`,
      )
    : told(numbers);
}

function shotCount(rest: readonly string[], telling: Telling): Resolved {
  const [name = ''] = rest;
  const contender = telling.findings.contenders.find(({ id }) => id === name);
  if (contender === undefined || rest.length !== 1) return misnamed('shots', 'a contender', telling);
  return { kind: 'count', text: String(contender.shots - contender.excluded) };
}

function chartReference(rest: readonly string[], charts: readonly string[]): Resolved {
  const [name = ''] = rest;
  if (charts.includes(name) && rest.length === 1) return { kind: 'chart', chart: name };
  if (name === 'price')
    return unknown(
      'no chart of prices: they stand in the table of all averages, side by side',
      'Take the reference out.',
    );
  return unknown(`${formText('chart')}, with a chart of this report: ${charts.join(', ')}`);
}

/** What a reference prints by itself; empty for a chart, and for what is unknown. */
export function valueText(resolved: Resolved): string {
  switch (resolved.kind) {
    case 'number':
      return withUnit(resolved.printed, resolved.unit);
    case 'words':
    case 'count':
      return resolved.text;
    case 'chart':
    case 'unknown':
      return '';
  }
}
