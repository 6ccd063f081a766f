import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { setImmediate } from 'node:timers/promises';
import resvg from '@resvg/resvg-js/package.json' with { type: 'json' };
import { onClearGround, type ClearGround } from '../kit/clearGround.ts';
import { encodePng } from '../kit/encodePng.ts';
import { withoutNotes, type PngNotes } from '../kit/pngNotes.ts';
import { drawPixels, giveBack } from './drawPixels.ts';
import { cacheFolder } from './folders.ts';
import { fontVersions } from './fontFiles.ts';
import { markAsUsed } from './markAsUsed.ts';
import { readSealed, writeSealed } from './sealed.ts';
import { shaperVersion } from './shapedLine.ts';

export { drawPixels };

/** Goes up whenever other pixels are drawn or other bytes written of the same drawing. */
const encoding = 7;

/** What decides over the bytes of a raster besides the SVG. */
const renderer = [resvg.version, shaperVersion, ...fontVersions, encoding].join(' ');

/** What a PNG is made with besides its drawing. */
interface PngMaking {
  readonly notes?: PngNotes;
  /** Null where the drawing is all of it. */
  readonly on?: ClearGround | null;
}

/** PNG of an SVG whose colours are values. */
async function drawPng(
  svg: string,
  width: number,
  { notes = withoutNotes, on = null }: PngMaking = {},
): Promise<Uint8Array> {
  const drawn = drawPixels(svg, width);
  const pixels = on === null ? drawn : onClearGround(drawn, on);
  const png = encodePng(pixels, notes);
  giveBack(drawn);
  giveBack(pixels);
  // What the renderer holds is freed only when the event loop turns; a plain loop over many charts would hold it all.
  await setImmediate();
  return png;
}

/** As `drawPng`, kept in `folder` under a name that any change of the drawing, notes, fonts or renderer changes. */
export async function cachedPng(
  svg: string,
  width: number,
  {
    notes = withoutNotes,
    on = null,
    folder = join(cacheFolder(), 'rasters'),
  }: PngMaking & { readonly folder?: string } = {},
): Promise<Uint8Array> {
  const key = createHash('sha256')
    .update(`${renderer}\n${width}\n${JSON.stringify([notes, on])}\n${svg}`)
    .digest('hex');
  const file = join(folder, `${key}.png.sealed`);
  const kept = readSealed(file, key);
  if (kept !== null) {
    markAsUsed(file);
    return new Uint8Array(kept);
  }
  const png = await drawPng(svg, width, { notes, on });
  writeSealed(file, key, png);
  return png;
}
