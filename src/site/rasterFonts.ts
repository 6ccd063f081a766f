import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, join } from 'node:path';
import literata from '@expo-google-fonts/literata/package.json' with { type: 'json' };
import sourceSans from '@expo-google-fonts/source-sans-3/package.json' with { type: 'json' };
import subsetFont from 'subset-font';
import { diskTrouble } from './diskTrouble.ts';
import { cacheFolder } from './folders.ts';
import { sealOf } from './sealed.ts';
import { writeWhole } from './writeWhole.ts';

const fontFiles = [
  '@expo-google-fonts/literata/400Regular/Literata_400Regular.ttf',
  '@expo-google-fonts/literata/600SemiBold/Literata_600SemiBold.ttf',
  '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf',
  '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf',
];

/** Besides the letters from space to ſ: the signs that our sentences and scales use. */
const signs = '–—‘’“”„…−×÷±≤≥≈°µ′″·•→←↑↓√Δσ€';

const latin =
  Array.from({ length: 0x180 - 0x20 }, (_, index) => String.fromCodePoint(0x20 + index)).join('') + signs;

const notLatin = new RegExp(`[^\\s\\u0020-\\u017f${signs}]`, 'u');

const options = {
  targetFormat: 'truetype',
  noHinting: true,
  // Family and style, also of weights that old systems take for families of their own.
  preserveNameIds: [1, 2, 16, 17],
  keepFeatures: ['kern', 'liga', 'clig', 'calt', 'ccmp', 'locl', 'mark', 'mkmk', 'rlig'],
} as const;

// Fonts are files to their renderer, so nothing of them is bundled with the pages.
const { resolve } = createRequire(import.meta.url);

/** The fonts of exported charts, whole. */
export function wholeFonts(): readonly string[] {
  return fontFiles.map((file) => resolve(file));
}

/** Versions of the packages that decide over them. */
export const fontVersions: readonly string[] = [literata.version, sourceSans.version];

/** By folder. */
const made = new Map<string, Promise<readonly MadeFont[]>>();

/**
 * The fonts that draw an SVG: cut down to Latin where that is all it holds. The renderer opens a font's file once a
 * glyph, and takes a third of the time with small ones; the picture is the same.
 */
export async function rasterFonts(
  svg: string,
  folder = join(cacheFolder(), 'fonts'),
): Promise<readonly string[]> {
  if (notLatin.test(svg)) return wholeFonts();
  const known = await made.get(folder);
  // The cache may be deleted or damaged at any time, and without its fonts a picture would have no words.
  if (known?.every(({ path, key }) => isWhole(path, key)) !== true)
    made.set(folder, Promise.all(wholeFonts().map((file) => latinFont(file, folder))));
  return (await made.get(folder))?.map(({ path }) => path) ?? wholeFonts();
}

interface MadeFont {
  readonly path: string;
  /** Null for a whole font, which lies in its package. */
  readonly key: string | null;
}

async function latinFont(file: string, folder: string): Promise<MadeFont> {
  const whole = readFileSync(file);
  const key = createHash('sha256')
    .update(whole)
    .update(JSON.stringify([latin, options]))
    .digest('hex');
  const kept = fontsOf(folder, key).find((path) => isWhole(path, key));
  if (kept !== undefined) return { path: kept, key };
  const font = await subsetFont(whole, latin, options);
  const path = join(folder, `${key}.${sealOf(key, font)}.ttf`);
  try {
    writeWhole(path, font);
  } catch (error) {
    if (diskTrouble(error) === null) throw error;
    return { path: file, key: null };
  }
  return { path, key };
}

function fontsOf(folder: string, key: string): readonly string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => name.startsWith(`${key}.`) && name.endsWith('.ttf'))
    .map((name) => join(folder, name));
}

/** The renderer takes fonts by their path: the name holds the seal of what lies in the file. */
function isWhole(path: string, key: string | null): boolean {
  if (!existsSync(path)) return false;
  return key === null || basename(path) === `${key}.${sealOf(key, readFileSync(path))}.ttf`;
}
