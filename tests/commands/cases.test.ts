import { existsSync, mkdirSync, readdirSync, readFileSync, cpSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { allOr, eachSoMany } from '../everyday.ts';
import { builtSite } from '../site/builtSite.ts';
import { sharedText, shownText } from '../site/shownText.ts';

/**
 * Every folder of `tests/cases` is built, and what its readers get is held beside what was read and approved as text:
 * the page, its details, the mail, the editor's page with all captions, the share texts and the entry of the feed.
 */
const every = readdirSync(resolve('tests/cases'), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);
const cases = allOr(every, eachSoMany(every, 3));

const shopOf = (name: string): string => {
  const path = resolve('tests/cases', name, 'content/shop.yaml');
  return existsSync(path) ? readFileSync(path, 'utf8') : '';
};

/** Cases of one shop are reports of one site: a build each would take minutes. */
const shops = [...Map.groupBy(cases, shopOf).values()];
const builtIn = new Map<string, string>();

beforeAll(async () => {
  for (const names of shops) {
    const root = mkdtempSync(join(tmpdir(), 'straightface-cases-'));
    const content = join(root, 'content');
    for (const name of names) cpSync(resolve('tests/cases', name, 'content'), content, { recursive: true });
    mkdirSync(content, { recursive: true });
    const out = join(root, 'site');
    await builtSite(content, out, { CACHE_DIR: join(root, 'cache') });
    for (const name of names) builtIn.set(name, out);
  }
});

/** The entry of one report in the feed, as its reader takes it apart. */
function feedEntry(feed: string, slug: string): string {
  const items = feed.split('<item>').filter((item) => item.includes(`/reports/${slug}/`));
  const part = (tag: string, item: string): string =>
    new RegExp(`<${tag}[^>]*>([\\s\\S]*?)</${tag}>`).exec(item)?.[1] ?? '';
  return items.map((item) => `${part('title', item)}\n${part('description', item)}\n`).join('\n');
}

describe.each(cases)('%s', (name) => {
  const built = (path: string): string => readFileSync(join(builtIn.get(name) ?? '', path), 'utf8');
  const expected = (file: string): string => {
    const path = resolve('tests/cases', name, 'expected', file);
    // A golden that is missing would be written anew, and the test could not fail.
    expect(process.env['GOLDENS'] === 'write' || existsSync(path)).toBe(true);
    return path;
  };

  test('page', async () => {
    await expect(shownText(built(`reports/${name}/index.html`))).toMatchFileSnapshot(expected('page.txt'));
  });

  test('details', async () => {
    await expect(shownText(built(`reports/${name}/details/index.html`))).toMatchFileSnapshot(
      expected('details.txt'),
    );
  });

  test('share texts', async () => {
    await expect(sharedText(built(`reports/${name}/index.html`))).toMatchFileSnapshot(expected('share.txt'));
  });

  test("editor's page", async () => {
    await expect(shownText(built(`reports/${name}/kit/index.html`))).toMatchFileSnapshot(expected('kit.txt'));
  });

  const withAddress = shopOf(name).includes('address:');

  test.runIf(withAddress)('mail', async () => {
    await expect(built(`reports/${name}/email.txt`)).toMatchFileSnapshot(expected('mail.txt'));
  });

  test.runIf(withAddress)('feed entry', async () => {
    await expect(feedEntry(built('feed.xml'), name)).toMatchFileSnapshot(expected('feed.txt'));
  });
});
