import { crc32, deflateSync } from 'node:zlib';
import type { Pixels } from './encodePng.ts';
import { fewColours, type FewColours } from './fewColours.ts';

/** Where an opaque picture stands on a larger one that is clear, px. */
export interface ClearGround {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly top: number;
}

const signature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const level = 4;
const mostColours = 256;

/**
 * PNG (ISO/IEC 15948) of an opaque picture on a clear ground, in 256 colours of which one lets everything through. Every
 * pixel is either opaque or clear, so that no edge shows a fringe over a film.
 *
 * @throws where the picture does not lie within the ground
 */
export function encodeClearPng(pixels: Pixels, ground: ClearGround): Uint8Array {
  const { width, height, left, top } = ground;
  const inside = left >= 0 && top >= 0 && left + pixels.width <= width && top + pixels.height <= height;
  if (!inside) throw new Error('The picture does not lie within its ground.');
  const { palette, places } = roomForOne(fewColours(pixels));
  const clear = palette.length;
  const header = new DataView(new ArrayBuffer(13));
  header.setUint32(0, width);
  header.setUint32(4, height);
  header.setUint8(8, 8); // Bits a sample.
  header.setUint8(9, 3); // Samples are places in a palette.
  const colours = [...palette, 0].flatMap((colour) => [colour >> 16, (colour >> 8) & 255, colour & 255]);
  const opacities = [...palette.map(() => 255), 0];
  // Each row after a byte 0: filter type "none".
  const rows = new Uint8Array(height * (width + 1)).fill(clear);
  for (let y = 0; y < height; y += 1) rows[y * (width + 1)] = 0;
  for (let y = 0; y < pixels.height; y += 1) {
    const row = places.subarray(y * pixels.width, (y + 1) * pixels.width);
    rows.set(row, (top + y) * (width + 1) + 1 + left);
  }
  return Buffer.concat([
    Uint8Array.from(signature),
    chunk('IHDR', new Uint8Array(header.buffer)),
    chunk('PLTE', Uint8Array.from(colours)),
    chunk('tRNS', Uint8Array.from(opacities)),
    chunk('IDAT', deflateSync(rows, { level, memLevel: 9 })),
    chunk('IEND', new Uint8Array(0)),
  ]);
}

/** The same in one colour less where the palette is full: the rarest becomes the one before it, which is about as rare. */
function roomForOne({ palette, places }: FewColours): FewColours {
  if (palette.length < mostColours) return { palette, places };
  const last = palette.length - 1;
  return { palette: palette.slice(0, last), places: places.map((place) => Math.min(place, last - 1)) };
}

function chunk(type: string, content: Uint8Array): Uint8Array {
  const bytes = Buffer.alloc(12 + content.length);
  bytes.writeUInt32BE(content.length, 0);
  bytes.write(type, 4, 'latin1');
  bytes.set(content, 8);
  bytes.writeUInt32BE(crc32(bytes.subarray(4, 8 + content.length)), 8 + content.length);
  return bytes;
}
