import { join } from 'node:path';
import { inject } from 'vitest';
import { oddBase } from '../kit/oddReports.ts';
import { htmlFiles, pathOf } from './pages.ts';

/** One page of one of the sites built for these tests. */
export interface BuiltPage {
  /** For the test's name. */
  readonly name: string;
  readonly folder: string;
  readonly file: string;
  readonly address: string;
}

function pagesOf(name: string, folder: string, address: string): readonly BuiltPage[] {
  return htmlFiles(folder).map((file) => ({
    name: `${name}/${file}`,
    folder,
    file,
    address: address + pathOf(file),
  }));
}

export const demoPages = pagesOf('demo', inject('siteFolder'), inject('siteAddress'));

const isReport = ({ file }: BuiltPage): boolean => /^reports\/[^/]+\/index\.html$/.test(file);
const isSpecimen = ({ file }: BuiltPage): boolean => file.startsWith('specimens/');

const tried = pagesOf('tried', inject('triedFolder'), inject('triedAddress'));

/** Examples of page components, each on a page. */
export const specimenPages = tried.filter(isSpecimen);

/** Pages that have to bear what the demo reports do not show: their other pages differ in nothing. */
export const triedPages = tried.filter((page) => isReport(page) || page.file === 'index.html');

/** Pairs and contenders that met in several reports. */
export const pooledPages = pagesOf('pooled', inject('pooledFolder'), inject('pooledAddress')).filter(
  ({ file }) => /^(pairs|contenders)\//.test(file),
);

/** Reports that try the kit: its pages and counter sheets, in a folder of their host. */
export const oddPages = htmlFiles(join(inject('oddRoot'), oddBase))
  .filter((file) => /\/(kit|sheet)\/index\.html$/.test(file))
  .map((file) => ({
    name: `odd/${file}`,
    folder: join(inject('oddRoot'), oddBase),
    file,
    address: `${inject('oddAddress')}/${oddBase}${pathOf(file)}`,
  }));

export const allPages = [...demoPages, ...triedPages, ...specimenPages, ...pooledPages];

/** Every page of the three sites, also those that differ from others in nothing but their report. */
export const everyPage = [
  ...demoPages,
  ...tried,
  ...pagesOf('pooled', inject('pooledFolder'), inject('pooledAddress')),
];

/** Reports that stand; a withdrawn one is only a note. */
export const reportPages = [...demoPages, ...triedPages].filter(
  (page) => isReport(page) && !page.file.includes('/taken-back/'),
);

/** Two reports that differ in all that a page can show. */
export const twoReports = reportPages.filter(({ file }) => /(three-balls|six-shafts)/.test(file));

/** Two reports, and one page of every other kind that has a masthead. */
export const oneOfEachKind: readonly BuiltPage[] = [
  ...twoReports,
  ...demoPages.filter(({ file }) =>
    /^((index|404)\.html|(method|about|glossary)\/index\.html|reports\/three-balls-one-iron\/(kit|sheet)\/index\.html|kinds\/irons\/index\.html)$/.test(
      file,
    ),
  ),
  ...pooledPages.filter(({ file }) => /^(pairs|contenders\/alder)\//.test(file)),
];
