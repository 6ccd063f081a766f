import { crc32, inflateSync } from 'node:zlib';
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, test } from 'vitest';
import { allOr, eachSoMany } from '../everyday.ts';
import { textWidth } from '../../src/charts/textWidth.ts';
import { encodePng } from '../../src/kit/encodePng.ts';
import type { Pixels } from '../../src/kit/pixels.ts';
import { fewColours } from '../../src/kit/fewColours.ts';
import { chartForms } from '../../src/kit/exportForms.ts';
import { exportedSvg } from '../../src/kit/exportedSvg.ts';
import { pictureForms } from '../../src/kit/pictureForm.ts';
import { fontFile, fontNames } from '../../src/site/fontFiles.ts';
import { dateInWords } from '../../src/prose/date.ts';
import { standingWords } from '../../src/prose/english/kit/standing.ts';
import { interestTold } from '../../src/prose/english/interest.ts';
import { interestsOf, shortNames } from '../../src/prose/interestStatements.ts';
import { drawPixels } from '../../src/site/rasters.ts';
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
  const inner = /<g transform="translate\(([\d.]+),([\d.]+)\)(?: scale\(([\d.]+)\))?"[^>]* text-anchor/.exec(
    svg,
  );
  const [left, top, scale] = [Number(inner?.[1]), Number(inner?.[2]), Number(inner?.[3] ?? 1)];
  const groups = [...svg.matchAll(/<g((?:\s[^>]*)?)>((?:<text[\s\S]*?<\/text>)+)<\/g>/g)];
  return groups.flatMap(([, attributes = '', body = '']) => {
    const read = (name: string, otherwise: string): string =>
      new RegExp(`\\s${name}="([^"]*)"`).exec(attributes)?.[1] ?? otherwise;
    const weight = read('font-weight', '400') === '600' ? 600 : 400;
    return [...body.matchAll(/<text([^>]*)>([\s\S]*?)<\/text>/g)].flatMap(([, own = '', raw = '']) => {
      const words = unescaped(raw.replace(/<[^>]*>/g, '').trim());
      const moved = /translate\(([-\d.]+),([-\d.]+)\)/.exec(own);
      const placed = /x="([-\d.]+)" y="([-\d.]+)"/.exec(own);
      if (words === '' || (moved === null && placed === null)) return [];
      const size = Number(read('font-size', '14')) * (moved === null ? 1 : scale);
      const width = textWidth(words, size, weight);
      const anchor = read('text-anchor', moved === null ? 'start' : 'middle');
      const shift = anchor === 'end' ? width : anchor === 'middle' ? width / 2 : 0;
      const x = (moved === null ? Number(placed?.[1]) : left + scale * Number(moved[1])) - shift;
      const y = moved === null ? Number(placed?.[2]) : top + scale * Number(moved[2]);
      return [{ words, x, y, size, width }];
    });
  });
}

/** How many pixels of a box are clearly darker than paper, `scale` of them to a px of the box. */
function inkIn({ width, rgba }: ReturnType<typeof drawPixels>, box: TextBox, scale: number): number {
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

/** Texts of the headline, and those below the last rule. */
const headLines = (svg: string): readonly string[] =>
  linesOf(/<g font-family="Literata[^>]*>((?:<text[^>]*>[^<]*<\/text>)+)<\/g>/.exec(svg)?.[1] ?? '');
const stripLines = (svg: string): readonly string[] => linesOf(svg.slice(svg.lastIndexOf('<path ')));

/** Texts above the headline, each in a frame. */
const stamps = (svg: string): readonly string[] =>
  linesOf(svg.slice(0, svg.indexOf('<g font-family="Literata')));

/** The drawing asked for last: all of them would take a gigabyte. */
let drawn: { readonly svg: string; readonly pixels: Pixels } | null = null;

function pixelsOf(svg: string, width: number): Pixels {
  if (drawn?.svg !== svg) drawn = { svg, pixels: drawPixels(svg, width) };
  return drawn.pixels;
}

describe.each(
  allOr(offered, eachSoMany(offered, 16)).flatMap(([name, report, figure]) =>
    chartForms.map((form) => [`${name} ${form}`, report, figure, form] as const),
  ),
)('%s', (_name, report, figure, form) => {
  const { width, raster } = pictureForms[form];
  const svg = exportedSvg(report, figure, form);
  const boxes = textBoxes(svg);

  test('is drawn with every text inked', () => {
    expect(boxes.length).toBeGreaterThan(5);
    const scale = raster / width;
    for (const box of boxes) {
      // A digit of 14 px has some ten dark pixels at the lesser scale.
      expect(inkIn(pixelsOf(svg, raster), box, scale), box.words).toBeGreaterThan(
        4 * box.words.replaceAll(/[\s.,;:–−-]/g, '').length,
      );
    }
  });

  test('has letters that are large enough at its own width', () => {
    const least = Math.min(...boxes.map(({ size }) => size));
    expect(least).toBeGreaterThanOrEqual(form === 'phone' ? 16 : 14);
  });

  test('is cut off nowhere', () => {
    const height = Number(/height="(\d+)"/.exec(svg)?.[1]);
    const room = 40;
    const open = svg.replace(
      new RegExp(`width="${width}" height="${height}" viewBox="0 0 ${width} ${height}"`),
      `width="${width + 2 * room}" height="${height + 2 * room}"`,
    );
    // Moved into the middle of more ground, so that whatever stands outside is drawn.
    const moved = open
      .replace(/(<svg[^>]*>)/, `$1<g transform="translate(${room},${room})">`)
      .replace(/<\/svg>\s*$/, '</g></svg>');
    const wide = drawPixels(moved, width + 2 * room);
    const outside: string[] = [];
    const [red, green, blue] = [0xfa, 0xf8, 0xf2];
    // Beside the chart lies its margin, of which marks at the edge may take a few px.
    const kept = form === 'wide' ? 16 : 6;
    const look = (y: number, left: number, right: number, ground: boolean): void => {
      for (let x = left; x < right; x += 1) {
        const from = (y * wide.width + x) * 4;
        const isPaper =
          wide.rgba[from] === red && wide.rgba[from + 1] === green && wide.rgba[from + 2] === blue;
        if (ground ? wide.rgba[from + 3] !== 0 : !isPaper) outside.push(`${x - room},${y - room}`);
      }
    };
    for (let y = 0; y < wide.height; y += 1) {
      if (y < room || y >= height + room) look(y, 0, wide.width, true);
      else {
        look(y, 0, room, true);
        look(y, room, room + kept, false);
        look(y, width + room - kept, width + room, false);
        look(y, width + room, wide.width, true);
      }
    }
    expect(outside.slice(0, 5)).toEqual([]);
  });

  test('bears its stamps first, each whole in a frame', () => {
    const { front } = report.source;
    const told = stamps(svg);
    expect(told.join(' ')).toBe(standingWords(report.source));
    expect(told.some((words) => words.startsWith('Invented data'))).toBe(front.inventedData);
    const frames = [
      ...svg.matchAll(/<rect x="([\d.]+)" y="([\d.]+)" width="([\d.]+)" height="([\d.]+)" fill="none"/g),
    ];
    expect(frames.length > 0).toBe(told.length > 0);
    for (const box of boxes.filter(({ words }) => told.includes(words))) {
      const frame = frames.find(([, x, y, across, down]) => {
        const [left, top] = [Number(x), Number(y)];
        return (
          box.x > left &&
          box.x + box.width < left + Number(across) &&
          box.y < top + Number(down) &&
          box.y - box.size > top - box.size / 2
        );
      });
      expect(frame, box.words).toBeDefined();
    }
  });

  test('holds golfers, shots, date, address and version in its image', () => {
    const { front } = report.source;
    const words = stripLines(svg).join(' ');
    expect(words).toMatch(/(One|Two|Three|Four|Five|Six|Seven|Eight|Nine|\d+) golfers?, .*shots? with each/);
    expect(words).toContain(`hit ${dateInWords(front.date)}.`);
    // The version of the report; that of the program would be taken for it.
    expect(words).toMatch(/, version 1\.0\.\d( of \d+ \w+ \d{4})?\.$/);
    expect(words.match(/version/g)).toHaveLength(1);
    // An address may go on in the next line.
    expect(words.replaceAll(' ', '')).toContain(`/reports/${report.source.slug}`);
    const leftOut = report.session.shots.filter(({ excluded }) => excluded !== null).length;
    expect(/(\w+) shots? left out\./.test(words)).toBe(leftOut > 0);
  });

  test('tells the interest that bears on it in the sentences of the page, after who says so', () => {
    const { front, shop } = report.source;
    const words = stripLines(svg).join(' ');
    const opening = `${shop?.name ?? 'The publisher'} on its interest: `;
    const page = interestTold(interestsOf(front), { speaker: 'we', nameOf: shortNames(front.contenders) });
    const told = page.filter(({ text }) => words.includes(text));
    expect(words).toContain(opening + told.map(({ text }) => text).join(' '));
    const leads = report.figures.find(({ kind }) => kind === 'drawn')?.id === figure.id;
    // The picture that leads its report tells all of it; of whatever a chart compares, it is told what is sold.
    expect(told.length).toBeGreaterThan(0);
    if (leads) expect(told).toEqual(page);
    expect(told.some(({ of }) => of.some(({ kind }) => kind === 'sells'))).toBe(true);
    // What bears on all of them bears on this chart too.
    for (const sentence of page) {
      const bears = sentence.of.some(
        ({ outside, contenders }) => outside && contenders.length === front.contenders.length,
      );
      if (bears) expect(told).toContain(sentence);
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
    expect(lines.length).toBeLessThanOrEqual(form === 'wide' ? 3 : 6);
    expect(words).not.toMatch(/listed below|stands? below|see the (chart|report)|For the others/);
  });

  test('stands alone: no variable, no style, no class that a page would have to explain', () => {
    expect(svg).not.toMatch(/var\(|currentColor|\sstyle=|<style|<script|href="http/);
    expect(svg.match(/<title/g)).toHaveLength(1);
    const ids = [...svg.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1]);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [, id] of svg.matchAll(/url\(#([^)]+)\)/g)) expect(ids).toContain(id);
  });

  test('has no colour that an eye could tell from the one drawn', () => {
    const pixels = pixelsOf(svg, raster);
    const { palette, places } = fewColours(pixels);
    let worst = 0;
    // A million pixels and more: without a view and a list for each.
    for (let pixel = 0; pixel < places.length; pixel += 1) {
      const colour = palette[places[pixel] ?? 0];
      for (let part = 0; part < 3; part += 1) {
        const apart = Math.abs((colour?.[part] ?? 999) - (pixels.rgba[4 * pixel + part] ?? 0));
        if (apart > worst) worst = apart;
      }
    }
    // Of 255; where most of the difference is one of edges of letters, a pixel wide.
    expect(worst).toBeLessThanOrEqual(10);
  });

  test('is a PNG of its width under 140 kB, a tall one under 120 bytes a line of its drawing', () => {
    const png = encodePng(pixelsOf(svg, raster));
    const height = Number(/ height="(\d+)"/.exec(svg)?.[1]);
    expect(png.length).toBeLessThan(Math.max(140_000, 120 * height));
    expect(new DataView(png.buffer, png.byteOffset).getUint32(16)).toBe(raster);
  });
});

test('texts are what inks the places of texts', () => {
  for (const form of chartForms) {
    const { width, raster } = pictureForms[form];
    for (const [name, report, figure] of offered.slice(0, 3)) {
      const svg = exportedSvg(report, figure, form);
      const strip = textBoxes(svg).at(-1);
      const without = drawPixels(svg.replaceAll(/<text[\s\S]*?<\/text>/g, ''), raster);
      expect(strip === undefined ? -1 : inkIn(without, strip, raster / width), name).toBe(0);
    }
  }
});

test.each(
  [
    ...new Map(offered.map(([name, report, figure]) => [figure.chart, { name, report, figure }])).values(),
  ].map(({ name, report, figure }, at) => [name, report, figure, at % 2 === 0 ? 'wide' : 'phone'] as const),
)('%s has its letters where the renderer itself sets them', (_name, report, figure, form) => {
  const { raster } = pictureForms[form];
  const svg = exportedSvg(report, figure, form);
  const own = new Resvg(svg, {
    fitTo: { mode: 'width', value: raster },
    font: { fontFiles: fontNames.map(fontFile), loadSystemFonts: false, defaultFontFamily: 'Source Sans 3' },
  }).render().pixels;
  const { rgba } = drawPixels(svg, raster);
  expect(own.length).toBe(rgba.length);
  const apart = (moved: number): number => {
    let sum = 0;
    for (let at = 4 * moved; at < own.length; at += 4)
      sum += Math.abs((own[at] ?? 0) - (rgba[at - 4 * moved] ?? 0));
    return sum;
  };
  // Edges differ by a part of a pixel; a pixel farther to the right most of a letter's pixels do.
  expect(apart(0)).toBeLessThan(0.5 * apart(1));
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
    const svg = exportedSvg(report, figure);
    // The renderer's parser throws on what is not well formed.
    expect(drawPixels(svg, 600).width).toBe(600);
    expect(svg).not.toMatch(/<b>|<i>|<script/);
    expect(svg).toContain('var(--x) currentColor');
  }
  const parts = emailParts(report, (path) => `https://golf.example${path}`);
  for (const html of [emailHtml(parts), emailBlock(parts)]) {
    expect(html).not.toMatch(/<script|<i>|<b>&"/);
    expect(html).toContain('A &lt;i&gt; &amp; B');
  }
  expect(emailText(parts)).toContain('Two <script> heads & more');
});
