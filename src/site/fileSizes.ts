import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { sayFileSize } from '../prose/english/kit/fileSize.ts';

/** Where a page leaves room for what is known of a file once it is written, which its address names from the report on. */
const rooms = /<span data-size-of="([^"]+)"><\/span>/g;

/**
 * A page with the size of every file that it offers: of a picture in pixels too. What is not there stays empty.
 *
 * @param folder of the report
 */
export function withFileSizes(html: string, folder: string): string {
  return html.replaceAll(rooms, (room, path: string) => {
    const file = join(folder, path);
    const size = statSync(file, { throwIfNoEntry: false })?.size;
    if (size === undefined) return room;
    const words = sayFileSize(size, path.endsWith('.png') ? pixelsOf(readFileSync(file)) : null);
    return room.replace('></', `>, ${words}</`);
  });
}

/** Width and height stand in the first chunk of a PNG (ISO/IEC 15948, 11.2.2). */
function pixelsOf(png: Uint8Array): { readonly width: number; readonly height: number } {
  const header = new DataView(png.buffer, png.byteOffset);
  return { width: header.getUint32(16), height: header.getUint32(20) };
}
