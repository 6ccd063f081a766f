import { resolve } from 'node:path';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { addListSearch, matchingEntries, type SearchEntry } from '../../src/site/listSearch.ts';
import { searchIndex } from '../../src/site/searchIndex.ts';
import { loadSite } from '../../src/site/siteContent.ts';

const { reports } = loadSite(resolve('content'));
const index = searchIndex(reports, (path) => `/tests${path}`);
const found = (query: string): readonly string[] => matchingEntries(index, query).map(({ title }) => title);

describe('the index', () => {
  test('has every report with its address, newest first', () => {
    expect(index.map(({ path }) => path)).toEqual(
      reports.map(({ source }) => `/tests/reports/${source.slug}/`),
    );
    expect(index.map(({ title }) => title)).toEqual(reports.map(({ source }) => source.front.title));
  });

  test('has the finding in both systems of units, and of a withdrawn report no finding', () => {
    const [report] = reports;
    if (report === undefined) throw new Error('no report');
    for (const { finding } of index) {
      expect(finding.yards).not.toMatch(/metres|km\/h/);
      expect(finding.metres).not.toMatch(/yards|mph/);
    }
    const front = {
      ...report.source.front,
      status: 'withdrawn' as const,
      withdrawn: { date: '2026-08-01', reason: 'the monitor was wrong' },
    };
    const [gone] = searchIndex([{ ...report, source: { ...report.source, front } }], (path) => path);
    expect(gone?.finding).toEqual({
      yards: 'Withdrawn 1 August 2026. the monitor was wrong',
      metres: 'Withdrawn 1 August 2026. the monitor was wrong',
    });
  });
});

describe('a query', () => {
  test.each([
    ['a word of a title', 'demo day', ['Three hybrids at a demo day']],
    ['a name', 'plover', ['Three balls, one 5-iron']],
    ['words of a finding', 'within about 4 yards', ['Three driver shafts, eight golfers']],
    ['a kind', 'wedges', ['Worn grooves from wet rough']],
    ['capitals and accents', 'PLÓVER', ['Three balls, one 5-iron']],
    ['words in any order and place', 'heron 36 balls', ['Three balls, one 5-iron']],
    ['nothing of the sort', 'putter', []],
  ] as const)('finds by %s', (_by, query, titles) => {
    expect(found(query)).toEqual(titles);
  });
});

const html =
  '<html><body><div id="units" data-own="yards"></div><div id="search" data-index="/search.json"></div>' +
  '<div id="list"><p data-units="yards">a</p><p data-units="metres" hidden>b</p></div></body></html>';

/** The page with its search, and what its script asked for. */
function searched(load: (address: string) => Promise<unknown> = () => Promise.resolve(index)) {
  const { document } = parseHTML(html);
  const asked: string[] = [];
  const place = document.querySelector<HTMLElement>('#search');
  if (place === null) throw new Error('no place');
  addListSearch(document, place, (address) => {
    asked.push(address);
    return load(address);
  });
  const field = document.querySelector('input');
  if (field === null) throw new Error('no field');
  const type = async (words: string): Promise<void> => {
    field.value = words;
    field.dispatchEvent(new (document.defaultView?.Event ?? Event)('input'));
    await new Promise((done) => setTimeout(done, 0));
  };
  return {
    ...{ asked, type, document, field },
    status: () => document.querySelector('[role="status"]')?.textContent ?? '',
    titles: () => [...document.querySelectorAll('.search-found a')].map(({ textContent }) => textContent),
    listHidden: () => document.getElementById('list')?.hidden === true,
  };
}

describe('the field', () => {
  test('has a label, and asks for the index once, not before it is used', async () => {
    const { asked, type, document, field } = searched();
    expect(document.querySelector(`label[for="${field.id}"]`)?.textContent).toMatch(/^Search/);
    expect(asked).toEqual([]);
    await type('heron');
    await type('hero');
    expect(asked).toEqual(['/search.json']);
  });

  test('says how many match, puts them in place of the list, and the list back', async () => {
    const { type, status, titles, listHidden } = searched();
    await type('heron');
    expect(status()).toBe(`1 of ${index.length} reports matches.`);
    expect(titles()).toEqual(['Three balls, one 5-iron']);
    expect(listHidden()).toBe(true);
    await type('putter');
    expect(status()).toBe(`None of ${index.length} reports matches.`);
    await type('  ');
    expect([status(), titles(), listHidden()]).toEqual(['', [], false]);
  });

  test('shows findings in the units of the page', async () => {
    const { type, document } = searched();
    await type('heron');
    const shown = [...document.querySelectorAll<HTMLElement>('.search-found [data-units]')].map(
      (copy) => [copy.dataset['units'], copy.hidden] as const,
    );
    expect(shown).toEqual([
      ['yards', false],
      ['metres', true],
    ]);
  });

  test('counts more than fifty and shows the newest of them', async () => {
    const many: readonly SearchEntry[] = Array.from({ length: 80 }, (_, at) => ({
      path: `/${at}/`,
      title: `Test ${at}`,
      finding: { yards: 'same', metres: 'same' },
      facts: '',
      names: '',
    }));
    const { type, status, titles } = searched(() => Promise.resolve(many));
    await type('test');
    expect(status()).toBe('80 of 80 reports match. The newest 50 are shown.');
    expect(titles()).toHaveLength(50);
  });

  test('says so where the index cannot be had, and asks again', async () => {
    let fails = true;
    const { type, status, asked, listHidden } = searched(() =>
      fails ? Promise.reject(new Error('offline')) : Promise.resolve(index),
    );
    await type('heron');
    expect(status()).toBe('The search could not be loaded; the list and its kinds work without it.');
    expect(listHidden()).toBe(false);
    fails = false;
    await type('plover');
    expect(status()).toContain('1 of');
    expect(asked).toHaveLength(2);
  });
});
