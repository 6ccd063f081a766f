import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { setImmediate } from 'node:timers/promises';
import { Resvg } from '@resvg/resvg-js';
import resvg from '@resvg/resvg-js/package.json' with { type: 'json' };
import { encodePng, type Pixels } from '../kit/encodePng.ts';
import { cacheFolder } from './folders.ts';
import { markAsUsed } from './markAsUsed.ts';
import { fontVersions, rasterFonts, wholeFonts } from './rasterFonts.ts';
import { readSealed, writeSealed } from './sealed.ts';

/** Goes up whenever `encodePng` writes other bytes. */
const encoding = 5;

/** What decides over the bytes of a raster besides the SVG. */
const renderer = [resvg.version, ...fontVersions, encoding].join(' ');

/** The pixels of an SVG whose colours are values, `width` px wide, drawn with the fonts of the site and no others. */
export function drawPixels(svg: string, width: number, fonts = wholeFonts()): Pixels {
  const drawing = new Resvg(svg, {
    fitTo: { mode: 'width', value: width },
    font: { fontFiles: [...fonts], loadSystemFonts: false, defaultFontFamily: 'Source Sans 3' },
  });
  const { width: drawn, height, pixels } = drawing.render();
  return { width: drawn, height, rgba: pixels };
}

/** PNG of such an SVG. */
export async function drawPng(svg: string, width: number): Promise<Uint8Array> {
  const png = encodePng(drawPixels(svg, width, await rasterFonts(svg)));
  // Buffers of the renderer are freed only when the event loop turns; a plain loop over many charts would hold them all.
  await setImmediate();
  return png;
}

/** As `drawPng`, kept in `folder` under a name that any change of the drawing, fonts or renderer changes. */
export async function cachedPng(
  svg: string,
  width: number,
  folder = join(cacheFolder(), 'rasters'),
): Promise<Uint8Array> {
  const key = createHash('sha256').update(`${renderer}\n${width}\n${svg}`).digest('hex');
  const file = join(folder, `${key}.png.sealed`);
  const kept = readSealed(file, key);
  if (kept !== null) {
    markAsUsed(file);
    return new Uint8Array(kept);
  }
  const png = await drawPng(svg, width);
  writeSealed(file, key, png);
  return png;
}
