import { disclosure, recorded } from '../prose/disclosure.ts';
import type { Report } from './report.ts';

/** What was not recorded, on one line of at most `longest` characters; the rest is counted, never dropped. */
export function notRecordedInShort(
  { source, session, telling }: Report,
  version: string,
  longest: number,
): string {
  const { answered, all, missing } = recorded(disclosure({ source, session, telling, version }));
  const none = all - answered;
  if (none === 0) return `All ${all} conditions of the list are recorded.`;
  const labels = missing.flatMap((group) => {
    const [title = '', items = ''] = group.split(/: (.*)/s);
    return items
      .split(', ')
      .map((label) => (/^What was the same/.test(title) ? label : `${label} (${title})`));
  });
  let told = '';
  let count = 0;
  for (const label of labels) {
    if (told.length + label.length + 2 > longest) break;
    told += `${count === 0 ? '' : ', '}${label}`;
    count += 1;
  }
  const rest = none - count;
  return `Not recorded, ${none} of ${all}: ${told}${rest > 0 ? `, and ${rest} more` : ''}.`;
}
