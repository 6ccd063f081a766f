import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { crc32, inflateSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { textWidth } from '../../src/charts/textWidth.ts';
import { encodePng } from '../../src/kit/encodePng.ts';
import { fewColours } from '../../src/kit/fewColours.ts';
import { exportedSvg, exportWidth, rasterWidth } from '../../src/kit/exportedSvg.ts';
import { rasterFonts, wholeFonts } from '../../src/site/rasterFonts.ts';
import { dateInWords } from '../../src/prose/date.ts';
import { latestCorrection } from '../../src/prose/english/kit/standing.ts';
import { interestsOf } from '../../src/prose/interestStatements.ts';
import { drawPixels, drawPng } from '../../src/site/rasters.ts';
import { kitOf } from '../../src/kit/kitOf.ts';
import { emailBlock, emailHtml } from '../../src/kit/emailHtml.ts';
import { emailParts } from '../../src/kit/emailParts.ts';
import { emailText } from '../../src/kit/emailText.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { contentFolder, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';
import { offered } from './content.ts';

interface TextBox {
  readonly words: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly width: number;
}

/** Where each text of an exported chart should have ink, px of the SVG; Literata is taken for as wide as Source Sans. */
function textBoxes(svg: string): TextBox[] {
  const inner = /<g transform="translate\(([\d.]+),([\d.]+)\)"[^>]* text-anchor/.exec(svg);
  const [left, top] = [Number(inner?.[1]), Number(inner?.[2])];
  const groups = [...svg.matchAll(/<g((?:\s[^>]*)?)>((?:<text[\s\S]*?<\/text>)+)<\/g>/g)];
  return groups.flatMap(([, attributes = '', body = '']) => {
    const read = (name: string, otherwise: string): string =>
      new RegExp(`\\s${name}="([^"]*)"`).exec(attributes)?.[1] ?? otherwise;
    const size = Number(read('font-size', '14'));
    const weight = read('font-weight', '400') === '600' ? 600 : 400;
    return [...body.matchAll(/<text([^>]*)>([\s\S]*?)<\/text>/g)].flatMap(([, own = '', raw = '']) => {
      const words = unescaped(raw.replace(/<[^>]*>/g, '').trim());
      const moved = /translate\(([-\d.]+),([-\d.]+)\)/.exec(own);
      const placed = /x="([-\d.]+)" y="([-\d.]+)"/.exec(own);
      if (words === '' || (moved === null && placed === null)) return [];
      const width = textWidth(words, size, weight);
      const anchor = read('text-anchor', moved === null ? 'start' : 'middle');
      const shift = anchor === 'end' ? width : anchor === 'middle' ? width / 2 : 0;
      const x = (moved === null ? Number(placed?.[1]) : left + Number(moved[1])) - shift;
      const y = moved === null ? Number(placed?.[2]) : top + Number(moved[2]);
      return [{ words, x, y, size, width }];
    });
  });
}

/** How many pixels of a box are clearly darker than paper. */
function inkIn({ width, rgba }: ReturnType<typeof drawPixels>, box: TextBox): number {
  const scale = width / exportWidth;
  let ink = 0;
  for (let y = Math.floor((box.y - 0.75 * box.size) * scale); y < box.y * scale; y += 1) {
    for (let x = Math.floor(box.x * scale); x < (box.x + box.width) * scale; x += 1) {
      if ((rgba[(y * width + x) * 4] ?? 255) < 140) ink += 1;
    }
  }
  return ink;
}

const unescaped = (text: string): string =>
  text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&');

const linesOf = (group: string): readonly string[] =>
  [...group.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, line = '']) => unescaped(line));

/** Lines of the headline, and of the strip below the chart. */
const headLines = (svg: string): readonly string[] =>
  linesOf(/<g font-family="Literata[^>]*>((?:<text[^>]*>[^<]*<\/text>)+)<\/g>/.exec(svg)?.[1] ?? '');
const stripLines = (svg: string): readonly string[] =>
  linesOf(
    /<g font-family="'Source Sans 3'[^>]*>((?:<text[^>]*>[^<]*<\/text>)+)<\/g><\/svg>\s*$/.exec(svg)?.[1] ??
      '',
  );

describe.each(offered)('%s', (_name, report, figure) => {
  const svg = exportedSvg(report, figure, '1.2.3');
  const pixels = drawPixels(svg, rasterWidth);

  test('is drawn with every text inked', () => {
    const boxes = textBoxes(svg);
    expect(boxes.length).toBeGreaterThan(5);
    for (const box of boxes) {
      // A digit of 14 px has some ten dark pixels at this scale.
      expect(inkIn(pixels, box), box.words).toBeGreaterThan(
        4 * box.words.replaceAll(/[\s.,;:–−-]/g, '').length,
      );
    }
    // The test can fail: without its texts nothing is inked there.
    const without = drawPixels(svg.replaceAll(/<text[\s\S]*?<\/text>/g, ''), rasterWidth);
    const strip = boxes.at(-1);
    expect(strip === undefined ? -1 : inkIn(without, strip)).toBe(0);
  });

  test('is cut off nowhere', () => {
    const height = Number(/height="(\d+)"/.exec(svg)?.[1]);
    const room = 40;
    const open = svg.replace(
      new RegExp(`width="${exportWidth}" height="${height}" viewBox="0 0 ${exportWidth} ${height}"`),
      `width="${exportWidth + 2 * room}" height="${height + 2 * room}" viewBox="${-room} ${-room} ${exportWidth + 2 * room} ${height + 2 * room}"`,
    );
    const wide = drawPixels(open, exportWidth + 2 * room);
    const outside: string[] = [];
    const [red, green, blue] = [0xfa, 0xf8, 0xf2];
    for (let y = 0; y < wide.height; y += 1) {
      for (let x = 0; x < wide.width; x += 1) {
        const from = (y * wide.width + x) * 4;
        const off = y < room || y >= height + room || x < room || x >= exportWidth + room;
        // Beside the chart lies its margin of 24 px, of which marks at the edge may take a few.
        const margin = x < room + 16 || x >= exportWidth + room - 16;
        const isPaper =
          wide.rgba[from] === red && wide.rgba[from + 1] === green && wide.rgba[from + 2] === blue;
        if (off ? wide.rgba[from + 3] !== 0 : margin && !isPaper) outside.push(`${x - room},${y - room}`);
      }
    }
    expect(outside.slice(0, 5)).toEqual([]);
  });

  test('holds golfers, shots, date, address, versions and the interest that bears on it in its image', () => {
    const { front } = report.source;
    const words = stripLines(svg).join(' ');
    expect(words).toMatch(/(One|Two|Three|Four|Five|Six|Seven|Eight|Nine|\d+) golfers?, .*shots? with each/);
    expect(words).toContain(`hit ${dateInWords(front.date)}.`);
    expect(words).toMatch(/sells|does not sell|was lent|paid for/i);
    expect(words).toMatch(/version 1\.0\.\d of the report\. Straightface 1\.2\.3\.$/);
    expect(words).toContain(`/reports/${report.source.slug}`);
    expect(words.startsWith('Invented data.')).toBe(front.inventedData);
    expect(words.includes('Replaced by a newer report.')).toBe(front.status === 'superseded');
    const latest = latestCorrection(front);
    expect(words.includes('Corrected')).toBe(latest !== null);
    if (latest !== null) expect(words).toContain(`Corrected ${dateInWords(latest)}.`);
    const leftOut = report.session.shots.filter(({ excluded }) => excluded !== null).length;
    expect(/(\w+) shots? left out\./.test(words)).toBe(leftOut > 0);
    // What bears on all of them bears on this chart too.
    for (const { kind, outside, contenders } of interestsOf(front)) {
      if (!outside || contenders.length < front.contenders.length) continue;
      if (kind === 'payment') expect(words).toContain(front.interests.paidBy.words);
      if (kind === 'gifts') expect(words).toContain(front.interests.commissionOrGifts.words);
      // It may begin the sentence.
      if (kind === 'seen')
        expect(words.toLowerCase()).toContain(front.interests.seenBefore.words.toLowerCase());
    }
  });

  test('says what its bars are and what its answer is, and nothing of the page around it', () => {
    const words = `${headLines(svg).join(' ')} ${stripLines(svg).join(' ')}`;
    // Ring and bar are named in the drawing itself.
    if (/^(apart|spread|delivery|hitters|with-and-without)$/.test(figure.chart)) {
      expect(svg).toMatch(/>(?:best estimate|standard deviation, from shot to shot)</);
      expect(svg).toMatch(/>likely range\b/);
    }
    for (const sign of figure.signs) expect(words).toContain(sign);
    // The headline is whole sentences of the chart's own answer, however little room there is.
    const lines = headLines(svg);
    expect(lines.length).toBeLessThanOrEqual(3);
    expect(words).not.toMatch(/listed below|stands? below|see the (chart|report)|For the others/);
  });

  test('stands alone: no variable, no style, no class that a page would have to explain', () => {
    expect(svg).not.toMatch(/var\(|currentColor|\sstyle=|<style|<script|href="http/);
    expect(svg.match(/<title/g)).toHaveLength(1);
    const ids = [...svg.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1]);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [, id] of svg.matchAll(/url\(#([^)]+)\)/g)) expect(ids).toContain(id);
  });

  test('is the same picture with the fonts cut down to Latin', async () => {
    const fonts = await rasterFonts(svg);
    expect(fonts).not.toEqual(wholeFonts());
    expect(Buffer.from(drawPixels(svg, rasterWidth, fonts).rgba).equals(pixels.rgba)).toBe(true);
  });

  test('has no colour that an eye could tell from the one drawn', () => {
    const { palette, places } = fewColours(pixels);
    let worst = 0;
    for (const [pixel, place] of places.entries()) {
      const [red = 0, green = 0, blue = 0] = pixels.rgba.subarray(4 * pixel, 4 * pixel + 3);
      const colour = palette[place] ?? -1;
      worst = Math.max(
        worst,
        Math.abs((colour >> 16) - red),
        Math.abs(((colour >> 8) & 255) - green),
        Math.abs((colour & 255) - blue),
      );
    }
    // Of 255; where most of the difference is one of edges of letters, a pixel wide.
    expect(worst).toBeLessThanOrEqual(10);
  });

  test('is a PNG of 1200 px under 140 kB, a tall one under 120 bytes a line of its drawing', async () => {
    const png = await drawPng(svg, rasterWidth);
    const height = Number(/ height="(\d+)"/.exec(svg)?.[1]);
    expect(png.length).toBeLessThan(Math.max(140_000, 120 * height));
    expect(new DataView(png.buffer, png.byteOffset).getUint32(16)).toBe(1200);
  });
});

test('names in Greek letters are drawn with the whole fonts', async () => {
  expect(await rasterFonts('<text>Άλφα</text>')).toEqual(wholeFonts());
  expect(await rasterFonts('<text>Ängström, 5 µm ≤ 1/4″</text>\n')).not.toEqual(wholeFonts());
});

test('fonts that somebody deleted are made again', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'fonts-'));
  const [first = ''] = await rasterFonts('<text>Alder</text>', folder);
  rmSync(first);
  const again = await rasterFonts('<text>Alder</text>', folder);
  expect(again[0]).toBe(first);
  expect(existsSync(first)).toBe(true);
});

test('PNG: signature, chunks with their checksums, rows that come back (ISO/IEC 15948)', () => {
  const rgba = Uint8Array.from([255, 0, 0, 255, 0, 255, 0, 255, 0, 0, 255, 255, 1, 2, 3, 255]);
  const png = Buffer.from(encodePng({ width: 2, height: 2, rgba }));
  expect([...png.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  const chunks = new Map<string, Buffer>();
  for (let at = 8; at < png.length;) {
    const length = png.readUInt32BE(at);
    expect(png.readUInt32BE(at + 8 + length)).toBe(crc32(png.subarray(at + 4, at + 8 + length)));
    chunks.set(png.toString('latin1', at + 4, at + 8), png.subarray(at + 8, at + 8 + length));
    at += 12 + length;
  }
  expect([...chunks.keys()]).toEqual(['IHDR', 'PLTE', 'IDAT', 'IEND']);
  expect([...(chunks.get('IHDR') ?? [])]).toEqual([0, 0, 0, 2, 0, 0, 0, 2, 8, 3, 0, 0, 0]);
  const palette = [...(chunks.get('PLTE') ?? [])];
  const [first = [], second = []] = [0, 3].map((row) =>
    [...inflateSync(chunks.get('IDAT') ?? Buffer.alloc(0))].slice(row, row + 3),
  );
  expect([first[0], second[0]]).toEqual([0, 0]);
  expect(
    [...first.slice(1), ...second.slice(1)].flatMap((place) => palette.slice(3 * place, 3 * place + 3)),
  ).toEqual([...[255, 0, 0, 0, 255, 0], ...[0, 0, 255, 1, 2, 3]]);
});

test('PNG: of more colours than a palette holds, those that fill an area are exact (ISO/IEC 15948, colour type 3)', () => {
  // Noise of 900 greys and blues, as edges of letters make it, over areas of three colours.
  const [width, height] = [600, 400];
  const areas = [0xfaf8f2, 0x1d2125, 0x4a90e2];
  const rgba = new Uint8Array(width * height * 4);
  const wanted: number[] = [];
  for (let at = 0; at < width * height; at += 1) {
    const noise = (at * 2654435761) >>> 0;
    const edge = noise % 3 === 0;
    const grey = noise % 251;
    const colour = edge ? (grey << 16) | (grey << 8) | ((noise >>> 8) % 200) : (areas[at % 3] ?? 0);
    rgba.set([colour >> 16, (colour >> 8) & 255, colour & 255, 255], at * 4);
    wanted.push(edge ? -1 : colour);
  }
  const png = Buffer.from(encodePng({ width, height, rgba }));
  const chunks = new Map<string, Buffer>();
  for (let at = 8; at < png.length;) {
    const length = png.readUInt32BE(at);
    expect(png.readUInt32BE(at + 8 + length)).toBe(crc32(png.subarray(at + 4, at + 8 + length)));
    chunks.set(png.toString('latin1', at + 4, at + 8), png.subarray(at + 8, at + 8 + length));
    at += 12 + length;
  }
  expect([...chunks.keys()]).toEqual(['IHDR', 'PLTE', 'IDAT', 'IEND']);
  expect([...(chunks.get('IHDR') ?? [])].slice(8)).toEqual([8, 3, 0, 0, 0]);
  const palette = chunks.get('PLTE') ?? Buffer.alloc(0);
  expect(palette.length % 3).toBe(0);
  expect(palette.length).toBeLessThanOrEqual(3 * 256);
  const rows = inflateSync(chunks.get('IDAT') ?? Buffer.alloc(0));
  expect(rows.length).toBe(height * (width + 1));
  let wrong = 0;
  wanted.forEach((colour, at) => {
    const place = rows[Math.floor(at / width) * (width + 1) + 1 + (at % width)] ?? 255;
    if (place * 3 + 2 >= palette.length) wrong += 1;
    else if (colour >= 0 && palette.readUIntBE(place * 3, 3) !== colour) wrong += 1;
  });
  expect(wrong).toBe(0);
});

test('names with markup and quotes stay text in image, mail and code', () => {
  const label = `<b>&"1"' var(--x) currentColor`;
  const folder = contentFolder({
    'shop.yaml': 'name: "A <i> & B"\naddress: https://golf.example/\n',
    'reports/odd/report.md': twoHeads((front) =>
      front
        .replace('label: Alder,', `label: '${label.replaceAll("'", "''")}', match: Alder,`)
        .replace('title: Two heads', 'title: "Two <script> heads & more"'),
    ),
    'reports/odd/shots.csv': twoHeadsCsv,
  });
  const [report] = loadSite(folder).reports;
  if (report === undefined) throw new Error('no report');
  for (const { figure } of kitOf(report).offered) {
    const svg = exportedSvg(report, figure, '1.2.3');
    // The renderer's parser throws on what is not well formed.
    expect(drawPixels(svg, 600).width).toBe(600);
    expect(svg).not.toMatch(/<b>|<i>|<script/);
    expect(svg).toContain('var(--x) currentColor');
  }
  const parts = emailParts(report, (path) => `https://golf.example${path}`, '1.2.3');
  for (const html of [emailHtml(parts), emailBlock(parts)]) {
    expect(html).not.toMatch(/<script|<i>|<b>&"/);
    expect(html).toContain('A &lt;i&gt; &amp; B');
  }
  expect(emailText(parts)).toContain('Two <script> heads & more');
});
