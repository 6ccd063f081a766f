import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { woffAdvances } from '../charts/woffAdvances.ts';
import { allPages, demoPages } from './sites.ts';

/** The characters of a font, by its own table; a character that it lacks is drawn in a face of the reader's machine. */
const charactersOf = (specifier: string): ReadonlySet<number> => new Set(woffAdvances(specifier).keys());

const shipped = [
  ['literata', charactersOf('@fontsource/literata/files/literata-latin-400-normal.woff')],
  ['literata', charactersOf('@fontsource/literata/files/literata-latin-600-normal.woff')],
  ['source-sans-3', charactersOf('@fontsource/source-sans-3/files/source-sans-3-latin-400-normal.woff')],
  ['source-sans-3', charactersOf('@fontsource/source-sans-3/files/source-sans-3-latin-600-normal.woff')],
] as const;

/** Text that a page shows in our fonts: code and formulas are set in the reader's own. */
function shownText(page: string): string {
  return page
    .slice(page.indexOf('<body'))
    .replaceAll(/<(script|code|pre|math)\b[\s\S]*?<\/\1>/g, ' ')
    .replaceAll(/<[^>]*>/g, ' ')
    .replaceAll('&amp;', '&')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)))
    .replaceAll(/\s+/g, ' ');
}

test('the fonts hold what they are known to hold and lack what they are known to lack', () => {
  for (const [, characters] of shipped) {
    for (const there of 'aZ9−–°±×“”’&') expect(characters.has(there.codePointAt(0) ?? 0)).toBe(true);
    for (const missing of '≥≤Δσ✓') expect(characters.has(missing.codePointAt(0) ?? 0)).toBe(false);
  }
});

test('these are the fonts that the site ships, Latin parts alone', () => {
  const files = readdirSync(join(demoPages[0]?.folder ?? '', '_astro')).filter((file) =>
    file.endsWith('.woff2'),
  );
  expect(files.map((file) => file.replace(/\..*/, '')).sort()).toEqual(
    ['400', '600']
      .flatMap((weight) => shipped.map(([name]) => `${name}-latin-${weight}-normal`))
      .filter((name, index, all) => all.indexOf(name) === index)
      .sort(),
  );
});

describe.each(allPages)('$name', ({ folder, file }) => {
  test('has no character that a shipped font lacks', () => {
    const used = new Set(shownText(readFileSync(join(folder, file), 'utf8')));
    const missing = [...used].filter((character) =>
      shipped.some(([, characters]) => !characters.has(character.codePointAt(0) ?? 0)),
    );
    expect(missing).toEqual([]);
    expect(used.size).toBeGreaterThan(20);
  });
});
