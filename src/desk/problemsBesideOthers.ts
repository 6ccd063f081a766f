import type { Source } from '../intake/authored/source.ts';
import type { Problem } from '../problems/problem.ts';
import { aliasProblems } from '../site/aliasProblems.ts';
import { dayProblems } from '../site/dayProblems.ts';
import { replacementProblems } from '../site/replacementProblems.ts';
import type { OtherReport } from './otherReports.ts';

/** What of one report only shows beside the others; those are read only where it names one. */
export function problemsBesideOthers(own: Source, others: () => readonly OtherReport[]): readonly Problem[] {
  const { slug, front } = own;
  const namesOthers = front.aliases.length > 0 || front.status === 'superseded';
  const beside = namesOthers ? others() : [];
  const sources = [own, ...beside.flatMap(({ source }) => (source === null ? [] : [source]))];
  const folders = [slug, ...beside.map((other) => other.slug)];
  return [
    ...aliasProblems(sources, folders),
    ...replacementProblems(sources, folders),
    ...dayProblems(own, null),
  ].filter(({ file }) => file.startsWith(`reports/${slug}/`));
}
