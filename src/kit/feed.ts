import type { Front } from '../intake/authored/front.ts';
import { answerInShort } from '../prose/answer.ts';
import { escapeXml } from '../prose/escapeXml.ts';
import { interestSentences } from '../prose/interest.ts';
import type { Absolute } from './absoluteAddress.ts';
import type { Report } from './report.ts';
import { golfersShotsAndOrder, standing } from './whoAndHow.ts';

/**
 * An entry of a feed; `date` is a day. Title and description are HTML of nothing but text, as RSS 2.0 has it: what a
 * shop wrote can become no markup, whether a reader takes them for HTML or for plain text.
 */
export interface FeedItem {
  readonly title: string;
  readonly link: string;
  readonly date: string;
  readonly description: string;
}

/** One entry a report, the newest first: the shop's interest before the answer, then for how many shots it holds. */
export function reportItems(reports: readonly Report[], absolute: Absolute): readonly FeedItem[] {
  return feedOf(
    reports.map((report) => {
      const { front, slug } = report.source;
      const withdrawn = front.status === 'withdrawn';
      return {
        title: front.title,
        link: absolute(`/reports/${slug}/`),
        date: (withdrawn ? front.withdrawn?.date : front.published) ?? front.date,
        description: withdrawn
          ? `Withdrawn. ${front.withdrawn?.reason ?? ''}`.trim()
          : [
              `Our interest: ${interestSentences(report.source).join(' ')}`,
              answerInShort(report.telling),
              golfersShotsAndOrder(report),
              standing(report),
            ]
              .join(' ')
              .trim(),
      };
    }),
  );
}

/** One entry a correction, withdrawal or replacement, for those who have printed a chart. */
export function correctionItems(reports: readonly Report[], absolute: Absolute): readonly FeedItem[] {
  return feedOf(
    reports.flatMap(({ source: { front, slug } }) => [
      ...front.corrections.map(({ date, what, was, now }, index) => ({
        title: `Corrected: ${front.title}`,
        link: absolute(`/reports/${slug}/#corrections${index === 0 ? '' : `-${index + 1}`}`),
        date,
        description: `${what}. It said: ${was}. It now says: ${now}.`,
      })),
      ...replacement(front, reports).map(({ date, title }) => ({
        title: `Replaced: ${front.title}`,
        link: absolute(`/reports/${slug}/#replaced`),
        date,
        description: `A newer report replaces it: ${title}.`,
      })),
      ...(front.status === 'withdrawn' && front.withdrawn !== null
        ? [
            {
              title: `Withdrawn: ${front.title}`,
              link: absolute(`/reports/${slug}/`),
              date: front.withdrawn.date,
              description: front.withdrawn.reason,
            },
          ]
        : []),
    ]),
  );
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

/** Items of plain text as those of a feed, the newest first. */
function feedOf(items: readonly FeedItem[]): readonly FeedItem[] {
  return items
    .map((item) => ({
      ...item,
      title: escapeXml(item.title),
      description: escapeXml(item.description),
    }))
    .toSorted((x, y) => (x.date === y.date ? (x.link < y.link ? -1 : 1) : x.date < y.date ? 1 : -1));
}
