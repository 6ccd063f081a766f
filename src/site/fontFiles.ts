import { createRequire } from 'node:module';
import literata from '@expo-google-fonts/literata/package.json' with { type: 'json' };
import sourceSans from '@expo-google-fonts/source-sans-3/package.json' with { type: 'json' };

const files = {
  serif: '@expo-google-fonts/literata/400Regular/Literata_400Regular.ttf',
  'serif-600': '@expo-google-fonts/literata/600SemiBold/Literata_600SemiBold.ttf',
  sans: '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf',
  'sans-600': '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf',
} as const;

/** The fonts of what leaves the pages, whole. */
export type FontName = keyof typeof files;

export const fontNames = ['serif', 'serif-600', 'sans', 'sans-600'] as const satisfies readonly FontName[];

// Fonts are files to those who read them, so nothing of them is bundled with the pages.
const { resolve } = createRequire(import.meta.url);

export function fontFile(name: FontName): string {
  return resolve(files[name]);
}

/** Versions of the packages that decide over them. */
export const fontVersions: readonly string[] = [literata.version, sourceSans.version];

/** The font that sets a text. */
export function fontOf({ serif, weight }: { readonly serif: boolean; readonly weight: 400 | 600 }): FontName {
  if (serif) return weight === 600 ? 'serif-600' : 'serif';
  return weight === 600 ? 'sans-600' : 'sans';
}
