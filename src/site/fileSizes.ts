import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { applyEdits, type Edit } from '../kit/htmlEdits.ts';
import { readTags, valueIn } from '../kit/htmlTags.ts';
import { sayFileSize } from '../prose/english/kit/fileSize.ts';

/**
 * A page with the size of every file that it offers: of a picture in pixels too. What is not there stays empty. The page
 * leaves room in elements with `data-size-of`, the address of the file from the report on.
 *
 * @param folder of the report
 */
export function withFileSizes(html: string, folder: string): string {
  const edits: Edit[] = [];
  readTags(html, {
    concerns: (name) => name === 'span',
    opened: ({ attributes, end }) => {
      const path = valueIn(attributes, 'data-size-of');
      const words = path === null ? null : sizeOf(join(folder, path));
      if (words !== null) edits.push({ start: end, end, words: `, ${words}` });
    },
    closed: () => {},
  });
  return applyEdits(html, edits);
}

function sizeOf(file: string): string | null {
  const size = statSync(file, { throwIfNoEntry: false })?.size;
  if (size === undefined) return null;
  return sayFileSize(size, file.endsWith('.png') ? pixelsOf(readFileSync(file)) : null);
}

/** Width and height stand in the first chunk of a PNG (ISO/IEC 15948, 11.2.2). */
function pixelsOf(png: Uint8Array): { readonly width: number; readonly height: number } {
  const header = new DataView(png.buffer, png.byteOffset);
  return { width: header.getUint32(16), height: header.getUint32(20) };
}
