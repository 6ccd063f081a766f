import { feedWords } from '../prose/english/kit/feedWords.ts';
import { changesWords, stampWords, withdrawnWords } from '../prose/english/kit/standing.ts';
import { escapeXml } from '../prose/escapeXml.ts';
import { interestSentences } from '../prose/interest.ts';
import type { Absolute } from './absoluteAddress.ts';
import { answersAlone } from './answersAlone.ts';
import { feedOf, type FeedItem, type FeedPicture } from './feedItem.ts';
import type { Report } from './report.ts';
import { cardHeight, cardWidth } from './shareCard.ts';
import { shareCardAlt } from './shareCardWords.ts';
import { reportInBrief } from './whoAndHow.ts';

/**
 * One entry a report, the newest first: the answers of all its measures, each with its gravest caution, then the stamp,
 * the shop's whole interest and how it was hit. Of a withdrawn one only when and why; one that was replaced says that first.
 */
export function reportItems(reports: readonly Report[], absolute: Absolute): readonly FeedItem[] {
  return feedOf(
    reports.map((report) =>
      report.source.front.status === 'withdrawn'
        ? withdrawnItem(report, absolute)
        : standingItem(report, reports, absolute),
    ),
  );
}

function withdrawnItem({ source }: Report, absolute: Absolute): FeedItem {
  const { front, slug } = source;
  const link = absolute(`/reports/${slug}/`);
  return {
    title: feedWords.gone(front.title),
    link,
    guid: link,
    date: front.withdrawn?.date ?? front.published ?? front.date,
    description: withdrawnWords(source),
    content: null,
    picture: null,
    categories: [],
  };
}

function standingItem(report: Report, reports: readonly Report[], absolute: Absolute): FeedItem {
  const { source } = report;
  const { front, slug } = source;
  const link = absolute(`/reports/${slug}/`);
  const replaced = front.status === 'superseded';
  const changes = changesWords(source);
  const newer = reports.find((one) => replaced && one.source.slug === front.supersededBy);
  const paragraphs = [
    ...(replaced ? [changes] : []),
    ...answersAlone(report),
    stampWords(front),
    feedWords.interest(interestSentences(source)),
    reportInBrief(report),
    ...(replaced ? [] : [changes]),
  ].filter((words) => words !== '');
  const picture = {
    address: absolute(`/reports/${slug}/share.png`),
    width: cardWidth,
    height: cardHeight,
    alt: shareCardAlt(report),
  };
  return {
    title: replaced ? feedWords.replaced(front.title) : front.title,
    link,
    guid: link,
    date: front.published ?? front.date,
    description: paragraphs.join(' '),
    content: [
      ...paragraphs.map((words) => `<p>${escapeXml(words)}</p>`),
      pictureHtml(picture, link),
      linkHtml(feedWords.wholeReport(front.title), link),
      ...(newer === undefined
        ? []
        : [
            linkHtml(
              feedWords.replacement(newer.source.front.title),
              absolute(`/reports/${newer.source.slug}/`),
            ),
          ]),
    ].join('\n'),
    picture,
    categories: [stampWords(front).replace('.', '')].filter((words) => words !== ''),
  };
}

function pictureHtml({ address, width, height, alt }: FeedPicture, link: string): string {
  return (
    `<p><a href="${escapeXml(link)}"><img src="${escapeXml(address)}" width="${width}" height="${height}" ` +
    `alt="${escapeXml(alt)}"></a></p>`
  );
}

function linkHtml(words: string, link: string): string {
  return `<p><a href="${escapeXml(link)}">${escapeXml(words)}</a></p>`;
}
