import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { Resvg } from '@resvg/resvg-js';
import resvg from '@resvg/resvg-js/package.json' with { type: 'json' };
import { encodeClearPng } from '../kit/encodeClearPng.ts';
import type { LeadPicture, OnNothing, Outlined } from '../kit/leadPicture.ts';
import { outlinedSvg } from '../kit/outlinedSvg.ts';
import { cacheFolder } from './folders.ts';
import { markAsUsed } from './markAsUsed.ts';
import { fontVersions, rasterFonts } from './rasterFonts.ts';
import { cachedPng, drawPixels } from './rasters.ts';
import { readSealed, writeSealed } from './sealed.ts';

/** Goes up whenever other bytes are written of the same picture. */
const encoding = 1;

/** The bytes of a form of a report's first chart, kept in `folder` as every picture is. */
export async function leadFile(
  picture: LeadPicture,
  folder = join(cacheFolder(), 'rasters'),
): Promise<Uint8Array> {
  switch (picture.kind) {
    case 'png':
      return cachedPng(picture.svg, picture.width, folder);
    case 'clear-png':
      return kept(picture, 'png', folder, () => clearPng(picture));
    case 'outlined-svg':
      return kept(picture, 'svg', folder, async () => Buffer.from(await outlined(picture)));
  }
}

/** A PNG that is clear but for the drawing. */
export async function clearPng({ svg, width, on }: OnNothing): Promise<Uint8Array> {
  return encodeClearPng(drawPixels(svg, width, await rasterFonts(svg)), on);
}

/** An SVG in which the fonts' outlines stand for the letters. */
export async function outlined(picture: Outlined): Promise<string> {
  const fontFiles = [...(await rasterFonts(picture.svg))];
  const font = { fontFiles, loadSystemFonts: false, defaultFontFamily: 'Source Sans 3' };
  return outlinedSvg(new Resvg(picture.svg, { font }).toString(), picture);
}

async function kept(
  picture: LeadPicture,
  ending: string,
  folder: string,
  make: () => Promise<Uint8Array>,
): Promise<Uint8Array> {
  const key = createHash('sha256')
    .update(JSON.stringify([resvg.version, ...fontVersions, encoding, picture]))
    .digest('hex');
  const file = join(folder, `${key}.${ending}.sealed`);
  const before = readSealed(file, key);
  if (before !== null) {
    markAsUsed(file);
    return new Uint8Array(before);
  }
  const bytes = await make();
  writeSealed(file, key, bytes);
  return bytes;
}
