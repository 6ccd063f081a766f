import { createHash } from 'node:crypto';
import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { readPage } from '../../src/kit/htmlElements.ts';
import { concernedInOneFile, oneFile, oneFileLimit, type SiteFiles } from '../../src/kit/oneFile.ts';

const page =
  '<!doctype html><html><head><meta http-equiv="content-security-policy" content="default-src \'self\'"><link rel="preload" as="font" href="/f.woff2" crossorigin><link rel="stylesheet" href="/s.css"></head>' +
  '<body><a href="/x/">There</a> <a href="#y">Here</a></body></html>';
const ownFont = "@font-face{font-family:F as G;src:local('G');size-adjust:90%}";
const css =
  "@font-face{font-family:F;font-display:optional;src:url(/f.woff2) format('woff2'),url(/f.woff) format('woff')}" +
  `${ownFont}body{color:red}`;
const files = (font: number) => ({
  text: (address: string) => (address === '/s.css' ? css : null),
  bytes: (address: string) => (address === '/f.woff2' ? new Uint8Array(font) : null),
});

const fileOf = (html: string, held: SiteFiles, origin: string | null): string =>
  oneFile(readPage(html, concernedInOneFile), held, origin);

test('one file holds its styles and fonts, and its own policy', () => {
  const file = fileOf(page, files(30), 'https://golf.example');
  expect(file).toContain('@font-face{font-family:F;src:url(data:font/woff2;base64,');
  expect(file).not.toContain('local(');
  expect(file).not.toMatch(/f\.woff|s\.css|'self'/);
  expect(file).toMatch(/style-src 'sha256-[A-Za-z0-9+/=]{44}'/);
  expect(file).toContain('<a href="https://golf.example/x/">There</a> <a href="#y">Here</a>');
});

test('one file takes styles that stand in the page as well, in their order, and leaves those of drawings', () => {
  const inPage = page
    .replace('</head>', `<style>${css}p > a{color:blue}</style></head>`)
    .replace('</body>', '<svg><style>.b{fill:red}</style></svg></body>');
  const file = fileOf(inPage, files(30), null);
  const { document } = parseHTML(file);
  const styles = [...document.querySelectorAll('style')].map(({ textContent }) => textContent ?? '');
  expect(styles).toHaveLength(2);
  expect(styles[0]).toMatch(/body\{color:red\}\n@font-face[^]*p > a\{color:blue\}$/);
  expect(styles[0]).not.toContain('/f.woff2');
  expect(styles[1]).toBe('.b{fill:red}');
  const hash = createHash('sha256')
    .update(styles[0] ?? '')
    .digest('base64');
  expect(file).toContain(`style-src 'sha256-${hash}'`);
});

test('one file leaves out fonts that would make it too large, and links that lead nowhere', () => {
  const file = fileOf(page, files(oneFileLimit), null);
  expect(Buffer.byteLength(file)).toBeLessThan(oneFileLimit);
  expect(file.match(/@font-face/g)).toHaveLength(1);
  expect(file).toContain(`${ownFont}body{color:red}`);
  expect(file).toContain('<span>There</span> <a href="#y">Here</a>');
});

test('one file with more drawings than it may hold: the largest once, as for phones; then the largest not at all', () => {
  const drawing = (size: number): string => `<svg>${'m'.repeat(size)}</svg>`;
  const figure = (name: string, size: number): string =>
    `<figure>${name}<div class="chart-wide">${drawing(size)}</div><div class="chart-narrow">${drawing(size)}</div></figure>`;
  const of = (...sizes: readonly number[]): string =>
    fileOf(
      page.replace(
        '<a href="/x/">',
        `${sizes.map((size, index) => figure(`F${index}`, size)).join('')}<a href="/x/">`,
      ),
      files(30),
      null,
    );
  const fits = of(20_000, 60_000);
  expect(fits).not.toContain('alone"');
  const twice = of(20_000, 275_000, 30_000);
  expect(Buffer.byteLength(twice)).toBeLessThan(oneFileLimit);
  expect(twice).toMatch(/F1<div class="chart-narrow alone"><svg>m+<\/svg><\/div><\/figure>/);
  expect(twice).toContain('.figure .chart-narrow.alone{display:block}');
  expect(twice.match(/class="chart-wide"/g)).toHaveLength(2);
  const huge = of(20_000, 400_000, 300_000, 90_000);
  expect(Buffer.byteLength(huge)).toBeLessThan(oneFileLimit);
  expect(huge).toContain('F1<p>The drawing of so many shots is too large for one file.');
  expect(huge).toMatch(/F2<div class="chart-narrow alone">/);
});

/** What Astro writes of a title: marks and brackets stay as they are in a value, and are escaped in text. */
test.each([
  "Alder <!--other units--> or <a Birch'",
  'Alder --><!--/other units--> or Birch',
  '<link rel="stylesheet" href="/s.css">',
  '<meta http-equiv="content-security-policy" content="x">',
  '<div class="chart-wide"></div><div class="chart-narrow"></div><img src="/f.woff2">',
  '$& $1 </head><script type="module">',
])('one file of a report with the title %s is whole', (title) => {
  const value = title.replaceAll('&', '&#38;').replaceAll('"', '&#34;');
  const text = value.replaceAll('<', '&lt;').replaceAll('>', '&gt;');
  const file = fileOf(
    page
      .replace('<head>', () => `<head><title>${text}</title><meta name="description" content="${value}">`)
      .replace(
        '<body>',
        () =>
          `<body><h1 aria-label="${value}">${text}</h1><!--other units--><p>metres</p><!--/other units--><p>The answer</p><!--other units--><p>${text}</p><!--/other units-->`,
      )
      .replace('<a href="/x/">', () => `<a href="/x/" title="${value}">`),
    files(30),
    'https://golf.example',
  );
  const { document } = parseHTML(file);
  expect(document.title).toBe(title);
  expect(document.querySelector('h1')?.textContent).toBe(title);
  expect(document.querySelector('h1')?.getAttribute('aria-label')).toBe(title);
  expect([...document.querySelectorAll('p')].map(({ textContent }) => textContent)).toEqual(['The answer']);
  expect(document.querySelector('a')?.getAttribute('href')).toBe('https://golf.example/x/');
  expect(document.querySelector('style')?.textContent).toContain('body{color:red}');
  expect(
    document
      .querySelectorAll('meta[http-equiv]')[0]
      ?.getAttribute('content')
      ?.startsWith("default-src 'none'; font-src data:; style-src 'sha256-"),
  ).toBe(true);
  expect(document.querySelectorAll('link, script, img')).toHaveLength(0);
});

const withPictures = page.replace(
  '<a href="/x/">',
  '<img src="pictures/a.webp" alt="A &#34;mat&#34;" width="4" height="3"><img src="pictures/b.webp" alt="A net"><a href="/x/">',
);

test('one file holds its pictures, and its policy allows no others', () => {
  const file = fileOf(
    withPictures,
    { ...files(30), bytes: (address) => (address === 'pictures/a.webp' ? new Uint8Array([1, 2, 3]) : null) },
    null,
  );
  expect(file).toContain(
    '<img src="data:image/webp;base64,AQID" alt="A &#34;mat&#34;" width="4" height="3"><span>A net</span>',
  );
  expect(file).toContain('; img-src data:; ');
  expect(fileOf(page, files(30), null)).not.toContain('img-src');
});

test('pictures that would make one file too large give way to their words, the largest first', () => {
  const sizes: Readonly<Record<string, number>> = { 'pictures/a.webp': 280_000, 'pictures/b.webp': 200_000 };
  const file = fileOf(
    withPictures,
    { ...files(30), bytes: (address) => new Uint8Array(sizes[address] ?? 30) },
    null,
  );
  expect(Buffer.byteLength(file)).toBeLessThan(oneFileLimit);
  expect(file).toContain('<span>A &quot;mat&quot;</span><img src="data:image/webp;base64,');
});

const inWidths = page.replace(
  '<a href="/x/">',
  '<picture><source type="image/webp" srcset="pictures/a-480.webp 480w, pictures/a-960.webp 960w, pictures/a-1440.webp 1440w" sizes="100vw"><img src="pictures/a-960.jpg" alt="A mat" width="1440" height="90"></picture>' +
    '<picture><source media="screen and (prefers-color-scheme: dark)" srcset="/brand/d.svg" width="9" height="4"><img src="/brand/l.svg" alt="Shop" width="9" height="4"></picture><a href="/x/">',
);

test('of a picture in several widths one file holds one, of a logo both', () => {
  const held: Readonly<Record<string, Uint8Array>> = {
    'pictures/a-480.webp': new Uint8Array([1]),
    'pictures/a-960.webp': new Uint8Array([2]),
    'pictures/a-1440.webp': new Uint8Array([3]),
    'pictures/a-960.jpg': new Uint8Array([4]),
    '/brand/d.svg': new Uint8Array([5]),
    '/brand/l.svg': new Uint8Array([6]),
  };
  const file = fileOf(inWidths, { ...files(30), bytes: (address) => held[address] ?? null }, null);
  expect(file).toContain(
    '<picture><img src="data:image/webp;base64,Ag==" alt="A mat" width="1440" height="90"></picture>' +
      '<picture><source media="screen and (prefers-color-scheme: dark)" srcset="data:image/svg+xml;base64,BQ==" width="9" height="4">' +
      '<img src="data:image/svg+xml;base64,Bg==" alt="Shop" width="9" height="4"></picture>',
  );
  expect(file).toContain('; img-src data:; ');
});

test('a picture in several widths that is too large, or not there, gives way to its words as a whole', () => {
  const tooLarge = (address: string): Uint8Array | null =>
    address === '/brand/l.svg'
      ? new Uint8Array(30)
      : address.startsWith('pictures/')
        ? new Uint8Array(oneFileLimit)
        : null;
  const file = fileOf(inWidths, { ...files(30), bytes: tooLarge }, null);
  expect(file).toContain('<body><span>A mat</span><picture><img src="data:image/svg+xml;base64,');
  const none = fileOf(inWidths, { ...files(30), bytes: () => null }, null);
  expect(none).toContain('<body><span>A mat</span><span>Shop</span><span>There</span>');
});

test('a page without a content policy is no page of ours', () => {
  expect(() => fileOf('<!doctype html><title>x</title>', files(30), null)).toThrow(
    'The page has no content security policy.',
  );
});
