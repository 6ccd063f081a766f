import type { Front } from '../intake/authored/front.ts';
import { feedWords } from '../prose/english/kit/feedWords.ts';
import { standingWords } from '../prose/english/kit/standing.ts';
import { escapeXml } from '../prose/escapeXml.ts';
import { interestSentences } from '../prose/interest.ts';
import type { Absolute } from './absoluteAddress.ts';
import { answersAlone } from './answersAlone.ts';
import type { Report } from './report.ts';
import { reportInBrief } from './whoAndHow.ts';

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

/** One entry a report, the newest first: the answers of all its measures, the shop's whole interest, how it was hit. */
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
          ? feedWords.withdrawn(front.withdrawn?.reason ?? '')
          : [
              ...answersAlone(report),
              feedWords.interest(interestSentences(report.source)),
              reportInBrief(report),
              standingWords(report.source),
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
        title: feedWords.corrected(front.title),
        link: absolute(`/reports/${slug}/#corrections${index === 0 ? '' : `-${index + 1}`}`),
        date,
        description: feedWords.correction(what, was, now),
      })),
      ...replacement(front, reports).map(({ date, title }) => ({
        title: feedWords.replaced(front.title),
        link: absolute(`/reports/${slug}/#replaced`),
        date,
        description: feedWords.replacement(title),
      })),
      ...(front.status === 'withdrawn' && front.withdrawn !== null
        ? [
            {
              title: feedWords.gone(front.title),
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
