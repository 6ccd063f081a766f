import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';
import { atDesk, seenIn } from './atDesk.ts';
import { sentBy } from './form.ts';

const csv = (text: string, name: string): File => new File([text], name, { type: 'text/csv' });

const rowsIn = (page: string): readonly string[] =>
  [...parseHTML(page).document.querySelectorAll('.rows li')].map(({ textContent }) =>
    textContent.replace(/\s+/g, ' ').trim(),
  );

describe('files that are dropped on the desk', () => {
  test('become a draft by the code of the command, and the page says what was understood', async () => {
    const root = contentFolder({ 'shop.yaml': shop });
    const { get, post } = atDesk(root);
    const response = await post('/desk/files/', { files: csv(twoHeadsCsv, 'two_heads.csv') });
    expect([response.status, response.headers.get('location')]).toEqual([
      303,
      '/desk/reports/two-heads/?new',
    ]);
    expect(readFileSync(join(root, 'reports/two-heads/two_heads.csv'), 'utf8')).toBe(twoHeadsCsv);
    const page = await (await get('/desk/reports/two-heads/?new')).text();
    expect(page).toContain('A draft was made of your files.');
    expect(parseHTML(page).document.querySelector('.understood')?.textContent).toContain('Alder 6, Birch 6');
    expect(rowsIn(await (await get('/desk/')).text())).toEqual(['Two heads Draft · 11 answers to give']);
  });

  test('without units are asked for them, and nothing else is held against the file', async () => {
    const { get, post } = atDesk(contentFolder({ 'shop.yaml': shop }));
    await post('/desk/files/', { files: csv(twoHeadsCsv.replace('Carry (yd)', 'CARRY dist.'), 'a.csv') });
    const { document } = parseHTML(await (await get('/desk/reports/a/?new')).text());
    expect(document.querySelector('.problems')).toBeNull();
    const asked = [...document.querySelectorAll('section[aria-labelledby="must"] input')];
    expect(
      asked.filter((one) => one.getAttribute('name') === 'answer.columns.carry.unit').length,
    ).toBeGreaterThan(1);
    expect(rowsIn(await (await get('/desk/')).text())).toEqual(['A Draft · 12 answers to give']);
  });

  test('with a misread cell become a draft too, which leads to leaving its shot out', async () => {
    const { get, post } = atDesk(contentFolder({ 'shop.yaml': shop }));
    await post('/desk/files/', { files: csv(twoHeadsCsv.replace('226.1', '2O6.1'), 'a.csv') });
    const page = await (await get('/desk/reports/a/?new')).text();
    expect(page).toContain('Leave the shot out, under “Shots”; the file stays as it was exported.');
    expect(page).not.toContain('exclusions');
    expect(parseHTML(page).document.querySelector('.misread a')?.getAttribute('href')).toBe(
      '/desk/reports/a/shots/',
    );
  });

  test('may have longer names than a disk takes', async () => {
    const root = contentFolder({ 'shop.yaml': shop });
    const { post } = atDesk(root);
    const response = await post('/desk/files/', { files: csv(twoHeadsCsv, `${'ä'.repeat(300)}.csv`) });
    expect(response.status).toBe(303);
    const [slug = ''] = readdirSync(join(root, 'reports'));
    const sheets = readdirSync(join(root, 'reports', slug)).filter((name) => name.endsWith('.csv'));
    expect(sheets).toEqual([`${'ä'.repeat(100)}.csv`]);
  });

  test('of one session go together', async () => {
    const root = contentFolder({ 'shop.yaml': shop });
    const rows = twoHeadsCsv.trim().split('\n');
    const of = (head: string): string =>
      [rows[0], ...rows.filter((row) => row.includes(head)), ''].join('\n');
    const body = [csv(of('Alder'), 'alder.csv'), csv(of('Birch'), 'birch.csv')];
    const { app, cookie, formToken } = atDesk(root);
    const form = new FormData();
    form.append('token', formToken);
    for (const file of body) form.append('files', file);
    const response = await app.request('http://localhost:4321/desk/files/', {
      method: 'POST',
      body: form,
      headers: { cookie, origin: 'http://localhost:4321' },
    });
    expect(response.status).toBe(303);
    expect(readdirSync(join(root, 'reports'))).toHaveLength(1);
  });

  test('never overwrite a report of the same name', async () => {
    const root = contentFolder({
      'shop.yaml': shop,
      'reports/two-heads/report.md': twoHeads(),
      'reports/two-heads/shots.csv': twoHeadsCsv,
    });
    const { post } = atDesk(root);
    const response = await post('/desk/files/', {
      files: csv(`${twoHeadsCsv}13,Alder,230.0\n`, 'two_heads.csv'),
    });
    expect(response.headers.get('location')).toBe('/desk/reports/two-heads-2/?new');
    expect(readFileSync(join(root, 'reports/two-heads/report.md'), 'utf8')).toBe(twoHeads());
  });

  test.each(['../../outside.csv', '/tmp/outside.csv', '..\\..\\outside.csv', '.hidden.csv'])(
    'lie beside their report whatever path they name: %s',
    async (name) => {
      const root = contentFolder({ 'shop.yaml': shop });
      const { post } = atDesk(root);
      const response = await post('/desk/files/', { files: csv(twoHeadsCsv, name) });
      expect(response.status).toBe(303);
      const [slug = ''] = readdirSync(join(root, 'reports'));
      const [session = '', ...more] = readdirSync(join(root, 'reports', slug)).filter(
        (file) => file !== 'report.md',
      );
      expect(more).toEqual([]);
      expect(session).toMatch(/\.csv$/);
      expect(session).not.toMatch(/[/\\]|^\./);
      expect(existsSync(join(root, '../outside.csv'))).toBe(false);
    },
  );

  test('that are no text are refused, and the page says why', async () => {
    const root = contentFolder({ 'shop.yaml': shop });
    const { post } = atDesk(root);
    const photo = new File([new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 3])], '<b>bay</b>.png');
    const page = await (await post('/desk/files/', { files: photo })).text();
    expect(page).toContain('No report was made of these files.');
    const { document } = parseHTML(page);
    const said = document.querySelector('pre.said')?.textContent ?? '';
    expect(said).toContain('not-text');
    // Where the files lay meanwhile is nothing that a person could look into.
    expect(said).not.toContain(tmpdir());
    expect(document.querySelectorAll('b')).toHaveLength(0);
    expect(existsSync(join(root, 'reports'))).toBe(false);
  });

  test('are asked for where none was chosen', async () => {
    const { post } = atDesk(contentFolder({ 'shop.yaml': shop }));
    const page = await (await post('/desk/files/', { files: new File([], '') })).text();
    expect(page).toContain('Choose the files of a session first.');
  });
});

describe('files that wait in the inbox', () => {
  test('are listed, and become a draft', async () => {
    const root = contentFolder({ 'shop.yaml': shop, 'inbox/two_heads.csv': twoHeadsCsv });
    const { get, post } = atDesk(root);
    const { document } = parseHTML(await (await get('/desk/')).text());
    const waiting = [...document.querySelectorAll('input[name=names]')].map((box) =>
      box.getAttribute('value'),
    );
    expect(waiting).toEqual(['two_heads.csv']);
    const response = await post('/desk/waiting/', { names: 'two_heads.csv' });
    expect(response.headers.get('location')).toBe('/desk/reports/two-heads/?new');
    expect(readdirSync(join(root, 'inbox'))).toEqual([]);
  });

  test('are those of the inbox alone', async () => {
    const root = contentFolder({ 'shop.yaml': shop, 'elsewhere.csv': twoHeadsCsv });
    const { post } = atDesk(root);
    const page = await (await post('/desk/waiting/', { names: '../elsewhere.csv' })).text();
    expect(page).toContain('None of these files waits in the inbox any more.');
    expect(existsSync(join(root, 'elsewhere.csv'))).toBe(true);
  });
});

describe('the list of reports', () => {
  test('begins with what is at work, then the newest, and says what each still needs', async () => {
    const later = (front: string): string =>
      front.replace('date: 2026-05-02', 'date: 2026-06-02').replace('title: Two heads', 'title: Later heads');
    const wrong = (front: string): string =>
      front.replace('status: published', 'status: draft').replace('sold_here: used', 'sold_here: perhaps');
    const { get } = atDesk(
      contentFolder({
        'shop.yaml': shop,
        'reports/early/report.md': twoHeads(),
        'reports/early/shots.csv': twoHeadsCsv,
        'reports/later/report.md': twoHeads(later),
        'reports/later/shots.csv': twoHeadsCsv,
        'reports/wrong/report.md': twoHeads(wrong),
        'reports/wrong/shots.csv': twoHeadsCsv,
      }),
    );
    const rows = rowsIn(await (await get('/desk/')).text());
    expect(rows.map((row) => row.replace(/ · \d things? to know/, ''))).toEqual([
      'Two heads Draft · hit 2026-05-02 · 1 thing to put right',
      'Later heads Published · hit 2026-06-02 · nothing open',
      'Two heads Published · hit 2026-05-02 · nothing open',
    ]);
  });
});

describe('the form of the shop', () => {
  test('begins a file where there is none', async () => {
    const root = contentFolder({});
    const { get, post } = atDesk(root);
    expect(await (await get('/desk/')).text()).toContain('Say who you are first');
    const page = await (await get('/desk/shop/')).text();
    expect(seenIn(page)).toBe('');
    await post('/desk/shop/', {
      ...sentBy(page),
      'answer.name': "Ann's: the workshop",
      'answer.interests.paid_by': 'the shop',
    });
    expect(readFileSync(join(root, 'shop.yaml'), 'utf8')).toBe(
      "# yaml-language-server: $schema=.schema/shop.json\nschema: 1\nname: 'Ann''s: the workshop'\ninterests:\n  paid_by: the shop\n",
    );
    expect(await (await get('/desk/')).text()).not.toContain('Say who you are first');
  });

  test('edits one in its own lines, and is not fooled by a file that was changed', async () => {
    const text = '# Ours.\nname: Example # as on the door\nunits: yards\n';
    const root = contentFolder({ 'shop.yaml': text });
    const { get, post } = atDesk(root);
    const page = await (await get('/desk/shop/')).text();
    expect(page).toContain('units');
    await post('/desk/shop/', { ...sentBy(page), 'answer.name': 'Example Two' });
    expect(readFileSync(join(root, 'shop.yaml'), 'utf8')).toBe(
      text.replace('name: Example', 'name: Example Two'),
    );
    const refused = await post('/desk/shop/', { ...sentBy(page), 'answer.name': 'Example Three' });
    const again = await refused.text();
    expect(again).toContain('Nothing was written.');
    expect(again).toContain('value="Example Three"');
    expect(again).toContain('In the file now: Example Two.');
    expect(readFileSync(join(root, 'shop.yaml'), 'utf8')).toContain('Example Two');
  });
});

describe('the build', () => {
  test('says where the site lies, and what was said where there is none', async () => {
    const root = contentFolder({ 'shop.yaml': shop });
    const done = atDesk(root);
    expect(await (await done.post('/desk/build/', {})).text()).toContain(
      'Your site is built. It lies in /somewhere.',
    );
    const failed = atDesk(root, {
      build: () => Promise.resolve({ built: false, said: '1 error <here>', outDir: '/somewhere' }),
    });
    const page = await (await failed.post('/desk/build/', {})).text();
    expect(page).toContain('Your site was not built.');
    expect(page).toContain('1 error &lt;here&gt;');
  });
});
