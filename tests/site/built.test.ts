import { createHash } from 'node:crypto';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { dirname, join } from 'node:path';
import { HtmlValidate } from 'html-validate';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { allOr, eachSoMany } from '../everyday.ts';
import { editionFiles, pathOf } from './pages.ts';
import { allPages, demoPages, reportPages } from './sites.ts';

/** Sentences that stand twice in a row in one paragraph, cell or item. */
function saidTwice(html: string): readonly string[] {
  const blocks = html
    .replace(/<!--other units-->[\s\S]*?<!--\/other units-->/g, '')
    .split(/<\/?(?:p|li|td|th|dd|dt|h\d|caption|text|pre|div|section)\b[^>]*>/);
  return blocks.flatMap((block) => {
    const text = block.replace(/<[^>]*>/g, '').replace(/\s+/g, ' ');
    return [...text.matchAll(/(?<=^|[.!?] )([^.!?]{10,}[.!?]) \1/g)].map(([, sentence = '']) => sentence);
  });
}

test('a doubled sentence would be found', () => {
  const twice = 'Carry was calculated, not seen. ';
  expect(saidTwice(`<p>Mind. ${twice}${twice}</p>`)).toEqual([twice.trim()]);
  expect(saidTwice(`<p>${twice}</p><p>${twice}</p>`)).toEqual([]);
});

test.each(editionFiles(demoPages[0]?.folder ?? ''))('%s says no sentence twice running', (file) => {
  expect(saidTwice(readFileSync(join(demoPages[0]?.folder ?? '', file), 'utf8'))).toEqual([]);
});

/** Files that a page asks for, as the page names them. */
const named = (page: string, pattern: RegExp): readonly string[] =>
  [...page.matchAll(pattern)].map(([, address = '']) => address);

/** Tables of a report's charts that stand with its details. */
function tablesInDetails(folder: string, file: string): number {
  const details = join(folder, dirname(file), 'details/index.html');
  if (!/^reports\/[^/]+\/index\.html$/.test(file) || !existsSync(details)) return 0;
  const section =
    /<section id="chart-numbers"[\s\S]*?<\/section>/.exec(readFileSync(details, 'utf8'))?.[0] ?? '';
  return section.match(/<table/g)?.length ?? 0;
}

describe.each(allOr(allPages, eachSoMany(allPages, 3)))('$name', ({ folder, file }) => {
  const page = readFileSync(join(folder, file), 'utf8');

  test('is valid HTML', async () => {
    const validator = new HtmlValidate({
      extends: ['html-validate:recommended'],
      rules: {
        // Style of writing, not validity: Astro writes void elements and its own attribute order.
        'void-style': 'off',
        'no-trailing-whitespace': 'off',
        'doctype-style': 'off',
        'attribute-boolean-style': 'off',
        // Titles hold the shop's name; searches cut them without harm.
        'long-title': 'off',
        // The table's own container is scrollable and named, which needs role and tabindex on a div.
        'prefer-native-element': 'off',
      },
    });
    const { results } = await validator.validateString(page, file);
    expect(
      results.flatMap(({ messages }) =>
        messages.map(({ message, line, ruleId }) => `${line} ${ruleId} ${message}`),
      ),
    ).toEqual([]);
  });

  test('holds no trace of a value that went wrong', () => {
    // What explains the keys of our files names the null that stands in them.
    const text = page.replace(/<details data-file-words[\s\S]*?<\/details>/g, ' ').replace(/<[^>]*>/g, ' ');
    expect(text).not.toMatch(/\bNaN\b|\bundefined\b|\bInfinity\b|\bnull\b|\[object |\uFFFD|\u26A0/);
  });

  test('says no sentence twice running', () => {
    expect(saidTwice(page)).toEqual([]);
  });

  test('has unique ids, and every reference to one resolves', () => {
    const ids = [...page.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1] ?? '');
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    const wanted = [
      ...[...page.matchAll(/\s(?:aria-labelledby|aria-describedby)="([^"]+)"/g)].flatMap((match) =>
        (match[1] ?? '').split(/\s+/),
      ),
      ...[...page.matchAll(/href="#([^"]+)"/g)].map((match) => match[1] ?? ''),
      ...[...page.matchAll(/url\(#([^)]+)\)/g)].map((match) => match[1] ?? ''),
    ];
    expect(wanted.filter((id) => !ids.includes(id))).toEqual([]);
  });

  test('nests its headings without a gap, from one h1', () => {
    const levels = [...page.matchAll(/<h([1-6])[\s>]/g)].map((match) => Number(match[1]));
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    expect(levels[0]).toBe(1);
    levels.forEach((level, index) => expect(level - (levels[index - 1] ?? 0)).toBeLessThanOrEqual(1));
  });

  test('has no dead link, asks no other host for anything, and leads to none but the shop’s own', () => {
    const linked = named(page, /<a\b[^>]*?\shref="([^"#]+)/g);
    // The address that a page is known by is asked for by nobody.
    const known = /<link rel="canonical"[^>]*>/g;
    const fetched = named(
      page.replace(known, ''),
      /<(?!a\b)[a-z]+\b[^>]*?\s(?:href|src|srcset)="([^"#]+)/g,
    ).flatMap((address) => address.split(',').map((candidate) => candidate.trim().split(' ')[0] ?? ''));
    const target = (address: string): string =>
      join(
        address.startsWith('/') ? folder : join(folder, dirname(file)),
        address.endsWith('/') ? `${address}index.html` : address,
      );
    const elsewhere = (address: string): boolean => /^(?:[a-z]+:|\/\/)/i.test(address);
    expect(
      [...linked, ...fetched].filter((address) => !elsewhere(address) && !existsSync(target(address))),
    ).toEqual([]);
    expect(fetched.filter(elsewhere)).toEqual([]);
    expect(fetched.length).toBeGreaterThan(4);
    expect(
      linked.filter(
        (address) => elsewhere(address) && !/^(?:mailto:|tel:|https:\/\/workshop\.example\/)/.test(address),
      ),
    ).toEqual([]);
  });

  test('carries a policy without unsafe parts and needs no script', () => {
    const policy = /http-equiv="content-security-policy" content="([^"]+)"/i.exec(page)?.[1] ?? '';
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toContain('unsafe');
    // Linked data is no script. Scripts come from files of the site: the choice of units, for editors copy buttons, in
    // frames their height, over lists the search, on reports what only a phone folds.
    const own = /<script type="module" src="\/_astro\/[^"]+"><\/script>/g;
    expect(page.match(own)?.length ?? 0).toBeLessThanOrEqual(
      /^(index\.html|kinds\/|page\/|reports\/[^/]+\/(kit\/|embed\/[^/]+\/)?index\.html|specimens\/)/.test(
        file,
      )
        ? 2
        : 1,
    );
    // Styles that the policy names stand in the page, so that nothing has to be fetched before it is painted.
    const isNamed = (css: string): boolean =>
      policy.includes(`'sha256-${createHash('sha256').update(css).digest('base64')}'`);
    const code = page
      .replaceAll(/<script type="application\/ld\+json">[^<]*<\/script>/g, '')
      .replaceAll(own, '')
      .replaceAll(/<style>([\s\S]*?)<\/style>/g, (style, css: string) => (isNamed(css) ? '' : style));
    expect(code).not.toMatch(/\sstyle=|<style|<script/);
  });

  test('can be linked to section by section', () => {
    const headings = [...page.matchAll(/<h2([^>]*)>/g)].map(([, attributes = '']) => attributes);
    const sheet = file.endsWith('/sheet/index.html');
    expect(sheet ? [] : headings.filter((attributes) => !/\sid="/.test(attributes))).toEqual([]);
  });

  test('says under a chart what is missing in it, and nothing where all is drawn', () => {
    for (const figure of page.match(/<figure[\s\S]*?<\/figure>/g) ?? []) {
      const [drawn = NaN, recorded = NaN] = ['drawn', 'recorded'].map((name) =>
        Number(new RegExp(`^<figure[^>]*\\sdata-${name}="(\\d+)"`).exec(figure)?.[1]),
      );
      expect(drawn).toBeGreaterThan(0);
      const caption = /<figcaption>[\s\S]*<\/figcaption>/.exec(figure)?.[0] ?? '';
      expect(/cannot be drawn\.|\w+ not drawn[.;]/.test(caption)).toBe(drawn < recorded);
      expect(caption).not.toMatch(/(Both|All [\w,]+) \w+ drawn\./);
    }
  });

  test('names every chart and gives its table', () => {
    for (const figure of page.match(/<figure[\s\S]*?<\/figure>/g) ?? []) {
      for (const svg of figure.match(/<svg[\s\S]*?>/g) ?? []) {
        expect(svg).toContain('role="img"');
        expect(svg).toMatch(/aria-labelledby="[^"]+"/);
      }
      expect(figure).toMatch(/<title[^>]*>[^<]{10,}<\/title>/);
      expect(figure).toContain('<figcaption');
    }
    const figures = page.match(/<figure/g)?.length ?? 0;
    const under = page.match(/<details class="numbers"[\s\S]*?<table[\s\S]*?<\/details>/g)?.length ?? 0;
    expect(under + tablesInDetails(folder, file)).toBeGreaterThanOrEqual(figures);
  });
});

test.each(allPages)(
  '$name with its charts, styles and scripts stays under 100 kB compressed, and asks early for its fonts, under 120 kB',
  ({ folder, file }) => {
    const page = readFileSync(join(folder, file), 'utf8');
    const sheets = named(page, /href="(\/[^"]+\.css)"/g);
    const scripts = named(page, /<script type="module" src="(\/[^"]+)"/g);
    for (const script of scripts) expect(statSync(join(folder, script)).size).toBeLessThan(3_000);
    const bytes = [page, ...[...sheets, ...scripts].map((part) => readFileSync(join(folder, part), 'utf8'))]
      .map((text) => gzipSync(text).length)
      .reduce((sum, size) => sum + size, 0);
    expect(bytes).toBeLessThan(100_000);
    const css = [...page.matchAll(/<style>([\s\S]*?)<\/style>/g)].map(([, inside]) => inside).join('');
    const fonts = [...new Set(named(css, /url\(([^)]+\.woff2)\)/g))];
    expect(fonts.reduce((sum, font) => sum + statSync(join(folder, font)).size, 0)).toBeLessThan(120_000);
    // A font asked for under another name, or without `crossorigin`, would be fetched twice.
    const early = named(
      page,
      /<link rel="preload" as="font" type="font\/woff2" href="([^"]+)" crossorigin>/g,
    );
    expect(early.toSorted()).toEqual(fonts.toSorted());
  },
);

const withContents = allPages.filter(
  ({ folder, file }) =>
    !file.startsWith('specimens/') && readFileSync(join(folder, file), 'utf8').includes('<nav id="contents"'),
);

test('the reports and the method have lists of their sections', () => {
  expect(withContents.filter(({ file }) => file === 'method/index.html')).toHaveLength(1);
  for (const { name } of reportPages) expect(withContents.map((page) => page.name)).toContain(name);
});

test.each(withContents)('$name lists every section of its own, in their order', ({ folder, file }) => {
  const { document } = parseHTML(readFileSync(join(folder, file), 'utf8'));
  const linked = [...document.querySelectorAll('#contents a')]
    .map((link) => link.getAttribute('href') ?? '')
    .filter((address) => address.startsWith('#'))
    .map((address) => address.slice(1));
  expect(linked.length).toBeGreaterThan(2);
  // Parts of a section go with it, and what stands on the first screen needs no link.
  const sections = [...document.querySelectorAll('main section[id]')].filter(
    (section) => section.parentElement?.closest('section, .first') === null,
  );
  expect(linked).toEqual(sections.map(({ id }) => id));
});

test('the site has its pages', () => {
  expect(demoPages.map(({ file }) => pathOf(file))).toEqual(
    expect.arrayContaining(['/', '/404.html', '/method/']),
  );
});

/** Text of a page in which an abbreviation is met, less charts, tables and headings, which cannot hold its long form. */
const runningText = (main: string): string =>
  main.replace(/<(svg|table|h\d|summary)\b[\s\S]*?<\/\1>/g, ' ').replace(/<[^>]*>/g, ' ');

test('abbreviations are written out where they are first met', () => {
  const main = (page: string): string => page.slice(page.indexOf('<main'), page.indexOf('</main>'));
  const withRpm = allPages
    .filter(({ file }) =>
      /^(reports\/[^/]+(\/details)?|pairs\/[^/]+|contenders\/[^/]+)\/index\.html$/.test(file),
    )
    .map(({ folder, file }) => main(readFileSync(join(folder, file), 'utf8')))
    .filter((words) => /\brpm\b/.test(runningText(words)));
  expect(withRpm.length).toBeGreaterThan(1);
  for (const words of withRpm)
    expect(words).toContain('<a href="/glossary/#rpm">rpm</a> (revolutions a minute)');
});
