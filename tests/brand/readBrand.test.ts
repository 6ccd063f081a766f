import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import type { Problem } from '../../src/problems/problem.ts';
import { logosOf, type Brand } from '../../src/site/brand/brand.ts';
import { publishedLogo } from '../../src/site/brand/publishedLogo.ts';
import { openContentFolder } from '../../src/site/contentFiles.ts';
import { openContent } from '../../src/site/openContent.ts';
import { readShared } from '../../src/site/sharedFiles.ts';
import { contentFolder } from '../commands/contentFolder.ts';

const drawing = (fill: string, inner = ''): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 50"><rect width="100" height="40" fill="${fill}"/>${inner}</svg>`;
/** Neither too light for the light ground nor too dark for the dark one. */
const middling = '#9a6320';
const png = (width: number, height: number): Promise<Buffer> =>
  sharp({ create: { width, height, channels: 4, background: middling } })
    .withExif({ IFD0: { Artist: 'A. Person' } })
    .png()
    .toBuffer();

const line = ({ line, columnName, kind, severity, expected, found, cure }: Problem): string =>
  [`${line ?? ''} ${columnName ?? ''}`, severity, kind, expected, found ?? '-', cure].join(' | ');

function read(
  brand: readonly string[],
  files: Readonly<Record<string, string | Uint8Array>> = {},
): { readonly brand: Brand; readonly lines: readonly string[] } {
  const yaml = ['name: Workshop', 'brand:', ...brand.map((one) => `  ${one}`), ''].join('\n');
  const folder = openContentFolder(contentFolder({ 'shop.yaml': yaml, ...files }));
  const { brand: found, problems } = readShared(folder);
  return { brand: found, lines: problems.map(line) };
}

describe('brand: in shop.yaml', () => {
  test('is read whole', () => {
    const found = read(
      [
        'logo: logo.svg',
        'logo_dark: dark.svg',
        'accent: {light: 22508A, dark: "#9dc2ec"}',
        'site: https://workshop.example',
        'booking: https://workshop.example/visit?from=reports',
        'contact: 020 7946 0123',
      ],
      { 'logo.svg': drawing('#22508a'), 'dark.svg': drawing('#9dc2ec') },
    );
    expect(found.lines).toEqual([]);
    expect(found.brand).toMatchObject({
      logo: { width: 72, height: 36, content: { kind: 'svg' } },
      logoDark: { width: 72, height: 36 },
      accent: { light: '#22508a', dark: '#9dc2ec' },
      site: 'https://workshop.example/',
      booking: 'https://workshop.example/visit?from=reports',
      contact: '020 7946 0123',
    });
    expect(new Set(logosOf(found.brand).map(({ name }) => name)).size).toBe(2);
  });

  test('says all that is wrong with what stands there', () => {
    const { lines } = read([
      'logoo: logo.svg',
      'logo: ../logo.svg',
      'accent: {light: blue, dak: 9dc2ec}',
      'site: workshop.example',
      'booking: javascript:alert(1)',
    ]);
    expect(lines).toEqual([
      '3 brand.logoo | error | unknown-key | "logo" | logoo | Did you mean "logo"?',
      '4 brand.logo | error | value-invalid | the name of a file beside shop.yaml with the logo, as SVG or PNG | ../logo.svg | Put the file beside shop.yaml and write its name alone, such as logo.svg.',
      '5 brand.accent.light | error | value-invalid | a colour on the light ground, as six hexadecimal digits | blue | Write red, green and blue with two digits each, such as 7a3b12. With a # before them YAML needs quotes: "#7a3b12".',
      '5 brand.accent.dak | error | unknown-key | "dark" | dak | Did you mean "dark"?',
      '6 brand.site | error | value-invalid | the address of the shop’s own site, such as https://golf.example/ | workshop.example | Write the address from https:// on, as the browser shows it.',
      '7 brand.booking | error | value-invalid | where a visit is booked, such as https://golf.example/ | javascript:alert(1) | Write the address from https:// on, as the browser shows it.',
    ]);
  });

  test('names the nearest colour that links can have', () => {
    expect(read(['accent:', '  light: c98a3b', '  dark: 7a4a12']).lines).toEqual([
      '4 brand.accent.light | error | accent-too-faint | a colour with a contrast of 4.5:1 or more with the light ground #faf8f2, so that links can be read | #c98a3b, 2.7:1 | Write a16502, the nearest colour of the same hue that will do.',
      '5 brand.accent.dark | error | accent-too-faint | a colour with a contrast of 4.5:1 or more with the dark ground #16191d, so that links can be read | #7a4a12, 2.3:1 | Write a97643, the nearest colour of the same hue that will do.',
    ]);
    expect(read(['accent: {light: a16502, dark: a97643}']).lines).toEqual([]);
  });

  test.each([
    [
      'is not there',
      { 'logos.svg': drawing(middling) },
      'error | logo-missing | a file logo.svg beside shop.yaml | there: logos.svg | Did you mean logos.svg?',
    ],
    [
      'is not there, nor anything like it',
      {},
      'error | logo-missing | a file logo.svg beside shop.yaml | no SVG or PNG there | Copy logo.svg to the folder of shop.yaml, or take the line out.',
    ],
    [
      'is no drawing',
      { 'logo.svg': 'Hello' },
      'error | logo-unreadable | a drawing as SVG that says how large it is (viewBox, or width and height) | logo.svg | Save it anew from the drawing program as “plain SVG”, or as PNG.',
    ],
    [
      'is too large',
      { 'logo.svg': drawing(middling, `<desc>${'m'.repeat(100_000)}</desc>`) },
      'error | logo-too-large | at most 100 kB | logo.svg, 101 kB | Save it smaller; a drawing without pictures inside it is a few kB.',
    ],
    [
      'holds more than shapes',
      { 'logo.svg': drawing(middling, '<script>alert(1)</script><image href="https://x.example/a.png"/>') },
      'warning | logo-cleaned | a drawing of shapes and colours alone, without script, pictures inside, filters and addresses | logo.svg: script, image | Pages show the logo without these. If it looks wrong, turn them into shapes in the drawing program, or save it as PNG.',
    ],
    [
      'can hardly be seen on the dark ground',
      { 'logo.svg': drawing('#22303a') },
      'warning | logo-hard-to-see | a logo that stands out 3:1 from the dark ground #16191d | 0% of what is drawn does | Name a lighter one under logo_dark.',
    ],
    [
      'can hardly be seen on the light ground',
      { 'logo.svg': drawing('#f0e0d0') },
      'warning | logo-hard-to-see | a logo that stands out 3:1 from the light ground #faf8f2 | 0% of what is drawn does | Use a darker one, or one with a ground of its own.',
    ],
  ] as const)('says that a logo %s', (_, files, expected) => {
    expect(read(['logo: logo.svg'], files).lines).toEqual([`3 brand.logo | ${expected}`]);
  });

  test('says that a picture is none', () => {
    expect(read(['logo: logo.png'], { 'logo.png': drawing(middling) }).lines).toEqual([
      '3 brand.logo | error | logo-unreadable | a picture that is PNG by what it holds, not by its name alone | logo.png | Save it anew as PNG.',
    ]);
  });

  test('says so too where half of a logo is lost', () => {
    const words = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 50"><path fill="#22303a" d="M0 0h50v20H0z"/><path fill="${middling}" d="M50 0h40v20H50z"/></svg>`;
    expect(read(['logo: logo.svg'], { 'logo.svg': words }).lines).toEqual([
      expect.stringContaining(
        'logo-hard-to-see | a logo that stands out 3:1 from the dark ground #16191d | 40% of what is drawn does',
      ),
    ]);
  });

  test('takes a logo with a ground of its own as seen on both', () => {
    const badge = drawing('#ffffff', '<rect x="30" y="10" width="40" height="20" fill="#22303a"/>');
    expect(read(['logo: logo.svg'], { 'logo.svg': badge }).lines).toEqual([]);
  });
});

test('what content/README.md shows is right', () => {
  const readme = readFileSync(join(import.meta.dirname, '../../content/README.md'), 'utf8');
  const [, block = ''] = /```yaml\nbrand:\n([\s\S]*?)```/.exec(readme) ?? [];
  const typed = block
    .trimEnd()
    .split('\n')
    .map((one) => one.trim());
  expect(typed.length).toBeGreaterThan(3);
  expect(read(typed, { 'logo.svg': drawing(middling) }).lines).toEqual([]);
});

test('a picture is published small, whole and without what a program wrote into it', async () => {
  const { brand, lines } = read(['logo: logo.png'], { 'logo.png': await png(1200, 300) });
  expect(lines).toEqual([]);
  const [logo] = logosOf(brand);
  if (logo === undefined) throw new Error('There is no logo.');
  expect(logo).toMatchObject({ width: 144, height: 36 });
  const published = await publishedLogo(logo);
  const { width, height, exif, format } = await sharp(published).metadata();
  expect({ width, height, exif, format }).toEqual({
    width: 432,
    height: 108,
    exif: undefined,
    format: 'png',
  });
  expect(Buffer.from(published).includes('Person')).toBe(false);
});

test('a report is made anew when a logo changes', () => {
  const root = contentFolder({
    'shop.yaml': 'name: Workshop\nbrand: {logo: logo.svg}\n',
    'logo.svg': drawing(middling),
    'reports/one/report.md': '---\ntitle: One\n---\n',
  });
  const known = (): readonly string[] => {
    const keys: string[] = [];
    const cache = { has: (key: string) => (keys.push(key), false), read: () => null, write: () => undefined };
    openContent(root, [], { cache, code: 'x' }).isKnown('one');
    return keys;
  };
  const before = known();
  expect(before).toHaveLength(1);
  expect(known()).toEqual(before);
  writeFileSync(join(root, 'logo.svg'), drawing('#9a6321'));
  expect(known()).not.toEqual(before);
});
