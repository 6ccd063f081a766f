// How static hosts answer: RFC 9110 for the statuses; index files and the slash at the end are common practice, no source.
import { mkdtempSync, symlinkSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { previewSite, type Preview } from '../../src/commands/previewSite.ts';
import { contentFolder, shop } from './contentFolder.ts';
import { listen } from './listen.ts';

interface Answer {
  readonly status: number | undefined;
  readonly type: string | undefined;
  readonly location: string | undefined;
  readonly body: string;
}

/** Asks for a path as it stands: `fetch` would tidy it first. */
function ask(
  address: string,
  path: string,
  method = 'GET',
  headers: Readonly<Record<string, string>> = {},
): Promise<Answer> {
  const { hostname, port } = new URL(address);
  return new Promise((resolve, reject) => {
    request({ hostname, port, path, method, headers: { ...headers } }, (response) => {
      let body = '';
      response.on('data', (part: Buffer) => (body += part.toString()));
      response.on('end', () =>
        resolve({
          status: response.statusCode,
          type: response.headers['content-type'],
          location: response.headers.location,
          body,
        }),
      );
    })
      .on('error', reject)
      .end();
  });
}

describe('preview', () => {
  const site = contentFolder({
    'site/index.html': 'home',
    'site/404.html': 'not there',
    'site/reports/one/index.html': 'one',
    'site/reports/one/shots.csv': 'Club',
    'site/reports/one/report.html': 'whole',
    'site/feed.xml': '<rss/>',
    'site/charts/apart.svg': '<svg/>',
    'site/fonts/a.woff2': 'font',
    'site/grö ße/index.html': 'large',
    'secret.txt': 'secret',
  });
  symlinkSync(join(site, 'secret.txt'), join(site, 'site/linked.txt'));
  symlinkSync(site, join(site, 'site/out'));
  const content = contentFolder({ 'shop.yaml': `${shop}address: https://example.test/fittings/\n` });
  const heard = listen();
  let preview: Preview | null = null;
  const address = (): string => preview?.address ?? '';

  beforeAll(async () => {
    preview = await previewSite({
      contentDir: content,
      outDir: join(site, 'site'),
      port: 0,
      terminal: heard.terminal,
    });
  });
  afterAll(() => preview?.close());

  test('prints its address, with the base path of the shop', () => {
    expect(address()).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/fittings\/$/);
    expect(heard.said()).toContain(` is served at ${address()}`);
  });

  test.each([
    ['/fittings/', 200, 'text/html; charset=utf-8', 'home'],
    ['/fittings/reports/one/', 200, 'text/html; charset=utf-8', 'one'],
    ['/fittings/reports/one/?x=1', 200, 'text/html; charset=utf-8', 'one'],
    ['/fittings/reports/one/shots.csv', 200, 'text/csv; charset=utf-8', 'Club'],
    ['/fittings/reports/one/report.html', 200, 'text/html; charset=utf-8', 'whole'],
    ['/fittings/feed.xml', 200, 'application/xml; charset=utf-8', '<rss/>'],
    ['/fittings/charts/apart.svg', 200, 'image/svg+xml', '<svg/>'],
    ['/fittings/fonts/a.woff2', 200, 'font/woff2', 'font'],
    ['/fittings/gr%C3%B6%20%C3%9Fe/', 200, 'text/html; charset=utf-8', 'large'],
    // No folder is listed, and no link leads out.
    ['/fittings/charts/', 404, 'text/html; charset=utf-8', 'not there'],
    ['/fittings/charts', 404, 'text/html; charset=utf-8', 'not there'],
    ['/fittings/linked.txt', 404, 'text/html; charset=utf-8', 'not there'],
    ['/fittings/out/secret.txt', 404, 'text/html; charset=utf-8', 'not there'],
    ['/fittings/nothing', 404, 'text/html; charset=utf-8', 'not there'],
    ['/fittings/nothing/', 404, 'text/html; charset=utf-8', 'not there'],
    ['/reports/one/', 404, 'text/html; charset=utf-8', 'not there'],
    ['/fittings/../secret.txt', 404, 'text/html; charset=utf-8', 'not there'],
    ['/fittings/..%2fsecret.txt', 404, 'text/html; charset=utf-8', 'not there'],
    ['/fittings/%2e%2e/secret.txt', 404, 'text/html; charset=utf-8', 'not there'],
    ['/fittings/%', 400, 'text/html; charset=utf-8', 'not there'],
    ['/fittings/%00', 400, 'text/html; charset=utf-8', 'not there'],
  ])('%s: %i', async (path, status, type, body) => {
    expect(await ask(address(), path)).toMatchObject({ status, type, body });
  });

  test('a folder without its slash is sent on to where it is', async () => {
    expect(await ask(address(), '/fittings/reports/one')).toMatchObject({
      status: 301,
      location: '/fittings/reports/one/',
    });
    expect(await ask(address(), '/')).toMatchObject({ status: 302, location: '/fittings/' });
  });

  test('a part of a file is sent where it is asked for', async () => {
    const part = { range: 'bytes=1-2' };
    expect(await ask(address(), '/fittings/reports/one/shots.csv', 'GET', part)).toMatchObject({
      status: 206,
      body: 'lu',
    });
    expect(await ask(address(), '/fittings/nothing/', 'GET', part)).toMatchObject({
      status: 404,
      body: 'not there',
    });
  });

  test('HEAD has no body; other methods are refused', async () => {
    expect(await ask(address(), '/fittings/', 'HEAD')).toMatchObject({ status: 200, body: '' });
    expect(await ask(address(), '/fittings/', 'POST')).toMatchObject({ status: 405 });
  });
});

test('where nothing has been built it says what to do', async () => {
  const { terminal, said } = listen();
  const outDir = mkdtempSync(join(tmpdir(), 'straightface-none-'));
  expect(await previewSite({ contentDir: outDir, outDir, port: 0, terminal })).toBe(null);
  expect(said()).toBe(`There is no site in ${outDir}. Build it first: npm run build\n`);
});
