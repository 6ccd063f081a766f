import { spawn, type ChildProcess } from 'node:child_process';
import { copyFileSync, existsSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join, resolve } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { answered } from '../intake/draft/answered.ts';
import { newFolder } from './builds.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from './contentFolder.ts';

const cache = newFolder('cache');
const content = contentFolder({
  'shop.yaml': `${shop}address: https://example.test/fittings/\n`,
  'reports/broken/report.md': '---\ntitle: "Two heads\n---\n',
  'reports/sound/report.md': `${twoHeads((front) => front.replace('status: published', 'status: draft'))}\n![Two heads](heads.png)\n`,
  'reports/sound/shots.csv': twoHeadsCsv,
});

writeFileSync(
  join(content, 'reports/sound/heads.png'),
  await sharp({ create: { width: 40, height: 30, channels: 3, background: '#365' } })
    .png()
    .toBuffer(),
);

let server: ChildProcess | null = null;
let said = '';
let site = '';

function freePort(): Promise<number> {
  return new Promise((done) => {
    const probe = createServer().listen(0, () => {
      const address = probe.address();
      probe.close(() => done(typeof address === 'object' && address !== null ? address.port : 0));
    });
  });
}

/** Tries until `look` gives something, for two minutes at most. */
async function until<T>(what: string, look: () => Promise<T | null> | T | null): Promise<T> {
  for (let tries = 0; tries < 600; tries++) {
    const found = await look();
    if (found !== null) return found;
    await new Promise((done) => setTimeout(done, 200));
  }
  throw new Error(`Waited in vain for ${what}. It said:\n${said}`);
}

const page = async (path: string): Promise<{ status: number; text: string }> => {
  const response = await fetch(`${site}${path}`);
  return { status: response.status, text: await response.text() };
};

const pageWith = (path: string, words: string): Promise<string> =>
  until(`"${words}" on ${path}`, async () => {
    const { text } = await page(path);
    return text.includes(words) ? text : null;
  });

beforeAll(async () => {
  const port = await freePort();
  site = `http://localhost:${port}/fittings/`;
  const { PATH = '', HOME = '' } = process.env;
  server = spawn(process.execPath, ['src/commands/dev.ts', '--port', String(port)], {
    cwd: resolve('.'),
    env: { PATH, HOME, CONTENT_DIR: content, CACHE_DIR: cache, NO_COLOR: '1' },
  });
  for (const stream of [server.stdout, server.stderr])
    stream?.on('data', (part: Buffer) => void (said += part.toString()));
  await until('the server', () => (said.includes('become drafts') ? true : null));
});

afterAll(async () => {
  const gone = new Promise((done) => server?.once('exit', done));
  server?.kill();
  await gone;
});

describe('dev', () => {
  test('shows a draft, and where it stands', async () => {
    const { status, text } = await page('reports/sound/');
    expect(status).toBe(200);
    expect(text).toContain('<h1>Two heads</h1>');
    expect(text).toContain('Where this draft stands');
  });

  test('shows the picture of a draft', async () => {
    const { text } = await page('reports/sound/');
    const address =
      /<img src="(pictures\/[^"]+)" alt="Two heads" width="40" height="30"/.exec(text)?.[1] ?? '';
    const response = await fetch(`${site}reports/sound/${address}`);
    expect([response.status, response.headers.get('content-type')]).toEqual([200, 'image/png']);
    expect(await sharp(await response.arrayBuffer()).metadata()).toMatchObject({ format: 'png', width: 40 });
  });

  test('works a report out once for all its pages, and anew when it has changed', async () => {
    const workedOut = (): readonly string[] =>
      readdirSync(join(cache, 'dev')).filter((name) => /^[0-9a-f]{64}\.json$/.test(name));
    await page('');
    const before = workedOut();
    expect(before).toHaveLength(1);
    await page('glossary/');
    expect(workedOut()).toEqual(before);
    const file = join(content, 'reports/sound/report.md');
    writeFileSync(file, readFileSync(file, 'utf8').replace('title: Two heads', 'title: Two heads again'));
    await pageWith('', 'Two heads again');
    expect(workedOut()).toHaveLength(2);
  });

  test('shows a report as it is at the moment of asking, before the disk has told of the change', async () => {
    const file = join(content, 'reports/sound/report.md');
    for (const title of ['Once', 'Twice', 'Three times']) {
      // All that was told of the change before has been heard by then.
      await new Promise((done) => setTimeout(done, 1000));
      await page('reports/sound/');
      const underWay = page('reports/sound/');
      writeFileSync(file, readFileSync(file, 'utf8').replace(/^title: .*/m, `title: ${title}`));
      expect((await page('reports/sound/')).text).toContain(`<h1>${title}</h1>`);
      await underWay;
    }
  });

  test('shows the problems of a report that cannot be read, and no stack trace', async () => {
    const { status, text } = await page('reports/broken/');
    expect(status).toBe(200);
    expect(text).toContain('Error in reports/broken/report.md, line 2');
    expect(text).not.toMatch(/\bat .+\.ts:\d+:\d+/);
    expect((await page('')).text).toContain('href="/fittings/reports/broken/"');
  });

  test('makes a draft of a file that is put into the inbox, and follows the answers', async () => {
    copyFileSync('tests/fixtures/csv/two-hitters.csv', join(content, 'away.tmp'));
    renameSync(join(content, 'away.tmp'), join(content, 'inbox/two-hitters.csv'));
    const file = join(content, 'reports/two-hitters/report.md');
    await until('the draft', () => (existsSync(file) ? true : null));
    await until('the inbox to be empty', () =>
      existsSync(join(content, 'inbox/two-hitters.csv')) ? null : true,
    );
    const open = await pageWith('reports/two-hitters/', 'This report cannot be shown yet.');
    const lines = readFileSync(file, 'utf8').split('\n');
    const line = lines.indexOf('    supplied_by:') + 1;
    expect(open).toContain(`Line ${line}, <code>contenders.head-a.supplied_by</code>: Who supplied it`);
    expect(open).toContain('Head A 6, Head B 6');
    expect(open).toContain('one after another');
    writeFileSync(file, answered('reports/two-hitters/report.md', lines.join('\n')));
    const shown = await pageWith('reports/two-hitters/', '<h1>Two hitters</h1>');
    expect(shown).not.toContain('Must be answered');
  });

  test('leaves a file that cannot be used where it is, and says why', async () => {
    writeFileSync(join(content, 'inbox/nul.csv'), 'Club,Carry (yd)\nAlder,23\0\nBirch,231\n');
    await until('its problems', () => (said.includes('inbox/nul.csv:2:2  Carry (yd)') ? true : null));
    expect(existsSync(join(content, 'inbox/nul.csv'))).toBe(true);
    expect(existsSync(join(content, 'reports/nul'))).toBe(false);
  });

  test('answers an address without a report with 404', async () => {
    expect((await page('reports/nowhere/')).status).toBe(404);
  });
});
