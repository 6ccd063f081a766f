import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import { programFolder } from './ownCode.ts';

/** One file of each font that pages ask for. */
const fonts = [
  '@fontsource/literata/files/literata-latin-400-normal.woff2',
  '@fontsource/source-sans-3/files/source-sans-3-latin-400-normal.woff2',
];

/**
 * Folders of which the framework may send files while pages are edited: else only those below the program, and the fonts
 * of a program that is a package itself lie beside it.
 */
export function servedFolders(): readonly string[] {
  const { resolve } = createRequire(import.meta.url);
  return [programFolder, ...fonts.map((file) => dirname(resolve(file)))];
}
