import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { build, foldersFor } from './builds.ts';
import { contentFolder, twoHeads, twoHeadsCsv } from './contentFolder.ts';

const logo = (fill: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 50"><script>alert(1)</script><rect width="100" height="25" fill="${fill}"/></svg>`;

const shop = [
  'name: Example Golf Workshop',
  'address: https://golf.example/tests/',
  'contact: corrections@golf.example',
  'brand:',
  '  logo: logo.svg',
  '  logo_dark: dark.svg',
  '  accent: {light: 8a4b08, dark: e0a860}',
  '  site: https://www.workshop.example/',
  '  booking: https://workshop.example/visit?a=1&b=2',
  '  contact: +44 20 7946 0123',
  '',
].join('\n');

const pages = [
  'index.html',
  'about/index.html',
  'method/index.html',
  '404.html',
  'reports/two/index.html',
  'reports/two/sheet/index.html',
];

test('what is the shop’s own reaches every page, the edition in one file and the mails, and asks no other host', () => {
  const content = contentFolder({
    'shop.yaml': shop,
    'logo.svg': logo('#8a4b08'),
    'dark.svg': logo('#e0a860'),
    'reports/two/report.md': twoHeads(),
    'reports/two/shots.csv': twoHeadsCsv,
  });
  const folders = foldersFor(content);
  const run = build(folders);
  expect(run.status, run.said).toBe(0);
  expect(run.said).toContain('logo.svg: script');
  const read = (file: string): string => readFileSync(join(folders.out, file), 'utf8');
  const files = readdirSync(join(folders.out, 'brand'));
  expect(files.map((file) => file.replace(/^[0-9a-f]{12}/, '')).toSorted()).toEqual(['.svg', '.svg']);
  for (const file of files) expect(read(`brand/${file}`)).not.toMatch(/script|alert|url\(/);
  const inFolder = (address: string | null | undefined): boolean =>
    existsSync(join(folders.out, (address ?? '').replace(/^\/tests\//, '')));

  for (const file of pages) {
    const { document } = parseHTML(read(file));
    const image = document.querySelector('header .brand img');
    expect(image?.getAttribute('alt'), file).toBe('Example Golf Workshop');
    expect([image?.getAttribute('width'), image?.getAttribute('height')], file).toEqual(['72', '36']);
    const dark = document.querySelector('header .brand source');
    const addresses = [image?.getAttribute('src'), dark?.getAttribute('srcset')];
    expect(
      addresses.every((address) => address?.startsWith('/tests/brand/')),
      file,
    ).toBe(true);
    expect(addresses.map(inFolder), file).toEqual([true, true]);
    expect(document.querySelector('header .brand')?.getAttribute('href')).toBe('/tests/');
    const links = [...document.querySelectorAll('footer .shop-links a')];
    expect(
      links.map((link) => [link.getAttribute('href'), link.textContent]),
      file,
    ).toEqual([
      ['tel:+442079460123', '+44\u00a020\u00a07946\u00a00123'],
      ['https://www.workshop.example/', 'Our own site: workshop.example'],
      ['https://workshop.example/visit?a=1&b=2', 'Book a time'],
    ]);
    expect(document.querySelectorAll('[style]').length).toBe(0);
    const policy = (page: string): string =>
      /content-security-policy" content="([^"]*)"/.exec(page)?.[1] ?? '';
    const styles = [...document.querySelectorAll('style')].map(({ textContent }) => textContent ?? '');
    expect(
      styles.filter((css) => css.includes('--link: #8a4b08')),
      file,
    ).toHaveLength(1);
    for (const css of styles)
      expect(policy(read(file)), file).toContain(
        `'sha256-${createHash('sha256').update(css).digest('base64')}'`,
      );
    const butStyles = (page: string): string => policy(page).replace(/style-src [^;]*/, '');
    expect(butStyles(read(file)), file).toBe(butStyles(read('index.html')));
  }

  const { document: alone } = parseHTML(read('reports/two/report.html'));
  expect(alone.querySelector('.brand img')?.getAttribute('src')).toMatch(/^data:image\/svg\+xml;base64,/);
  expect(alone.querySelector('.brand source')?.getAttribute('srcset')).toMatch(
    /^data:image\/svg\+xml;base64,/,
  );
  expect(alone.querySelector('style')?.textContent).toContain('--link: #8a4b08');
  expect(alone.querySelectorAll('link[href]:not([rel=canonical]), script[src]').length).toBe(0);

  expect(read('reports/two/email.html')).toContain('<a href="https://www.workshop.example/"');
  expect(read('reports/two/email.txt')).toContain('Our own site:\nhttps://www.workshop.example/\n');
  // Charts keep their colours: they are made to be told apart.
  expect(read('reports/two/charts/shots.svg')).not.toMatch(/8a4b08|e0a860/);

  writeFileSync(join(content, 'logo.svg'), logo('#8a4b09'));
  expect(build(folders).status).toBe(0);
  const changed = parseHTML(read('reports/two/index.html')).document;
  expect(inFolder(changed.querySelector('header .brand img')?.getAttribute('src'))).toBe(true);
  expect(readdirSync(join(folders.out, 'brand')).filter((file) => !files.includes(file))).toHaveLength(1);
});

test('a shop without a brand has its name at the head, and no file more', () => {
  const content = contentFolder({
    'shop.yaml': 'name: Example Golf Workshop\n',
    'reports/two/report.md': twoHeads(),
    'reports/two/shots.csv': twoHeadsCsv,
  });
  const folders = foldersFor(content);
  expect(build(folders).status).toBe(0);
  const { document } = parseHTML(readFileSync(join(folders.out, 'index.html'), 'utf8'));
  expect(document.querySelector('header .brand')?.textContent?.trim()).toBe('Example Golf Workshop');
  expect(document.querySelectorAll('img, .shop-links')).toHaveLength(0);
  expect(existsSync(join(folders.out, 'brand'))).toBe(false);
});

test('an accent that cannot be read stops the build', () => {
  const content = contentFolder({
    'shop.yaml': 'name: Example Golf Workshop\nbrand: {accent: {light: c98a3b}}\n',
    'reports/two/report.md': twoHeads(),
    'reports/two/shots.csv': twoHeadsCsv,
  });
  const run = build(foldersFor(content));
  expect(run.status).toBe(1);
  expect(run.said).toContain('Write a16502, the nearest colour of the same hue that will do.');
});
