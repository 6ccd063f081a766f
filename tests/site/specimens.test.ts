import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { loadSite } from '../../src/site/siteContent.ts';
import { placedExamples } from '../specimen-pages/examples.ts';

const examples = placedExamples(loadSite(inject('triedContent')).reports);
const page = (component: string, number: string): string =>
  readFileSync(join(inject('triedFolder'), 'specimens', component, number, 'index.html'), 'utf8');

/** Every named example of a page component holds what it promises; other tests take the same pages for the rest. */
describe.each(examples)('$component: $name', ({ component, number, shows, hides = [] }) => {
  const html = /<!--example-->([\s\S]*)<!--\/example-->/.exec(page(component, number))?.[1] ?? '';

  test('shows what it must and nothing that it must not', () => {
    for (const words of shows) expect(html).toContain(words);
    for (const words of hides) expect(html).not.toContain(words);
    expect(shows.length + hides.length).toBeGreaterThan(0);
  });
});

/** These have examples in what holds them, or stand in no page by themselves. */
const elsewhere: Readonly<Record<string, string>> = {
  BrandSheet: 'tests/commands/brand.test.ts',
  Canonical: 'tests/site/kitFeeds.test.ts: every absolute address leads to a page',
  Cautions: 'the page of details, tests/cases',
  Chart: 'the examples of FigureBody',
  ChangesOfPairs: 'the examples of AllChecks',
  CopyButtons: 'tests of the kit',
  DraftState: 'tests of dev: built sites never hold it',
  EarlierVersion: 'tests/commands/versions.test.ts',
  FirstUse: 'tests/pages/firstUse.test.ts',
  FontPreloads: 'tests/site/built.test.ts',
  Formulas: 'the method page, tests/pages/formulas.test.ts',
  KindLinks: 'the front page, tests/site/frontPage.test.ts',
  KitFiles: 'the examples of KitItem',
  KitFrame: 'the examples of KitItem, tests/site/frames.test.ts',
  KitScripts: 'tests/site/kitPages.test.ts, tests/kit/kitTexts.test.ts',
  KitTerms: 'tests/site/kitPages.test.ts',
  Language: 'tests/commands/heads.test.ts',
  LicenceLink: 'tests/commands/heads.test.ts',
  LinkedData: 'tests/commands/heads.test.ts',
  ListSearch: 'tests/pages/listSearch.test.ts, tests/site/lists.test.ts',
  MethodBlock: 'the method page',
  PageLinks: 'tests/site/lists.test.ts',
  InBothUnits: 'the examples of Answer and FigureBody',
  PageShare: 'the heads of all pages, tests/cases',
  PhoneFold: 'the examples of OtherReasons, tests/site/firstScreen.test.ts',
  Places: 'every page',
  ProblemList: 'tests of dev: built sites never hold it',
  ReplacedNotice: 'tests/site/kitPages.test.ts',
  ReportHead: 'tests of the kit',
  ReportList: 'the front page, tests/site/frontPage.test.ts',
  ReportSections: 'every report page',
  RingAndBar: 'the examples of ReportLine',
  SignKey: 'the front page, tests/site/frontPage.test.ts',
  SiteFoot: 'every page',
  SiteHead: 'every page, tests/site/frontPage.test.ts',
};

test('every page component has examples, or a reason why not', () => {
  const components = readdirSync(resolve('src/components')).map((file) => file.replace('.astro', ''));
  const shown = new Set(examples.map(({ component }) => component));
  expect(components.filter((name) => !shown.has(name) && !(name in elsewhere))).toEqual([]);
  expect(Object.keys(elsewhere).filter((name) => shown.has(name) || !components.includes(name))).toEqual([]);
});

test('a site that is built for readers holds no specimen', () => {
  expect(readdirSync(inject('siteFolder'))).not.toContain('specimens');
});
