import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { cacheFolder } from './folders.ts';
import { writeWhole } from './writeWhole.ts';

/** Makes a font of some characters of another one. */
type SubsetFont = (
  font: Uint8Array,
  text: string,
  options: {
    readonly targetFormat: 'truetype';
    readonly noHinting: boolean;
    readonly preserveNameIds: readonly number[];
    readonly keepFeatures: readonly string[];
  },
) => Promise<Uint8Array>;

const fontFiles = [
  '@expo-google-fonts/literata/400Regular/Literata_400Regular.ttf',
  '@expo-google-fonts/literata/600SemiBold/Literata_600SemiBold.ttf',
  '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf',
  '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf',
];

const fontPackages = ['literata', 'source-sans-3'];

/** Besides the letters from space to ſ: the signs that our sentences and scales use. */
const signs = '–—‘’“”„…−×÷±≤≥≈°µ′″·•→←↑↓√Δσ';

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

// Packages are found beside the project rather than bundled with its pages.
const projectRequire = (): NodeJS.Require => createRequire(join(process.cwd(), 'package.json'));

/** The fonts of exported charts, whole. */
export function wholeFonts(): readonly string[] {
  const require = projectRequire();
  return fontFiles.map((file) => require.resolve(file));
}

/** Versions of the packages that decide over them. */
export function fontVersions(): readonly string[] {
  const require = projectRequire();
  return fontPackages.map((name) => {
    const { version }: { readonly version: string } = require(`@expo-google-fonts/${name}/package.json`);
    return version;
  });
}

/** By folder. */
const made = new Map<string, Promise<readonly string[]>>();

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
  // The cache may be deleted at any time, and without its fonts a picture would have no words.
  if (known?.every((font) => existsSync(font)) === true) return known;
  const fonts = Promise.all(wholeFonts().map((file) => latinFont(file, folder)));
  made.set(folder, fonts);
  return fonts;
}

async function latinFont(file: string, folder: string): Promise<string> {
  const whole = readFileSync(file);
  const name = createHash('sha256')
    .update(whole)
    .update(JSON.stringify([latin, options]))
    .digest('hex');
  const kept = join(folder, `${name}.ttf`);
  if (existsSync(kept)) return kept;
  const subset: SubsetFont = projectRequire()('subset-font');
  writeWhole(kept, await subset(whole, latin, options));
  return kept;
}
