import { crc32, deflateSync } from 'node:zlib';
import { fewColours, type Colour } from './fewColours.ts';
import type { Pixels } from './pixels.ts';
import { withoutNotes, type PngNotes, type PngText } from './pngNotes.ts';

const signature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/** Above this deflate takes half as long again for a twentieth less. */
const level = 2;

/**
 * PNG (ISO/IEC 15948) with a palette of 256 colours, exact for every colour that fills an area; about three fifths of the size of a true-colour file.
 * Flat drawings compress best unfiltered.
 */
export function encodePng(pixels: Pixels, notes: PngNotes = withoutNotes): Uint8Array {
  const { width, height } = pixels;
  // Each row after a byte 0: filter type "none".
  const { palette, places: rows } = fewColours(pixels, 1);
  const header = new DataView(new ArrayBuffer(13));
  header.setUint32(0, width);
  header.setUint32(4, height);
  header.setUint8(8, 8); // Bits a sample.
  header.setUint8(9, 3); // Samples are places in a palette.
  return Buffer.concat([
    Uint8Array.from(signature),
    chunk('IHDR', new Uint8Array(header.buffer)),
    ...density(notes),
    ...notes.texts.map(textChunk),
    chunk('PLTE', Uint8Array.from(palette.flatMap(unmultiplied))),
    ...covers(palette),
    chunk('IDAT', deflateSync(rows, { level, memLevel: 9, chunkSize: 1 << 18 })),
    chunk('IEND', new Uint8Array(0)),
  ]);
}

/** A colour as the file holds it: by itself, not multiplied by how much it covers. */
function unmultiplied([red, green, blue, cover]: Colour): readonly number[] {
  return [red, green, blue].map((part) =>
    cover === 0 ? 0 : Math.min(255, Math.round((part * 255) / cover)),
  );
}

/** How much the colours cover, up to the last that does not cover whole; nothing where all do. */
function covers(palette: readonly Colour[]): readonly Uint8Array[] {
  const last = palette.findLastIndex(([, , , cover]) => cover < 255);
  return last < 0
    ? []
    : [
        chunk(
          'tRNS',
          Uint8Array.from(palette.slice(0, last + 1), ([, , , cover]) => cover),
        ),
      ];
}

const inchesPerMetre = 1 / 0.0254;

function density({ pixelsPerInch }: PngNotes): readonly Uint8Array[] {
  if (pixelsPerInch === null) return [];
  const data = new DataView(new ArrayBuffer(9));
  const perMetre = Math.round(pixelsPerInch * inchesPerMetre);
  data.setUint32(0, perMetre);
  data.setUint32(4, perMetre);
  data.setUint8(8, 1); // A metre.
  return [chunk('pHYs', new Uint8Array(data.buffer))];
}

/** Keyword, then five zeros: its end, not compressed, no method, no language, no keyword in it; then UTF-8. */
function textChunk({ keyword, text }: PngText): Uint8Array {
  return chunk(
    'iTXt',
    Buffer.concat([Buffer.from(keyword, 'latin1'), Buffer.alloc(5), Buffer.from(text, 'utf8')]),
  );
}

function chunk(type: string, data: Uint8Array): Uint8Array {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const framed = Buffer.alloc(named.length + 8);
  framed.writeUInt32BE(data.length, 0);
  named.copy(framed, 4);
  framed.writeUInt32BE(crc32(named), named.length + 4);
  return framed;
}
