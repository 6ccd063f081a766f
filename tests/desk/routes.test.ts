// What holds for every address of the desk: the list is the app's own, so that a new one cannot be forgotten.
import { mkdirSync, readdirSync, readFileSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { DeskWork } from '../../src/desk/deskWork.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';
import { atDesk, origin, type AtDesk } from './atDesk.ts';

/** A content folder between what lies outside of it. */
function open(work: Partial<DeskWork> = {}) {
  const root = contentFolder({
    'content/shop.yaml': shop,
    'content/inbox/waiting.csv': twoHeadsCsv,
    'content/reports/two-heads/report.md': twoHeads(),
    'content/reports/two-heads/shots.csv': twoHeadsCsv,
    'content/reports/two-heads/hitting-sheet.html': '<h1>To hit by</h1>',
    'outside/report.md': twoHeads(),
    'dist/index.html': '<h1>Built</h1>',
  });
  const asked: string[] = [];
  const noting = (name: string): never => {
    asked.push(name);
    throw new Error(`${name} was asked for`);
  };
  const desk = atDesk(join(root, 'content'), {
    save: () => noting('save'),
    rename: () => noting('rename'),
    draft: () => noting('draft'),
    draftWaiting: () => noting('draftWaiting'),
    plan: () => noting('plan'),
    build: () => noting('build'),
    record: () => noting('record'),
    preview: () => noting('preview'),
    ...work,
  });
  return { root, desk, asked };
}

const filesIn = (root: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    readdirSync(root, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .sort()
      .map((file) => [file, readFileSync(file, 'latin1')]),
  );

/** Every address at which the app answers to a method, with a report in it where it has one. */
function addresses({ app }: AtDesk, method: 'GET' | 'POST', slug = 'two-heads'): readonly string[] {
  const paths = app.routes.filter((route) => route.method === method).map(({ path }) => path);
  return [...new Set(paths)].map((path) => path.replace(':slug', slug));
}

const gets = addresses(open().desk, 'GET');
const posts = addresses(open().desk, 'POST');
const ofReports = (method: 'GET' | 'POST'): readonly string[] =>
  addresses(open().desk, method, ':slug').filter((path) => path.includes(':slug'));

/** A form that any of the addresses could take. */
const form = {
  do: 'record',
  seen: '',
  names: 'waiting.csv',
  'answer.name': 'Taken over',
  'answer.title': 'Taken over',
  'answer.new-address': 'taken-over',
};

test('the list holds what it should', () => {
  expect(gets).toContain('/desk/reports/two-heads/shots');
  expect(posts).toEqual(
    expect.arrayContaining(['/desk/files', '/desk/plan/arithmetic', '/desk/reports/two-heads/address']),
  );
  // Nothing answers to a method that is none of the two.
  const methods = open().desk.app.routes.map(({ method }) => method);
  expect(new Set(methods)).toEqual(new Set(['ALL', 'GET', 'POST']));
});

describe('whoever asks', () => {
  test.each([...gets, ...posts.map((path) => `POST ${path}`)])(
    '%s is closed without a key',
    async (named) => {
      const { root, desk, asked } = open();
      const before = filesIn(root);
      const [method, path] = named.startsWith('POST ') ? ['POST', named.slice(5)] : ['GET', named];
      const headers = { origin, 'sec-fetch-site': 'same-origin' };
      for (const cookie of ['', 'desk-4321=', 'desk-4321=guessed', `desk-4322=${desk.cookie.slice(10)}`]) {
        const response = await desk.app.request(`${origin}${path}`, {
          method,
          headers: { ...headers, cookie },
        });
        expect([cookie, response.status]).toEqual([cookie, 403]);
      }
      for (const host of [
        'attacker.test:4321',
        'localhost.attacker.test',
        '192.168.1.20',
        '0.0.0.0:4321',
        '[::2]',
      ]) {
        const response = await desk.app.request(`${origin}${path}`, {
          method,
          headers: { ...headers, cookie: desk.cookie, host },
        });
        expect([host, response.status]).toEqual([host, 403]);
      }
      expect([filesIn(root), asked]).toEqual([before, []]);
    },
  );
});

describe('to write', () => {
  test.each(posts)('%s takes a form from here only', async (path) => {
    const { root, desk, asked } = open();
    const before = filesIn(root);
    const elsewhere: readonly Readonly<Record<string, string>>[] = [
      { origin: 'https://attacker.test', 'sec-fetch-site': 'cross-site' },
      { origin: 'http://localhost:9', 'sec-fetch-site': 'same-site' },
      { origin: 'https://localhost:4321' },
      { origin: 'https://attacker.test' },
      { origin: 'null' },
      { 'sec-fetch-site': 'cross-site' },
      { 'sec-fetch-site': 'none' },
      { 'sec-fetch-site': 'same-origin', origin: 'null' },
    ];
    for (const headers of elsewhere)
      expect([headers, (await desk.post(path, form, headers)).status]).toEqual([headers, 403]);
    const unsaid = await desk.app.request(`${origin}${path}`, {
      method: 'POST',
      body: new URLSearchParams({ token: desk.formToken, ...form }),
      headers: { cookie: desk.cookie },
    });
    expect(unsaid.status).toBe(403);
    expect([filesIn(root), asked]).toEqual([before, []]);
  });

  test.each(posts)('%s takes a form of this run only', async (path) => {
    const { root, desk, asked } = open();
    const before = filesIn(root);
    for (const token of ['', 'guessed', desk.cookie.slice(10), `${desk.formToken} `, desk.invitation()]) {
      const response = await desk.post(path, { ...form, token });
      expect([token, response.status]).toEqual([token, 403]);
      expect(await response.text()).toContain('Nothing was written');
    }
    expect([filesIn(root), asked]).toEqual([before, []]);
  });

  test.each(posts)('%s takes no other method', async (path) => {
    const { root, desk, asked } = open();
    const before = filesIn(root);
    const query = new URLSearchParams({ ...form, word: desk.formToken }).toString();
    for (const method of ['GET', 'HEAD', 'PUT', 'PATCH', 'DELETE', 'OPTIONS']) {
      const response = await desk.app.request(`${origin}${path}?${query}`, {
        method,
        headers: { cookie: desk.cookie, origin, 'sec-fetch-site': 'same-origin' },
      });
      const reads = ['GET', 'HEAD'].includes(method) && gets.includes(path);
      expect([method, response.status]).toEqual([method, reads ? 200 : 404]);
    }
    expect([filesIn(root), asked]).toEqual([before, []]);
  });

  test.each(posts)('%s says in a sentence what cannot be read or is too much', async (path) => {
    const { root, desk, asked } = open();
    const before = filesIn(root);
    const send = async (type: string, body: string | Uint8Array<ArrayBuffer>): Promise<Response> =>
      desk.app.request(`${origin}${path}`, {
        method: 'POST',
        body,
        headers: { cookie: desk.cookie, origin, 'sec-fetch-site': 'same-origin', 'content-type': type },
      });
    for (const [type, body] of [
      ['multipart/form-data', 'no boundary'],
      ['multipart/form-data; boundary=x', '--x\r\nContent-Disposition: form-data; name="token"\r\n\r\nhalf'],
      ['multipart/form-data; boundary=x', ''],
      ['application/json', JSON.stringify({ token: desk.formToken, ...form })],
      ['text/plain', `token=${desk.formToken}`],
      ['', `token=${desk.formToken}`],
    ] as const) {
      const response = await send(type, body);
      expect([type, body, response.status]).toEqual([type, body, 403]);
      expect(await response.text()).toContain('Nothing was written');
    }
    const large = await send('application/x-www-form-urlencoded', new Uint8Array(60_000_000).fill(97));
    expect(large.status).toBe(413);
    expect(await large.text()).toContain('Nothing was written');
    expect([filesIn(root), asked]).toEqual([before, []]);
  });

  test.each(posts)('%s passes over names that it does not ask for', async (path) => {
    const { root, desk } = open({
      draftWaiting: () => ({ slug: null, joinsPlan: false, unsure: [], said: '' }),
      build: () => Promise.resolve({ built: true, said: '', outDir: '' }),
      record: () => ({ recorded: true, said: '' }),
    });
    const before = filesIn(root);
    const many = Object.fromEntries(Array.from({ length: 10_000 }, (_, i) => [`answer.f${i}`, 'x']));
    const named = ['__proto__', 'constructor', 'toString', 'answer.__proto__', 'answer.constructor', '']
      .flatMap((name) => [name, `${name}[]`, `${name}.x`, `answer.contenders-${name}-label`])
      .map((name) => [name, 'polluted'] as const);
    const seen = /name="seen" value="([0-9a-f]*)"/.exec(
      await (await desk.get('/desk/reports/two-heads')).text(),
    )?.[1];
    const response = await desk.post(path, { ...many, ...Object.fromEntries(named), seen: seen ?? '' });
    expect(response.status).toBeLessThan(500);
    expect(({} as { readonly polluted?: unknown }).polluted).toBeUndefined();
    expect(filesIn(root)).toEqual(before);
  });
});

// Steps of dots, `..` and `%2e%2e`, are taken by whoever reads the address; what is left is another address.
describe('the name of a report', () => {
  test.each([
    ...['..%2F..%2Foutside', '%252e%252e', '...', 'two-heads%2F..%2F..%2F..%2Foutside', '%00'],
    ...['two-heads%00', '%2Fetc', 'C:%5C', '%', '%zz', 'nowhere', '__proto__', 'index.html', 'two-heads.'],
    ...['Two-Heads', '.straightface', '%ED%A0%80', 'x'.repeat(300), '%3Cb%3E'],
  ])('leads nowhere as %s', async (name) => {
    const { root, desk, asked } = open();
    const before = filesIn(root);
    for (const path of ofReports('GET')) {
      const response = await desk.get(path.replace(':slug', name));
      expect([path, response.status]).toEqual([path, 404]);
      expect(await response.text()).not.toContain('<b>');
    }
    for (const path of ofReports('POST'))
      expect([path, (await desk.post(path.replace(':slug', name), form)).status]).toEqual([path, 404]);
    expect([filesIn(root), asked]).toEqual([before, []]);
  });
});

test('a link that leads outside is no report, and is written through by no form', async () => {
  const { root, desk, asked } = open();
  const reports = join(root, 'content/reports');
  symlinkSync(join(root, 'outside'), join(reports, 'folder'));
  mkdirSync(join(reports, 'file'));
  symlinkSync(join(root, 'outside/report.md'), join(reports, 'file/report.md'));
  mkdirSync(join(reports, 'gone'));
  symlinkSync(join(root, 'outside/new.md'), join(reports, 'gone/report.md'));
  const before = filesIn(root);
  for (const slug of ['folder', 'file', 'gone'])
    for (const method of ['GET', 'POST'] as const)
      for (const path of ofReports(method).map((each) => each.replace(':slug', slug))) {
        const response = await (method === 'GET' ? desk.get(path) : desk.post(path, form));
        expect([method, path, response.status]).toEqual([method, path, 404]);
      }
  expect([filesIn(root), asked]).toEqual([before, []]);
});
