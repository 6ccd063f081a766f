import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { build, foldersFor } from './builds.ts';
import { contentFolder, twoHeads, twoHeadsCsv } from './contentFolder.ts';

const nasty = `<script>alert(1)</script><img src=x onerror=alert(2)>"'&amp;`;
const inYaml = `'${nasty.replaceAll("'", "''")}'`;

const answers = twoHeads((front) =>
  front
    .replace('title: Two heads', `title: ${inYaml}`)
    .replace(/question: .*/, `question: ${inYaml}`)
    .replace('{label: Alder, supplied_by: our stock,', `{label: ${inYaml}, supplied_by: ${inYaml},`)
    .replace('paid_by: the shop', `paid_by: ${inYaml}`),
);

const folders = foldersFor(
  contentFolder({
    'shop.yaml': [
      `name: ${inYaml}`,
      'address: https://example.test/',
      `contact: ${inYaml}`,
      `reuse: {terms: ${inYaml}, credit: ${inYaml}}`,
      '',
    ].join('\n'),
    'reports/two-heads/report.md': `${answers}\n## ${nasty}\n\n${nasty}\n\n| ${nasty} |\n| --- |\n| x |\n`,
    'reports/two-heads/shots.csv': twoHeadsCsv.replaceAll('Alder', 'alder'),
  }),
);

describe('a shop whose every answer is markup', () => {
  const run = build(folders);
  const files = (ending: RegExp): readonly string[] =>
    readdirSync(folders.out, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && ending.test(entry.name))
      .map((entry) => relative(folders.out, join(entry.parentPath, entry.name)));
  const read = (path: string): string => readFileSync(join(folders.out, path), 'utf8');

  test('is published', () => {
    expect(run.status, run.said).toBe(0);
    expect(files(/\.html$/).length).toBeGreaterThan(8);
  });

  test('no chart or feed has an element of it', () => {
    const wrong = files(/\.(svg|xml)$/).filter((path) => /<script>alert|<img src="?x/i.test(read(path)));
    expect(wrong).toEqual([]);
  });

  test('no element of a page listens to anything, and scripts are the site’s own', () => {
    for (const path of files(/\.html$/)) {
      const { document } = parseHTML(read(path));
      for (const element of document.querySelectorAll('*')) {
        const listening = [...element.attributes].filter(({ name }) => /^on/i.test(name));
        expect(listening.map(({ name }) => `${path} ${name}`)).toEqual([]);
      }
      for (const script of document.querySelectorAll('script')) {
        const kind = script.getAttribute('type');
        if (kind === 'application/ld+json') JSON.parse(script.textContent ?? '');
        else expect(`${path} ${kind} ${script.textContent ?? ''}`).not.toContain('alert(');
      }
    }
  });

  test('readers see what was typed', () => {
    const { document } = parseHTML(read('reports/two-heads/index.html'));
    expect(document.querySelector('h1')?.textContent).toBe(nasty);
    const { title } = JSON.parse(read('reports/two-heads/findings.json'));
    expect(title).toBe(nasty);
  });
});
