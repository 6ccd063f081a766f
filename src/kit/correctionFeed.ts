import { createHash } from 'node:crypto';
import type { Correction } from '../intake/authored/corrections.ts';
import type { Front } from '../intake/authored/front.ts';
import { correctionWords, feedWords } from '../prose/english/kit/feedWords.ts';
import { stampWords, withdrawnWords } from '../prose/english/kit/standing.ts';
import type { Absolute } from './absoluteAddress.ts';
import { feedOf, type FeedItem } from './feedItem.ts';
import type { Report } from './report.ts';

/** One entry a correction, withdrawal or replacement, for those who have printed a chart. */
export function correctionItems(reports: readonly Report[], absolute: Absolute): readonly FeedItem[] {
  return feedOf(
    reports.flatMap(({ source }) => {
      const { front, slug } = source;
      const page = absolute(`/reports/${slug}/`);
      const stamp = stampWords(front);
      const entry = (one: Pick<FeedItem, 'title' | 'link' | 'guid' | 'date' | 'description'>): FeedItem => ({
        ...one,
        content: null,
        picture: null,
        categories: [],
      });
      return [
        ...front.corrections.map((correction) =>
          entry({
            title: feedWords.corrected(front.title),
            link: `${page}#corrections`,
            guid: `${page}#${correctionId(correction)}`,
            date: correction.date,
            description: `${correctionWords(correction)} ${stamp}`.trim(),
          }),
        ),
        ...replacement(front, reports).map(({ date, title }) =>
          entry({
            title: feedWords.replaced(front.title),
            link: `${page}#replaced`,
            guid: `${page}#replaced`,
            date,
            description: feedWords.replacement(title),
          }),
        ),
        ...(front.status !== 'withdrawn' || front.withdrawn === null
          ? []
          : [
              entry({
                title: feedWords.gone(front.title),
                link: page,
                guid: page,
                date: front.withdrawn.date,
                description: withdrawnWords(source),
              }),
            ]),
      ];
    }),
  );
}

/** Made of its day, what was put right and what stood there, so that it does not change with its place in the list. */
function correctionId({ date, what, was }: Correction): string {
  const told = [what, was].map((words) => words.trim()).join('\n');
  return `corrected-${date}-${createHash('sha256').update(told).digest('hex').slice(0, 12)}`;
}

/** The report that replaces another, where it is shown itself. */
function replacement(
  { status, supersededBy }: Front,
  reports: readonly Report[],
): readonly { readonly date: string; readonly title: string }[] {
  if (status !== 'superseded') return [];
  return reports
    .filter(({ source }) => source.slug === supersededBy)
    .map(({ source: { front } }) => ({ date: front.published ?? front.date, title: front.title }));
}
