import { standingWords } from '../prose/english/kit/standing.ts';
import { answerInList } from '../prose/english/toldAnswer.ts';
import { sayWhoHit } from '../prose/english/whoHit.ts';
import { interestInEnglish } from '../prose/english/interest.ts';
import { interestsOf, shortNames } from '../prose/interestStatements.ts';
import { whoHit } from '../prose/whoHit.ts';
import { unitFor } from '../prose/readerUnits.ts';
import { capitalised, listed } from '../prose/words.ts';
import { metrics } from '../trade/metrics.ts';
import { absoluteAddress } from './absoluteAddress.ts';
import { interestInShort, publisherOf } from './interestInShort.ts';
import { keywordsOf } from './keywords.ts';
import { kitOf } from './kitOf.ts';
import { licenceAddress } from './licences.ts';
import type { Report } from './report.ts';
import { reportVersion } from './reportVersion.ts';

/** A node of linked data in the words of schema.org. */
export type Node = { readonly [property: string]: Value };
type Value = string | number | boolean | Node | readonly (string | Node)[];

/**
 * What a report is, for machines: an Article on a Dataset (schema.org), with the shop's interest, its corrections, what
 * was measured and how. No rating of anything: the shop sells what it tests. Addresses only where the shop has one.
 */
export function structuredData(report: Report): Node {
  const { source, session, telling, findings } = report;
  const { front, shop, slug } = source;
  const absolute = absoluteAddress(shop);
  const page = absolute?.(`/reports/${slug}/`) ?? null;
  const published = front.published ?? front.date;
  const latest =
    front.corrections
      .map(({ date }) => date)
      .toSorted()
      .at(-1) ?? null;
  const invented = front.inventedData ? 'Invented data. ' : '';
  const stands = standingWords(report.source);
  const [image] = kitOf(report).offered;
  const reuse = shop?.reuse;
  const credit = reuse?.credit === undefined ? {} : { creditText: reuse.credit };
  const keywords = keywordsOf(report);
  // Who paid or gave is a matter of this report and no property of its publisher.
  const paid = interestInEnglish(
    interestsOf(front).filter(({ kind, outside }) => (kind === 'payment' || kind === 'gifts') && outside),
    { speaker: { shop: publisherOf(report) }, nameOf: shortNames(front.contenders) },
  );
  const publisher: Node = {
    '@type': 'Organization',
    name: publisherOf(report),
    ...(absolute === null ? {} : { url: absolute('/') }),
  };
  const dataset: Node = {
    '@type': 'Dataset',
    ...(page === null ? {} : { '@id': `${page}#data`, url: page }),
    name: `Shots of “${front.title}”`,
    description: `${invented}Every shot of a comparison of ${listed(findings.contenders.map(({ label }) => label))}. ${sayWhoHit(whoHit(source, findings), telling.system).join(' ')}`,
    creator: publisher,
    datePublished: published,
    temporalCoverage: front.date,
    version: reportVersion(source),
    identifier: `${slug}, version ${reportVersion(source)}`,
    keywords,
    ...(reuse?.licenceData === undefined ? {} : { license: licenceAddress(reuse.licenceData) }),
    ...credit,
    isAccessibleForFree: true,
    ...(shop?.reuse.terms === undefined ? {} : { usageInfo: shop.reuse.terms }),
    measurementTechnique: front.conditions.monitor?.kind ?? 'launch monitor, kind not recorded',
    variableMeasured: findings.metrics
      .filter(({ readBy }) => readBy === 'monitor')
      .map(({ id, class: kind }) => ({
        '@type': 'PropertyValue',
        name: capitalised(metrics[id].name),
        unitText: session.columns[id]?.unit ?? unitFor(id, telling.system),
        measurementMethod: kind,
      })),
    ...(absolute === null
      ? {}
      : {
          distribution: [
            download(absolute(`/reports/${slug}/shots.csv`), 'text/csv', `${invented}Every shot.`),
            download(
              absolute(`/reports/${slug}/findings.json`),
              'application/json',
              `${invented}Every finding.`,
            ),
          ],
        }),
  };
  return {
    '@context': 'https://schema.org',
    '@graph': [
      {
        '@type': 'Article',
        ...(page === null ? {} : { '@id': `${page}#report`, url: page, mainEntityOfPage: page }),
        headline: front.title,
        abstract: `${stands} ${interestInShort(report)} ${answerInList(telling)}`.trim(),
        ...(absolute === null || image === undefined
          ? {}
          : { image: absolute(`/reports/${slug}/charts/${image.figure.id}.png`) }),
        datePublished: published,
        ...(latest === null ? {} : { dateModified: latest }),
        author: publisher,
        publisher,
        version: reportVersion(source),
        keywords,
        ...(reuse?.licenceCharts === undefined ? {} : { license: licenceAddress(reuse.licenceCharts) }),
        ...credit,
        ...(paid.length === 0 ? {} : { funding: { '@type': 'Grant', description: paid.join(' ') } }),
        isBasedOn:
          page === null ? { '@type': 'Dataset', name: dataset['name'] ?? '' } : { '@id': `${page}#data` },
        ...(front.corrections.length === 0
          ? {}
          : {
              correction: front.corrections.map(({ date, what, was, now }) => ({
                '@type': 'CorrectionComment',
                datePublished: date,
                text: `${what}. It said: ${was}. It now says: ${now}.`,
              })),
            }),
      },
      dataset,
    ],
  };
}

function download(contentUrl: string, encodingFormat: string, description: string): Node {
  return { '@type': 'DataDownload', contentUrl, encodingFormat, description };
}

/** JSON that may stand inside a script element. */
export function scriptJson(node: Node): string {
  return JSON.stringify(node).replaceAll('<', '\\u003c');
}
