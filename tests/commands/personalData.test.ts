import { expect, test } from 'vitest';
import { buildSite } from '../../src/commands/buildSite.ts';
import { checkContent } from '../../src/commands/checkContent.ts';
import { join } from 'node:path';
import { readdirSync, readFileSync } from 'node:fs';
import { newFolder } from './builds.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from './contentFolder.ts';
import { listen } from './listen.ts';

const csv = twoHeadsCsv
  .split('\n')
  .map((line, index) =>
    line === '' ? line : `${line},${index === 0 ? 'Note' : index === 3 ? 'thin; jo@example.com' : ''}`,
  )
  .join('\n');

const content = (): string =>
  contentFolder({
    'shop.yaml': shop,
    'reports/two-heads/report.md': `${twoHeads()}\nAsk the hitter: +44 1632 960123.\n`,
    'reports/two-heads/shots.csv': csv,
  });

test('check warns at the place, keeps what it found to itself, and lets the report pass', () => {
  const { terminal, said } = listen();
  expect(checkContent({ contentDir: content(), only: [], json: false, terminal })).toBe(0);
  expect(said()).toMatch(
    /reports\/two-heads\/report\.md:\d+:17\n {2}warning {3}Text that may tell who somebody is \(personal-data\)/,
  );
  expect(said()).toMatch(/reports\/two-heads\/shots\.csv:4:4 {2}Note\n {2}warning {3}Text that may tell/);
  expect(said()).toContain('found     an e-mail address: jo…');
  expect(said()).not.toMatch(/example\.com|960123/);
});

test('a draft with open answers is looked through too', () => {
  const { terminal, said } = listen();
  const open = contentFolder({
    'shop.yaml': shop,
    'reports/two-heads/report.md': twoHeads((front) => front.replace('date: 2026-05-02', 'date:')),
    'reports/two-heads/shots.csv': csv,
  });
  expect(checkContent({ contentDir: open, only: [], json: false, terminal })).toBe(1);
  expect(said()).toContain('found     an e-mail address: jo…');
});

test('no file of the site has the name of a hitter, a serial number, or anything of a draft', async () => {
  const columns = ['Player,Serial No', 'Zebulon Quill,SN48151623'];
  const named = twoHeadsCsv
    .split('\n')
    .map((line, index) => {
      if (line === '') return line;
      const [heading, cells] = columns;
      const spelled = index % 2 === 0 ? cells?.replace('Quill', 'QUILL') : cells;
      return `${line},${index === 0 ? heading : index > 9 ? spelled?.replace('Zebulon', 'Ottoline') : spelled}`;
    })
    .join('\n');
  const contentDir = contentFolder({
    'shop.yaml': shop,
    'reports/two-heads/report.md': twoHeads((front) =>
      front.replace(
        'hitters: {one: {',
        'hitters: {two: {match: [Ottoline Quill], role: customer, consent: yes}, one: {match: [Zebulon Quill], ',
      ),
    ),
    'reports/two-heads/shots.csv': named,
    'reports/not-yet/report.md': twoHeads((front) =>
      front.replace('status: published', 'status: draft').replace('Two heads', 'Unripe plums'),
    ),
    'reports/not-yet/shots.csv': twoHeadsCsv,
  });
  const { terminal, said } = listen();
  const outDir = newFolder('site');
  expect((await buildSite({ contentDir, outDir, terminal })).built, said()).toBe(true);
  const files = readdirSync(outDir, { recursive: true, withFileTypes: true }).filter((entry) =>
    entry.isFile(),
  );
  expect(files.length).toBeGreaterThan(30);
  const telling = files.filter((entry) =>
    /quill|zebulon|ottoline|48151623|unripe|not-yet/i.test(
      `${entry.name} ${readFileSync(join(entry.parentPath, entry.name), 'latin1')}`,
    ),
  );
  expect(telling.map(({ name }) => name)).toEqual([]);
});

test('nothing is taken out in silence: what the shop wrote is on the page it builds', async () => {
  const { terminal } = listen();
  const contentDir = content();
  const outDir = newFolder('site');
  expect((await buildSite({ contentDir, outDir, terminal })).built).toBe(true);
  expect(readFileSync(join(outDir, 'reports/two-heads/index.html'), 'utf8')).toContain('+44 1632 960123');
});
