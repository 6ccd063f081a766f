import { elementsOf } from './xmlElements.ts';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { altText } from '../../src/kit/altText.ts';
import { encodePng } from '../../src/kit/encodePng.ts';
import { chartForms, exportedPictures } from '../../src/kit/exportForms.ts';
import { wholeHeadline } from '../../src/kit/headline.ts';
import { kitOf } from '../../src/kit/kitOf.ts';
import { pictureForms } from '../../src/kit/pictureForm.ts';
import { pictureNotes } from '../../src/kit/pictureNotes.ts';
import { pictureOf } from '../../src/kit/pictureOf.ts';
import { picturesOf } from '../../src/kit/picturesOf.ts';
import type { Report } from '../../src/kit/report.ts';
import { textOf } from '../../src/kit/said.ts';
import { standingWords } from '../../src/prose/english/kit/standing.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { exportedPng } from '../../src/site/exportedFiles.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';
import { reports } from './content.ts';
import { internationalText, pngChunks } from './pngChunks.ts';

const report = reports.find(({ source }) => source.slug === 'three-irons-after-work');
if (report === undefined) throw new Error('no report');

describe.each(chartForms)('the PNG of the first chart as %s', async (form) => {
  const picture = picturesOf(report).find((one) => one.form === form);
  const figure = kitOf(report).offered.find((item) => item.figure.id === picture?.figure)?.figure;
  if (picture === undefined || figure === undefined) throw new Error(form);
  const png = await exportedPng(report, picture);
  const chunks = pngChunks(png);

  test('has its chunks in an order that the standard allows', () => {
    const types = chunks.map(({ type }) => type);
    expect(types).toEqual([
      'IHDR',
      'pHYs',
      ...types.filter((type) => type === 'iTXt'),
      'PLTE',
      'IDAT',
      'IEND',
    ]);
    expect(png.length).toBeLessThan(200_000);
  });

  test('has a size on paper', async () => {
    const data = chunks.find(({ type }) => type === 'pHYs')?.data ?? Buffer.alloc(9);
    const { pixelsPerInch, raster } = pictureForms[form];
    expect([data.readUInt32BE(0), data.readUInt32BE(4), data[8]]).toEqual([
      Math.round(pixelsPerInch / 0.0254),
      Math.round(pixelsPerInch / 0.0254),
      1,
    ]);
    const { density, width, channels, hasAlpha } = await sharp(png).metadata();
    expect({ density, width, channels, hasAlpha }).toEqual({
      density: pixelsPerInch,
      width: raster,
      channels: 3,
      hasAlpha: false,
    });
  });

  test('says what it is, of whom, on what terms, what it must not be printed without, and where from', async () => {
    const texts = Object.fromEntries(chunks.filter(({ type }) => type === 'iTXt').map(internationalText));
    const { ['XML:com.adobe.xmp']: packet = '', ...plain } = texts;
    expect(plain).toEqual({
      Title: textOf(wholeHeadline(report, figure)),
      Description: altText(report, figure),
      Author: 'Example Golf Workshop',
      Copyright: expect.stringContaining('Charts may be reprinted unchanged'),
      Warning: expect.stringMatching(/^Invented data.*Corrected 2 April 2026/),
      Comment: 'example.test/reports/three-irons-after-work, version 1.0.1 of 2 April 2026.',
    });
    for (const keyword of Object.keys(texts)) expect(keyword).toMatch(/^[ -~]{1,79}$/);
    const { xmp } = await sharp(png).metadata();
    expect(xmp?.toString('utf8')).toBe(packet);
    const read = elementsOf(packet);
    expect(read('dc:title')).toBe(plain['Title']);
    expect(read('Iptc4xmpCore:AltTextAccessibility')).toBe(plain['Description']);
    expect(read('photoshop:Credit')).toBe(plain['Author']);
    expect(read('dc:rights')).toBe(plain['Copyright']);
    expect(read('photoshop:Instructions')).toBe(plain['Warning']);
    expect(read('dc:source')).toBe(plain['Comment']);
  });
});

function loaded(shopYaml: string): Report {
  const folder = contentFolder({
    'shop.yaml': shopYaml,
    'reports/two/report.md': twoHeads(),
    'reports/two/shots.csv': twoHeadsCsv,
  });
  const [one] = loadSite(folder).reports;
  if (one === undefined) throw new Error('no report');
  return one;
}

test('a licence for charts stands in their files, signs of markup as they are', () => {
  const one = loaded(`${shop}reuse: {licence_charts: CC-BY-4.0, credit: "A <b> & B"}\n`);
  const [first] = kitOf(one).offered;
  if (first === undefined) throw new Error('no chart');
  const texts = new Map(
    pictureNotes(one, first.figure, pictureOf(one, first.figure, 'wide')).map(({ keyword, text }) => [
      keyword,
      text,
    ]),
  );
  expect(texts.get('Author')).toBe('A <b> & B');
  expect(texts.get('Copyright')).toBe('A <b> & B. CC-BY-4.0');
  expect(texts.get('Warning') ?? '').toBe(standingWords(one.source));
  const packet = texts.get('XML:com.adobe.xmp') ?? '';
  expect(packet).toContain(
    '<xmpRights:WebStatement>https://spdx.org/licenses/CC-BY-4.0</xmpRights:WebStatement>',
  );
  expect(packet).toContain('A &lt;b&gt; &amp; B');
});

test('a site makes the wide picture of each chart and the phone one of the first; all forms in both units where asked', () => {
  const plain = picturesOf(loaded(shop));
  const [first] = plain;
  expect(plain.filter(({ form }) => form === 'phone').map(({ figure }) => figure)).toEqual([first?.figure]);
  expect(new Set(plain.map(({ units }) => units))).toEqual(new Set(['yards']));
  const all = loaded(`${shop}exports: [phone, other-units]\n`);
  const charts = kitOf(all).offered.length;
  expect(charts).toBeGreaterThan(2);
  const made = picturesOf(all);
  expect(made).toHaveLength(charts * 4);
  expect(new Set(made.map(({ name }) => name)).size).toBe(made.length);
  // Whatever is listed can be made, or is a form of the first chart alone.
  const listed = exportedPictures('apart', { own: 'yards', choices: ['phone'], leads: false });
  expect(listed.map(({ form }) => form)).toEqual([...chartForms]);
});

test('PNG: a drawing without ground keeps what shows through (ISO/IEC 15948, 11.3.1.1)', async () => {
  // Nothing; red that covers half, multiplied by it; blue that covers all; half of a grey.
  const rgba = Uint8Array.from([0, 0, 0, 0, 128, 0, 0, 128, 0, 0, 255, 255, 40, 40, 40, 80]);
  const png = encodePng({ width: 4, height: 1, rgba });
  expect(pngChunks(png).map(({ type }) => type)).toEqual(['IHDR', 'PLTE', 'tRNS', 'IDAT', 'IEND']);
  const { data, info } = await sharp(png).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  expect(info.channels).toBe(4);
  expect([...data.subarray(3, 4)]).toEqual([0]);
  expect([...data.subarray(4)]).toEqual([255, 0, 0, 128, 0, 0, 255, 255, 128, 128, 128, 80]);
});
