import { disclosure } from '../prose/disclosure.ts';
import { uncapitalised } from '../prose/words.ts';
import type { Report } from './report.ts';

/** What was not recorded, in about `longest` characters, group by group; the rest is counted, never dropped. */
export function notRecordedInShort(
  { source, session, telling }: Report,
  version: string,
  longest: number,
): string {
  const groups = disclosure({ source, session, telling, version });
  const all = groups.flatMap(({ items }) => items).length;
  const missing = groups.flatMap(({ title, items }) =>
    items.flatMap(({ label, value }) => (value === null ? [{ title, label: uncapitalised(label) }] : [])),
  );
  if (missing.length === 0) return `All ${all} conditions of the list are recorded.`;
  let told = '';
  let last = '';
  let count = 0;
  for (const { title, label } of missing) {
    const next = title === last ? `, ${label}` : `${told === '' ? '' : '; '}${title}: ${label}`;
    if (told.length + next.length > longest) break;
    told += next;
    last = title;
    count += 1;
  }
  const rest = missing.length - count;
  return `Not recorded, ${missing.length} of ${all}. ${told}${rest > 0 ? `; and ${rest} more` : ''}.`;
}
