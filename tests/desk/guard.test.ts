import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';
import { atDesk, origin, seenIn } from './atDesk.ts';

const content = (): string =>
  contentFolder({
    'shop.yaml': shop,
    'reports/two-heads/report.md': twoHeads(),
    'reports/two-heads/shots.csv': twoHeadsCsv,
  });
const place = '/desk/reports/two-heads/';

describe('who may come to the desk', () => {
  test('nobody without the word of the printed address, and whoever has it only once', async () => {
    const { app, invitation, uninvited } = atDesk(content());
    const bare = await app.request(`${origin}/desk/`);
    expect([bare.status, uninvited()]).toEqual([403, 1]);
    expect(await bare.text()).toContain('by the address that stands in the window');

    const word = invitation();
    const opened = await app.request(`${origin}/desk/?token=${word}`);
    expect([opened.status, opened.headers.get('location')]).toEqual([303, '/desk/']);
    const given = opened.headers.get('set-cookie') ?? '';
    expect(given).toMatch(/^desk-4321=[^;]+; Path=\/desk\/; HttpOnly; SameSite=Strict$/);
    const cookie = given.split(';')[0] ?? '';
    expect((await app.request(`${origin}/desk/`, { headers: { cookie } })).status).toBe(200);

    const again = await app.request(`${origin}/desk/?token=${word}`);
    expect([again.status, again.headers.get('set-cookie')]).toEqual([303, null]);
    expect(invitation()).not.toBe(word);
  });

  test.each(['attacker.test:4321', 'localhost.attacker.test', '192.168.1.20:4321', 'desk'])(
    'not under the name %s, which a page elsewhere may have pointed here',
    async (host) => {
      const { app, cookie } = atDesk(content());
      const response = await app.request(`${origin}/desk/`, { headers: { cookie, host } });
      expect(response.status).toBe(403);
      expect(await response.text()).toContain('under localhost and 127.0.0.1 only');
    },
  );

  test.each(['localhost:4321', '127.0.0.1:4321', '[::1]:4321'])('under %s', async (host) => {
    const { app, cookie } = atDesk(content());
    expect((await app.request(`${origin}/desk/`, { headers: { cookie, host } })).status).toBe(200);
  });

  test('every page forbids everything from elsewhere, and to be framed', async () => {
    const { get } = atDesk(content());
    for (const path of ['/desk/', '/desk/shop/', place, '/desk/nowhere/']) {
      const { headers } = await get(path);
      const policy = headers.get('content-security-policy') ?? '';
      expect(policy).toContain("default-src 'none'");
      expect(policy).toContain("frame-ancestors 'none'");
      expect(policy).toContain("form-action 'self'");
      expect(policy).not.toMatch(/unsafe|\*|data:|http/);
      expect(headers.get('cache-control')).toBe('no-store');
    }
  });
});

describe('nothing is written', () => {
  test.each<[string, Readonly<Record<string, string>>]>([
    ['from another origin', { origin: 'https://attacker.test', 'sec-fetch-site': 'cross-site' }],
    ['from another port of this machine', { origin: 'http://localhost:9', 'sec-fetch-site': 'same-site' }],
    ['where the two headers differ', { origin: 'https://attacker.test' }],
    ['from nowhere', { origin: 'null' }],
  ])('%s', async (_name, headers) => {
    const root = content();
    const { get, post } = atDesk(root);
    const seen = seenIn(await (await get(place)).text());
    const fields = { seen, do: 'save', 'answer.title': 'Taken over' };
    const response = await post(place, fields, headers);
    expect(response.status).toBe(403);
    expect(readFileSync(join(root, 'reports/two-heads/report.md'), 'utf8')).toBe(twoHeads());
    // The same form from here is taken.
    expect((await post(place, fields)).status).toBe(200);
    expect(readFileSync(join(root, 'reports/two-heads/report.md'), 'utf8')).toContain('title: Taken over');
  });

  test('where neither header says where a form comes from', async () => {
    const root = content();
    const { app, cookie, formToken } = atDesk(root);
    const response = await app.request(`${origin}/desk/shop/`, {
      method: 'POST',
      body: new URLSearchParams({ token: formToken, seen: '', 'answer.name': 'Taken over' }),
      headers: { cookie },
    });
    expect(response.status).toBe(403);
    expect(readFileSync(join(root, 'shop.yaml'), 'utf8')).toBe(shop);
  });

  test.each([
    '/desk/shop/',
    place,
    `${place}after/`,
    `${place}address/`,
    '/desk/files/',
    '/desk/waiting/',
    '/desk/build/',
    '/desk/record/',
  ])('by a form to %s without the token of this desk', async (path) => {
    const root = content();
    let built = 0;
    const { get, post } = atDesk(root, {
      build: () => {
        built += 1;
        return Promise.resolve({ built: true, said: '', outDir: '' });
      },
      record: () => {
        built += 1;
        return { recorded: true, said: '' };
      },
    });
    const seen = seenIn(await (await get(path.startsWith(place) ? place : '/desk/shop/')).text());
    const fields = {
      token: 'guessed',
      seen,
      do: 'alias',
      'answer.title': 'Taken over',
      'answer.name': 'Taken over',
      'answer.older-address': 'taken-over',
      'answer.new-address': 'taken-over',
    };
    const response = await post(path, fields);
    expect(response.status).toBe(403);
    expect(await response.text()).toContain('Nothing was written');
    expect(readFileSync(join(root, 'shop.yaml'), 'utf8')).toBe(shop);
    expect(readFileSync(join(root, 'reports/two-heads/report.md'), 'utf8')).toBe(twoHeads());
    expect(built).toBe(0);
  });

  test('without a cookie, whatever the form holds', async () => {
    const root = content();
    const { post } = atDesk(root);
    const response = await post('/desk/shop/', { 'answer.name': 'Taken over' }, { cookie: '' });
    expect(response.status).toBe(403);
    expect(readFileSync(join(root, 'shop.yaml'), 'utf8')).toBe(shop);
  });

  test.each(['..%2F..%2Fetc', '%252e%252e', '...', 'two-heads%2F..%2F..', 'nowhere', 'index.html', '%00'])(
    'for the name %s, which is none of a report',
    async (name) => {
      const { get, post } = atDesk(content());
      expect((await get(`/desk/reports/${name}/`)).status).toBe(404);
      expect((await post(`/desk/reports/${name}/`, { 'answer.title': 'x' })).status).toBe(404);
    },
  );

  test('of more than 20 MB at once, and a sentence says so', async () => {
    const { post } = atDesk(content());
    const file = new File([new Uint8Array(60_000_000)], 'shots.csv');
    const response = await post('/desk/files/', { files: file });
    expect(response.status).toBe(413);
    expect(await response.text()).toContain('That is too much at once: 20 MB are taken');
  });
});
