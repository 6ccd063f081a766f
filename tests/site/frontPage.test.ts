import { readFileSync } from 'node:fs';
import { join } from 'node:path';
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
    const interest = placeOf(demo, 'We sell much of what we test');
    expect(interest).toBeLessThan(placeOf(demo, 'class="report-line"'));
    expect(placeOf(demo, 'No ledger of plans is kept')).toBeGreaterThan(
      demo.lastIndexOf('class="report-line"'),
    );
  });

  test('puts reports in sections by what was compared, newest first, each kind linked above', () => {
    const kinds = [...demo.matchAll(/<h2 id="(kind-\d+)">([^<]+)<\/h2>/g)];
    expect(kinds.map(([, , title]) => title)).toEqual(['Balls', 'Clubs', 'Shafts', 'Grooves']);
    for (const [, id = ''] of kinds) expect(demo).toContain(`href="#${id}"`);
    const dates = [...demo.matchAll(/shots, (\d+ \w+ \d{4})\./g)].map(([, date = '']) =>
      Date.parse(`${date} UTC`),
    );
    expect(dates).toHaveLength(5);
    // The two reports of balls stand together, the newer first; then the other kinds, newest first.
    expect([...dates.slice(2)].sort((one, other) => other - one)).toEqual(dates.slice(2));
    expect(dates[0]).toBeGreaterThan(dates[1] ?? 0);
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
