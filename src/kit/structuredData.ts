import { interestInEnglish } from '../prose/english/interest.ts';
import { correctionWords } from '../prose/english/kit/feedWords.ts';
import { latestCorrection, standingWords, withdrawnWords } from '../prose/english/kit/standing.ts';
import { answerInList } from '../prose/english/toldAnswer.ts';
import { interestsOf, shortNames } from '../prose/interestStatements.ts';
import { absoluteAddress } from './absoluteAddress.ts';
import { datasetNode } from './datasetNode.ts';
import { imageNodes } from './imageNodes.ts';
import { interestInShort, publisherOf } from './interestInShort.ts';
import { keywordsOf } from './keywords.ts';
import { languageOf } from './language.ts';
import { graphOf, publisherNode, type Node } from './linkedData.ts';
import type { Report } from './report.ts';
import { reportVersion } from './reportVersion.ts';

/**
 * What a report is, for machines: an Article on a Dataset (schema.org), with the shop's interest, its corrections, what
 * was measured and how. No rating of anything: the shop sells what it tests. Addresses only where the shop has one.
 * Of a withdrawn report only that it is, when and why.
 */
export function structuredData(report: Report): Node {
  return report.source.front.status === 'withdrawn'
    ? graphOf([withdrawnArticle(report)])
    : graphOf([article(report), datasetNode(report)]);
}

function article(report: Report): Node {
  const { source, telling } = report;
  const { front, shop } = source;
  const changed = latestCorrection(front);
  const images = imageNodes(report);
  const dataset = datasetNode(report);
  const credit = shop?.reuse.credit;
  return {
    ...opening(report),
    creativeWorkStatus: front.status === 'superseded' ? 'Obsolete' : 'Published',
    abstract: `${standingWords(source)} ${interestInShort(report)} ${answerInList(telling)}`.trim(),
    ...(images.length === 0 ? {} : { image: images }),
    ...(changed === null ? {} : { dateModified: changed }),
    version: reportVersion(source),
    keywords: keywordsOf(report),
    ...(credit === undefined ? {} : { creditText: credit }),
    ...paidFor(report),
    isBasedOn:
      dataset['@id'] === undefined
        ? { '@type': 'Dataset', name: dataset['name'] ?? '' }
        : { '@id': dataset['@id'] },
    ...(front.corrections.length === 0
      ? {}
      : {
          correction: front.corrections.map((one) => ({
            '@type': 'CorrectionComment',
            datePublished: one.date,
            text: correctionWords(one),
          })),
        }),
  };
}

function withdrawnArticle(report: Report): Node {
  const { source } = report;
  const day = source.front.withdrawn?.date;
  return {
    ...opening(report),
    creativeWorkStatus: 'Withdrawn',
    abstract: withdrawnWords(source),
    ...(day === undefined ? {} : { dateModified: day }),
  };
}

/** What every Article says of itself, whatever became of it. */
function opening(report: Report): Node {
  const { front, shop, slug } = report.source;
  const page = absoluteAddress(shop)?.(`/reports/${slug}/`) ?? null;
  const publisher = publisherNode(publisherOf(report), shop);
  return {
    '@type': 'Article',
    ...(page === null ? {} : { '@id': `${page}#report`, url: page, mainEntityOfPage: page }),
    headline: front.title,
    inLanguage: languageOf(shop?.defaults.locale),
    datePublished: front.published ?? front.date,
    author: publisher,
    publisher,
    isAccessibleForFree: true,
  };
}

/** Who paid for the test: the publisher by name, others in the shop's words, as they have no other name here. */
function paidFor(report: Report): Node {
  const { front, shop } = report.source;
  const outside = interestInEnglish(
    interestsOf(front).filter(({ kind, outside: from }) => (kind === 'payment' || kind === 'gifts') && from),
    { speaker: { shop: publisherOf(report) }, nameOf: shortNames(front.contenders) },
  );
  const own = front.interests.paidBy.kind === 'shop' || front.interests.paidBy.kind === 'shared';
  return {
    ...(own ? { funder: publisherNode(publisherOf(report), shop) } : {}),
    ...(outside.length === 0 ? {} : { funding: { '@type': 'Grant', description: outside.join(' ') } }),
  };
}
