import { crc32, deflateSync } from 'node:zlib';

/** Opaque pixels from the top left, four bytes each: red, green, blue and one that is left out. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array;
}

const signature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/**
 * PNG of an opaque picture (ISO/IEC 15948): palette of up to 256 colours where that is enough, else 8-bit RGB. Flat
 * drawings compress best unfiltered, which renderers do not do: about half the size.
 */
export function encodePng({ width, height, rgba }: Pixels): Uint8Array {
  const palette = paletteOf(rgba);
  const samples = palette === null ? 3 : 1;
  const rows = new Uint8Array(height * (width * samples + 1));
  let at = 0;
  for (let y = 0; y < height; y += 1) {
    at += 1; // Filter type 0: the bytes as they are.
    for (let x = 0; x < width; x += 1) {
      const from = (y * width + x) * 4;
      if (palette === null) {
        rows.set(rgba.subarray(from, from + 3), at);
      } else {
        rows[at] = palette.get(colourAt(rgba, from)) ?? 0;
      }
      at += samples;
    }
  }
  const header = new DataView(new ArrayBuffer(13));
  header.setUint32(0, width);
  header.setUint32(4, height);
  header.setUint8(8, 8);
  header.setUint8(9, palette === null ? 2 : 3);
  const chunks = [
    chunk('IHDR', new Uint8Array(header.buffer)),
    ...(palette === null
      ? []
      : [
          chunk(
            'PLTE',
            Uint8Array.from([...palette.keys()].flatMap((c) => [c >> 16, (c >> 8) & 255, c & 255])),
          ),
        ]),
    chunk('IDAT', deflateSync(rows, { level: 9, memLevel: 9 })),
    chunk('IEND', new Uint8Array(0)),
  ];
  return Buffer.concat([Uint8Array.from(signature), ...chunks]);
}

function colourAt(rgba: Uint8Array, from: number): number {
  return ((rgba[from] ?? 0) << 16) | ((rgba[from + 1] ?? 0) << 8) | (rgba[from + 2] ?? 0);
}

/** Colours in order of appearance with their places; null for more than 256. */
function paletteOf(rgba: Uint8Array): ReadonlyMap<number, number> | null {
  const places = new Map<number, number>();
  for (let from = 0; from < rgba.length; from += 4) {
    const colour = colourAt(rgba, from);
    if (places.has(colour)) continue;
    if (places.size === 256) return null;
    places.set(colour, places.size);
  }
  return places;
}

function chunk(type: string, data: Uint8Array): Uint8Array {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const framed = Buffer.alloc(named.length + 8);
  framed.writeUInt32BE(data.length, 0);
  named.copy(framed, 4);
  framed.writeUInt32BE(crc32(named), named.length + 4);
  return framed;
}
