import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import subsetFont from 'subset-font';
import { replaceTexts } from '../kit/svgTexts.ts';
import { diskTrouble } from './diskTrouble.ts';
import { cacheFolder } from './folders.ts';
import { fontFile, fontOf, type FontName } from './fontFiles.ts';
import { sealOf } from './sealed.ts';
import { writeWhole } from './writeWhole.ts';

const from = (first: number, end: number): string =>
  Array.from({ length: end - first }, (_, index) => String.fromCodePoint(first + index)).join('');

/** The letters of most drawings, and those of names in European languages. */
const letters = {
  plain: `${from(0x20, 0x7f)}–—‘’“”…−×±°½¼¾£€`,
  latin: `${from(0x20, 0x7f)}${from(0xa0, 0x180)}–—‘’“”„…−×÷±≤≥≈°µ′″·•→←↑↓√Δσ€`,
} as const;

/** Which letters a font is cut down to. */
type Letters = keyof typeof letters;

/** Without kerning, which the lengths of lines make up for, a font is a quarter smaller. */
const options = { targetFormat: 'woff2', noHinting: true, keepFeatures: [] } as const;

const faces: Readonly<Record<FontName, { readonly family: string; readonly weight: number }>> = {
  serif: { family: 'Literata', weight: 400 },
  'serif-600': { family: 'Literata', weight: 600 },
  sans: { family: 'Source Sans 3', weight: 400 },
  'sans-600': { family: 'Source Sans 3', weight: 600 },
};

/** The fonts that set the texts of a drawing, cut down to Latin, as rules of a style sheet that needs no other file. */
export async function embeddedFonts(svg: string, folder = join(cacheFolder(), 'fonts')): Promise<string> {
  const names = new Set<FontName>();
  let all = '';
  replaceTexts(svg, (text, whole) => {
    names.add(fontOf(text));
    all += text.words;
    return whole;
  });
  const set: Letters = [...all].every((letter) => letters.plain.includes(letter)) ? 'plain' : 'latin';
  const rules = [...names].toSorted().map(async (name) => {
    const { family, weight } = faces[name];
    const font = Buffer.from(await heldFont(name, set, folder)).toString('base64');
    return `@font-face{font-family:'${family}';font-weight:${weight};src:url(data:font/woff2;base64,${font}) format('woff2')}`;
  });
  return (await Promise.all(rules)).join('');
}

// Asked for by every drawing.
const made = new Map<string, Promise<Uint8Array>>();

function heldFont(name: FontName, set: Letters, folder: string): Promise<Uint8Array> {
  const known = made.get(`${name} ${set}`) ?? cutDownFont(name, set, folder);
  made.set(`${name} ${set}`, known);
  return known;
}

/** A font cut down, from the cache, where the name of a font holds the seal of what lies in its file. */
export async function cutDownFont(name: FontName, set: Letters, folder: string): Promise<Uint8Array> {
  const whole = readFileSync(fontFile(name));
  const key = createHash('sha256')
    .update(whole)
    .update(JSON.stringify([letters[set], options]))
    .digest('hex');
  const kept = keptFont(folder, key);
  if (kept !== null) return kept;
  const font = await subsetFont(whole, letters[set], options);
  try {
    writeWhole(join(folder, `${key}.${sealOf(key, font)}.woff2`), font);
  } catch (error) {
    if (diskTrouble(error) === null) throw error;
  }
  return font;
}

function keptFont(folder: string, key: string): Uint8Array | null {
  if (!existsSync(folder)) return null;
  for (const name of readdirSync(folder).filter((file) => file.startsWith(`${key}.`))) {
    const font = readFileSync(join(folder, name));
    if (name === `${key}.${sealOf(key, font)}.woff2`) return new Uint8Array(font);
  }
  return null;
}
