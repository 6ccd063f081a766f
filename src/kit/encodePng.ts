import { crc32, deflateSync } from 'node:zlib';
import { fewColours } from './fewColours.ts';

/** Opaque pixels from the top left, four bytes each: red, green, blue and one that is left out. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array;
}

const signature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/** Above this deflate takes a third longer for a fifteenth less, and at its most eight times as long. */
const level = 4;

/** A picture larger than this in true colours is written with a palette instead, which makes it a third smaller. */
const mostInTrueColours = 180_000;

/**
 * PNG of an opaque picture, 8-bit RGB (ISO/IEC 15948); of a very large one, 256 colours, of which all that fill an area
 * are exact. Flat drawings compress best unfiltered, which renderers do not do: about two thirds of their size.
 */
export function encodePng(pixels: Pixels): Uint8Array {
  const whole = written(pixels, 2, [], unfiltered(pixels));
  if (whole.length <= mostInTrueColours) return whole;
  const { palette, places } = fewColours(pixels);
  return written(pixels, 3, palette, placeRows(pixels, places));
}

function written(
  { width, height }: Pixels,
  colourType: 2 | 3,
  palette: readonly number[],
  rows: Uint8Array,
): Uint8Array {
  const header = new DataView(new ArrayBuffer(13));
  header.setUint32(0, width);
  header.setUint32(4, height);
  header.setUint8(8, 8); // Bits a sample.
  header.setUint8(9, colourType); // Red, green, blue; or places in a palette of them.
  const samples = palette.flatMap((colour) => [colour >> 16, (colour >> 8) & 255, colour & 255]);
  const chunks = [
    chunk('IHDR', new Uint8Array(header.buffer)),
    ...(colourType === 3 ? [chunk('PLTE', Uint8Array.from(samples))] : []),
    chunk('IDAT', deflateSync(rows, { level, memLevel: 9 })),
    chunk('IEND', new Uint8Array(0)),
  ];
  return Buffer.concat([Uint8Array.from(signature), ...chunks]);
}

/** Rows of samples, each after a byte 0: filter type "none". */
function unfiltered({ width, height, rgba }: Pixels): Uint8Array {
  const rows = new Uint8Array(height * (width * 3 + 1));
  let to = 0;
  let from = 0;
  for (let y = 0; y < height; y += 1) {
    to += 1;
    for (let x = 0; x < width; x += 1) {
      rows[to] = rgba[from] ?? 0;
      rows[to + 1] = rgba[from + 1] ?? 0;
      rows[to + 2] = rgba[from + 2] ?? 0;
      to += 3;
      from += 4;
    }
  }
  return rows;
}

/** The same of places in a palette. */
function placeRows({ width, height }: Pixels, places: Uint8Array): Uint8Array {
  const rows = new Uint8Array(height * (width + 1));
  for (let y = 0; y < height; y += 1)
    rows.set(places.subarray(y * width, (y + 1) * width), y * (width + 1) + 1);
  return rows;
}

function chunk(type: string, data: Uint8Array): Uint8Array {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const framed = Buffer.alloc(named.length + 8);
  framed.writeUInt32BE(data.length, 0);
  named.copy(framed, 4);
  framed.writeUInt32BE(crc32(named), named.length + 4);
  return framed;
}
