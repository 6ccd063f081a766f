import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, inject, test } from 'vitest';

const front = (folder: string): string => readFileSync(join(folder, 'index.html'), 'utf8');
const demo = front(inject('siteFolder'));
const tried = front(inject('triedFolder'));

/** Where words first stand, so that their order can be told. */
const placeOf = (page: string, words: string): number => {
  const place = page.indexOf(words);
  expect(place, words).toBeGreaterThan(0);
  return place;
};

describe('the front page', () => {
  test('says what the shop has to gain before the first report, and what became of its plans after the last', () => {
    const interest = placeOf(demo, 'Where we sell what we tested');
    expect(interest).toBeLessThan(placeOf(demo, 'class="report-line"'));
    expect(placeOf(demo, 'We planned one test: we published one.')).toBeGreaterThan(
      demo.lastIndexOf('class="report-line"'),
    );
  });

  test('puts reports in sections by what was compared, newest first, each kind linked above', () => {
    const written = readdirSync(resolve('content/reports')).map((slug) => {
      const text = readFileSync(join(resolve('content/reports'), slug, 'report.md'), 'utf8');
      const valueOf = (key: string): string => new RegExp(`^${key}: (.+)$`, 'm').exec(text)?.[1] ?? '';
      return { varied: valueOf('varied'), date: Date.parse(valueOf('date')) };
    });
    const byKind = Map.groupBy(
      written.sort((one, other) => other.date - one.date),
      ({ varied }) => varied,
    );
    const sections = demo.split(/<h2 id="kind-\d+">/).slice(1);
    expect(sections.length).toBeGreaterThan(3);
    const titles = sections.map((section) => section.slice(0, section.indexOf('<')));
    expect(titles.map((title) => title.toLowerCase().replace(/s$/, ''))).toEqual(
      [...byKind.keys()].map((varied) => varied.replace(/s$/, '')),
    );
    for (const [id] of [...demo.matchAll(/kind-\d+(?=">[^<]+<\/h2>)/g)])
      expect(demo).toContain(`href="#${id}"`);
    const dates = sections.map((section) =>
      [...section.matchAll(/shots, (\d+ \w+ \d{4})\./g)].map(([, date = '']) => Date.parse(`${date} UTC`)),
    );
    expect(dates).toEqual([...byKind.values()].map((own) => own.map(({ date }) => date)));
  });

  test('keeps replaced and withdrawn reports in the list and says so', () => {
    expect(tried).toContain('Replaced by a newer report, “Two driver heads, one shaft”. It said:');
    expect(tried).toContain('Withdrawn 20 February 2026.');
  });

  test('counts no wins and ranks nothing', () => {
    for (const page of [demo, tried])
      expect(page.replaceAll(/<[^>]*>/g, ' ')).not.toMatch(
        /\b(wins?|winner|best|beats|top \d|ranked|first place)\b/i,
      );
  });
});
