import { Resvg } from '@resvg/resvg-js';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { cardWords } from '../../src/kit/cardWords.ts';
import { kitOf } from '../../src/kit/kitOf.ts';
import { leadForms } from '../../src/kit/exportForms.ts';
import { leadPicture } from '../../src/kit/leadPicture.ts';
import type { Report } from '../../src/kit/report.ts';
import { escapeXml } from '../../src/prose/escapeXml.ts';
import { encodePng } from '../../src/kit/encodePng.ts';
import { onClearGround } from '../../src/kit/clearGround.ts';
import { fontFile, fontNames } from '../../src/site/fontFiles.ts';
import { printedSvg } from '../../src/site/printedSvg.ts';
import { drawPixels } from '../../src/site/rasters.ts';
import { talkative } from './cardReports.ts';
import { reports } from './content.ts';

const [report] = reports;
if (report === undefined) throw new Error('no report');
const some = [...reports, talkative];

function fileOf(one: Report, form: (typeof leadForms)[number]): Uint8Array {
  const picture = leadPicture(one, form);
  if (picture.kind === 'outlined-svg') return Buffer.from(printedSvg(picture.svg, picture.widthMm));
  const pixels = drawPixels(picture.svg, picture.width);
  return encodePng(picture.kind === 'png' ? pixels : onClearGround(pixels, picture.on));
}

/** As the renderer draws it by itself, at the width of a chart: our own way with letters moves them by parts of a pixel. */
function rendered(svg: string, fontFiles: string[]) {
  const { width, height, pixels } = new Resvg(svg, {
    fitTo: { mode: 'width', value: 768 },
    font: { fontFiles, loadSystemFonts: false, defaultFontFamily: 'Source Sans 3' },
  }).render();
  return { width, height, pixels };
}

describe.each(some.map((one) => [one.source.slug, one] as const))('%s', (_, one) => {
  test.each(['square', 'upright', 'video', 'lower-third'] as const)(
    '%s is a PNG under 200 kB',
    async (form) => {
      const bytes = fileOf(one, form);
      expect(bytes.length).toBeLessThan(200_000);
      expect((await sharp(bytes).metadata()).format).toBe('png');
    },
  );

  test('a lower third lets everything through but its band, and has no half-clear edge', async () => {
    const picture = leadPicture(one, 'lower-third');
    if (picture.kind !== 'clear-png') throw new Error(picture.kind);
    const { data, info } = await sharp(fileOf(one, 'lower-third'))
      .ensureAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect([info.width, info.height]).toEqual([1920, 1080]);
    const { left, top } = picture.on;
    let wrong = 0;
    for (let y = 0; y < 1080; y += 1) {
      for (let x = 0; x < 1920; x += 1) {
        const inside = x >= left && x < left + picture.width && y >= top && y < top + picture.height;
        if (data[4 * (y * 1920 + x) + 3] !== (inside ? 255 : 0)) wrong += 1;
      }
    }
    expect(wrong).toBe(0);
  });

  test('a print needs no font, and draws the pixels of the chart that it was made from', async () => {
    const picture = leadPicture(one, 'print');
    const svg = new TextDecoder().decode(fileOf(one, 'print'));
    expect(svg).not.toMatch(/<text|font-|<image|href=/);
    expect(/<title[^>]*>([^<]*)<\/title>/.exec(svg)?.[1]).toBe(escapeXml(picture.title));
    expect(svg).toMatch(/^<svg [^>]*width="180mm" height="[\d.]+mm"/);
    const outlines = rendered(svg, []);
    const letters = rendered(picture.svg, fontNames.map(fontFile));
    expect([outlines.width, outlines.height]).toEqual([letters.width, letters.height]);
    const ofLetters = letters.pixels;
    const apart = outlines.pixels.filter((value, index) => Math.abs(value - (ofLetters[index] ?? 0)) > 24);
    expect(apart.length).toBeLessThan(ofLetters.length / 2000);
    // Without its letters most of it would be another one.
    const bare = rendered(picture.svg, []).pixels;
    expect(
      bare.filter((value, index) => Math.abs(value - (ofLetters[index] ?? 0)) > 24).length,
    ).toBeGreaterThan(ofLetters.length / 200);
  });
});

test('a print says its words to those who cannot see it', async () => {
  const svg = new TextDecoder().decode(fileOf(report, 'print'));
  const [, desc = ''] = /<desc[^>]*>([^<]*)<\/desc>/.exec(svg) ?? [];
  expect(desc).toContain(escapeXml(kitOf(report).offered[0]?.alt ?? 'none'));
  expect(cardWords(report).stamp).toBe('Invented data.');
  expect(desc).toContain('Invented data.');
});
