import { stampWords } from '../prose/english/kit/standing.ts';
import { sayWhoHit } from '../prose/english/whoHit.ts';
import { unitFor } from '../prose/readerUnits.ts';
import { whoHit } from '../prose/whoHit.ts';
import { capitalised, listed } from '../prose/words.ts';
import { metrics } from '../trade/metrics.ts';
import { ucumCodes } from '../trade/ucum.ts';
import { absoluteAddress } from './absoluteAddress.ts';
import { publisherOf } from './interestInShort.ts';
import { keywordsOf } from './keywords.ts';
import { languageOf } from './language.ts';
import { licenceAddress } from './licences.ts';
import { publisherNode, type Node } from './linkedData.ts';
import type { Report } from './report.ts';
import { reportVersion } from './reportVersion.ts';

/** The files of a report's data that its linked data name, each with what it holds. */
const downloads = [
  ['shots.csv', 'text/csv', 'Every shot'],
  ['findings.json', 'application/json', 'Every finding'],
  ['datapackage.json', 'application/json', 'What every column and file is'],
] as const;

/** The shots of a report as a Dataset (schema.org): what was measured, in which units, by whom, and where to get it. */
export function datasetNode(report: Report): Node {
  const { source, session, telling, findings } = report;
  const { front, shop, slug } = source;
  const absolute = absoluteAddress(shop);
  const licence = shop?.reuse.licenceData;
  const license = licence === undefined ? {} : { license: licenceAddress(licence) };
  const credit = shop?.reuse.credit;
  const stamp = stampWords(front);
  const page = absolute?.(`/reports/${slug}/`) ?? null;
  const told = (words: string): string => `${stamp} ${words}`.trim();
  const sheets = findings.contenders.map(({ label }) => label);
  const who = sayWhoHit(whoHit(source, findings), telling.system).join(' ');
  return {
    '@type': 'Dataset',
    ...(page === null ? {} : { '@id': `${page}#data`, url: page }),
    name: `Shots of “${front.title}”`,
    description: told(`Every shot of a comparison of ${listed(sheets)}. ${who}`),
    inLanguage: languageOf(shop?.defaults.locale),
    creator: publisherNode(publisherOf(report), shop),
    datePublished: front.published ?? front.date,
    temporalCoverage: front.date,
    version: reportVersion(source),
    identifier: `${slug}, version ${reportVersion(source)}`,
    keywords: keywordsOf(report),
    isAccessibleForFree: true,
    ...license,
    ...(credit === undefined ? {} : { creditText: credit }),
    measurementTechnique: front.conditions.monitor?.kind ?? 'launch monitor, kind not recorded',
    variableMeasured: findings.metrics
      .filter(({ readBy }) => readBy === 'monitor')
      .map(({ id, class: kind }) => {
        const unit = session.columns[id]?.unit ?? unitFor(id, telling.system);
        return {
          '@type': 'PropertyValue',
          name: capitalised(metrics[id].name),
          unitText: unit,
          unitCode: `ucum:${ucumCodes[unit]}`,
          measurementMethod: kind,
        };
      }),
    ...(absolute === null
      ? {}
      : {
          distribution: downloads.map(([file, encodingFormat, holds]) => ({
            '@type': 'DataDownload',
            name: file,
            contentUrl: absolute(`/reports/${slug}/${file}`),
            encodingFormat,
            description: told(`${holds}.`),
            ...license,
          })),
        }),
  };
}
