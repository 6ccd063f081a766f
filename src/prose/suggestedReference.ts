import { metricNamed } from '../intake/authored/metricName.ts';
import { metrics } from '../trade/metrics.ts';
import { formNames, isFormName, narrativeForms, type FormName } from './narrativeForms.ts';
import { onlyNearest } from './onlyNearest.ts';
import type { Telling } from './telling.ts';

/** What people write for a form that is called otherwise here. */
const otherWords: Readonly<Record<string, FormName>> = {
  average: 'mean',
  avg: 'mean',
  stdev: 'sd',
  spread: 'sd',
  longest: 'max',
  shortest: 'min',
  gap: 'apart',
  difference: 'apart',
  count: 'shots',
  figure: 'chart',
};

/**
 * The reference that a mistyped one can only stand for, or null: every word of it is right, or near to one only. A
 * metric that the report does not have is never replaced by another one.
 *
 * @param resolves whether words are a reference; what does not resolve is not suggested
 */
export function suggestedReference(
  words: readonly string[],
  telling: Telling,
  charts: readonly string[],
  resolves: (words: readonly string[]) => boolean,
): string | null {
  const [typed = '', ...rest] = words;
  const form = isFormName(typed) ? typed : (otherWords[typed.toLowerCase()] ?? nearForm(typed));
  if (form === null) return null;
  const meant = restMeant(form, rest, telling, charts);
  const suggestion = meant === null ? null : [form, ...meant];
  return suggestion !== null && resolves(suggestion) ? suggestion.join(' ') : null;
}

function nearForm(typed: string): FormName | null {
  const near = onlyNearest(typed, formNames);
  return near !== null && isFormName(near) ? near : null;
}

function restMeant(
  form: FormName,
  rest: readonly string[],
  telling: Telling,
  charts: readonly string[],
): readonly string[] | null {
  const { takes } = narrativeForms[form];
  if (form === 'chart') return all([rest.length === 1 ? known(rest[0] ?? '', charts) : null]);
  const ids = telling.findings.contenders.map(({ id }) => id);
  const count = takes.filter((part) => part === 'NAME').length;
  const named = rest.slice(rest.length - count).map((word) => known(word, ids));
  if (rest.length < count) return null;
  const metric = rest.slice(0, rest.length - count);
  if (form === 'shots') return metric.length === 0 ? all(named) : null;
  return all([metricMeant(metric.join(' '), telling), ...named]);
}

const known = (word: string, names: readonly string[]): string | null =>
  names.includes(word) ? word : onlyNearest(word, names);

function all(words: readonly (string | null)[]): readonly string[] | null {
  const found = words.filter((word) => word !== null);
  return found.length === words.length ? found : null;
}

function metricMeant(typed: string, { findings }: Telling): string | null {
  const ids = findings.metrics.map(({ id }) => id);
  const named = metricNamed(typed);
  if (named !== null) return ids.find((id) => id === named) ?? null;
  // Every word of the trade takes part, so that a word near to a metric that was not measured is not taken for another.
  const spellings = Object.values(metrics).flatMap(({ id, name }) =>
    [id, name, ...metrics[id].headings].map((word) => ({ word: plain(word), id })),
  );
  const words = [...new Set(spellings.map(({ word }) => word))];
  const near = onlyNearest(plain(typed), words);
  const meant = near === null ? null : metricNamed(near);
  return ids.find((id) => id === meant) ?? null;
}

const plain = (word: string): string => word.toLowerCase().replace(/[\s_-]+/g, ' ');
