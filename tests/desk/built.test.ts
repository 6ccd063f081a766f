import { mkdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { previewAtDesk } from '../../src/commands/desk/previewAtDesk.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';
import { atDesk } from './atDesk.ts';

const notice = (page: string): string =>
  parseHTML(page)
    .document.querySelector('.notice.refused, .notice.done')
    ?.textContent.replace(/\s+/g, ' ')
    .trim() ?? '';

describe('the site as it was built', () => {
  test('is led to from the desk', async () => {
    const root = contentFolder({ 'shop.yaml': shop });
    const { get } = atDesk(root, { preview: () => Promise.resolve('http://127.0.0.1:4999/tests/') });
    const response = await get('/desk/built/');
    expect([response.status, response.headers.get('location')]).toEqual([
      302,
      'http://127.0.0.1:4999/tests/',
    ]);
  });

  test('is asked for where there is none', async () => {
    const { get } = atDesk(contentFolder({ 'shop.yaml': shop }));
    const response = await get('/desk/built/');
    expect(response.status).toBe(200);
    expect(notice(await response.text())).toBe(
      'There is no built site yet. Build it first, at the end of this page.',
    );
  });

  test('is offered once it is built, and from every published report', async () => {
    const root = contentFolder({
      'shop.yaml': shop,
      'reports/two-heads/report.md': twoHeads(),
      'reports/two-heads/shots.csv': twoHeadsCsv,
    });
    const { post, get } = atDesk(root);
    const page = await (await post('/desk/build/', {})).text();
    expect(notice(page)).toBe('Your site is built. It lies in /somewhere. See it as readers will.');
    expect(parseHTML(page).document.querySelector('.notice a')?.getAttribute('href')).toBe('/desk/built/');
    expect(await (await get('/desk/reports/two-heads/')).text()).toContain('href="/desk/built/"');
  });

  test('nobody without a key starts it', async () => {
    let asked = 0;
    const { app } = atDesk(contentFolder({ 'shop.yaml': shop }), {
      preview: () => {
        asked += 1;
        return Promise.resolve('http://127.0.0.1:4999/');
      },
    });
    expect((await app.request('http://localhost:4321/desk/built/')).status).toBe(403);
    expect(asked).toBe(0);
  });
});

/** Asks for a path as it stands, under a name of the asker's own choice: `fetch` would tidy both. */
function asked(address: string, path: string, host: string): Promise<number | undefined> {
  const { hostname, port } = new URL(address);
  return new Promise((resolve, reject) => {
    request({ hostname, port, path, headers: { host } }, (response) => {
      response.resume();
      resolve(response.statusCode);
    })
      .on('error', reject)
      .end();
  });
}

describe('serving it', () => {
  const built = (address: string) => {
    const root = contentFolder({ 'content/shop.yaml': `${shop}address: ${address}\n` });
    const out = join(root, 'site');
    return { root, out, content: join(root, 'content') };
  };

  test('begins once there is a site, on one port, below the path of the shop', async () => {
    const { out, content } = built('https://shop.example/tests/');
    const preview = previewAtDesk(content, out);
    expect(await preview()).toBeNull();
    mkdirSync(join(out, 'reports/two-heads'), { recursive: true });
    writeFileSync(join(out, 'index.html'), '<h1>First</h1>');
    writeFileSync(join(out, 'reports/two-heads/index.html'), '<h1>Two heads</h1>');
    const [one, other] = await Promise.all([preview(), preview()]);
    expect(one).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/tests\/$/);
    expect(other).toBe(one);
    expect(await (await fetch(`${one ?? ''}reports/two-heads/`)).text()).toBe('<h1>Two heads</h1>');
    // A build puts a new folder in the place of the old one.
    rmSync(out, { recursive: true });
    expect((await fetch(one ?? '')).status).toBe(404);
    mkdirSync(out);
    writeFileSync(join(out, 'index.html'), '<h1>Second</h1>');
    expect(await (await fetch(one ?? '')).text()).toBe('<h1>Second</h1>');
  });

  test('shows what was built, under names of this machine only', async () => {
    const { root, out, content } = built('https://shop.example/');
    mkdirSync(out);
    writeFileSync(join(out, 'index.html'), '<h1>Built</h1>');
    symlinkSync(join(content, 'shop.yaml'), join(out, 'linked.yaml'));
    symlinkSync(root, join(out, 'out'));
    const address = (await previewAtDesk(content, out)()) ?? '';
    const { host, port } = new URL(address);
    for (const own of [host, `localhost:${port}`, `[::1]:${port}`])
      expect([own, await asked(address, '/', own)]).toEqual([own, 200]);
    for (const other of ['attacker.test', `attacker.test:${port}`, `localhost.attacker.test:${port}`])
      expect([other, await asked(address, '/', other)]).toEqual([other, 403]);
    for (const path of [
      '/linked.yaml',
      '/out/content/shop.yaml',
      '/../content/shop.yaml',
      '/%2e%2e/content/shop.yaml',
    ])
      expect([path, await asked(address, path, host)]).toEqual([path, 404]);
    expect(await asked(address, '/..%2fcontent%2fshop.yaml', host)).toBe(404);
  });

  test('begins anew where the address of the shop leads elsewhere', async () => {
    const { out, content } = built('https://shop.example/tests/');
    mkdirSync(out);
    writeFileSync(join(out, 'index.html'), '<h1>First</h1>');
    const preview = previewAtDesk(content, out);
    await preview();
    writeFileSync(join(content, 'shop.yaml'), `${shop}address: https://shop.example/\n`);
    const address = await preview();
    expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
    expect(await (await fetch(address ?? '')).text()).toBe('<h1>First</h1>');
  });
});
