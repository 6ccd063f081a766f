import { expect, test } from 'vitest';
import { loadSite, replacementTitle, shownReports } from '../../src/site/siteContent.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';

const report = (slug: string, front: string): Readonly<Record<string, string>> => ({
  [`reports/${slug}/report.md`]: twoHeads((whole) =>
    whole.replace('title: Two heads', `title: ${slug}`).replace('status: published', front),
  ),
  [`reports/${slug}/shots.csv`]: twoHeadsCsv,
});

const site = loadSite(
  contentFolder({
    'shop.yaml': shop,
    ...report('second', 'status: published'),
    ...report('first', 'status: superseded\nsuperseded_by: second'),
    ...report('third', 'status: draft'),
    ...report('elsewhere', 'status: superseded\nsuperseded_by: nowhere'),
  }),
);
const of = (slug: string) => {
  const found = site.reports.find(({ source }) => source.slug === slug);
  if (found === undefined) throw new Error(slug);
  return found;
};

test('drafts are among the reports of a site, and shown only where they are asked for', () => {
  const slugs = (drafts: boolean) => shownReports(site, { drafts }).map(({ source }) => source.slug);
  // Of one day, in the order of the alphabet.
  expect(slugs(true)).toEqual(['elsewhere', 'first', 'second', 'third']);
  expect(slugs(false)).toEqual(['elsewhere', 'first', 'second']);
});

test('a report that was replaced names the title of the other one', () => {
  expect(replacementTitle(site, of('first'))).toBe('second');
  expect(replacementTitle(site, of('second'))).toBeNull();
  expect(replacementTitle(site, of('elsewhere'))).toBeNull();
});
