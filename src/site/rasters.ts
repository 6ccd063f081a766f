import { createHash } from 'node:crypto';
import { existsSync, readFileSync, statSync, utimesSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { setImmediate } from 'node:timers/promises';
import { encodePng, type Pixels } from '../kit/encodePng.ts';
import { cacheFolder } from './folders.ts';
import { fontVersions, rasterFonts, wholeFonts } from './rasterFonts.ts';
import { writeWhole } from './writeWhole.ts';
import type * as Resvg from '@resvg/resvg-js';

/** Goes up whenever `encodePng` writes other bytes. */
const encoding = 5;

/** What decides over the bytes of a raster besides the SVG. */
interface Renderer {
  readonly Resvg: typeof Resvg.Resvg;
  readonly version: string;
}

let renderer: Renderer | null = null;

// A native module, found beside the project rather than bundled with its pages.
function rendererOf(): Renderer {
  if (renderer !== null) return renderer;
  const require = createRequire(join(process.cwd(), 'package.json'));
  const module: typeof Resvg = require('@resvg/resvg-js');
  const { version }: { readonly version: string } = require('@resvg/resvg-js/package.json');
  renderer = { Resvg: module.Resvg, version: [version, ...fontVersions()].join(' ') };
  return renderer;
}

/** The pixels of an SVG whose colours are values, `width` px wide, drawn with the fonts of the site and no others. */
export function drawPixels(svg: string, width: number, fonts = wholeFonts()): Pixels {
  const { Resvg: Drawing } = rendererOf();
  const drawing = new Drawing(svg, {
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
  const name = createHash('sha256')
    .update(`${rendererOf().version} ${encoding}\n${width}\n${svg}`)
    .digest('hex');
  const file = join(folder, `${name}.png`);
  if (existsSync(file)) {
    markAsUsed(file);
    return new Uint8Array(readFileSync(file));
  }
  const png = await drawPng(svg, width);
  writeWhole(file, png);
  return png;
}

const day = 24 * 60 * 60 * 1000;

/** The date of a raster says when it was last drawn or read, give or take a day: by it old ones are deleted. */
function markAsUsed(file: string): void {
  const now = new Date();
  if (now.getTime() - statSync(file).mtimeMs > day) utimesSync(file, now, now);
}
