import { crc32, deflateSync } from 'node:zlib';

/** Opaque pixels from the top left, four bytes each: red, green, blue and one that is left out. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array;
}

const signature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/** Above this deflate takes a third longer for a fifteenth less, and at its most eight times as long. */
const level = 4;

/**
 * PNG of an opaque picture, 8-bit RGB (ISO/IEC 15948). Flat drawings compress best unfiltered, which renderers do not
 * do: about two thirds of their size.
 */
export function encodePng({ width, height, rgba }: Pixels): Uint8Array {
  const header = new DataView(new ArrayBuffer(13));
  header.setUint32(0, width);
  header.setUint32(4, height);
  header.setUint8(8, 8); // Bits a sample.
  header.setUint8(9, 2); // Red, green, blue.
  const chunks = [
    chunk('IHDR', new Uint8Array(header.buffer)),
    chunk('IDAT', deflateSync(unfiltered(width, height, rgba), { level, memLevel: 9 })),
    chunk('IEND', new Uint8Array(0)),
  ];
  return Buffer.concat([Uint8Array.from(signature), ...chunks]);
}

/** Rows of samples, each after a byte 0: filter type "none". */
function unfiltered(width: number, height: number, rgba: Uint8Array): Uint8Array {
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

function chunk(type: string, data: Uint8Array): Uint8Array {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const framed = Buffer.alloc(named.length + 8);
  framed.writeUInt32BE(data.length, 0);
  named.copy(framed, 4);
  framed.writeUInt32BE(crc32(named), named.length + 4);
  return framed;
}
