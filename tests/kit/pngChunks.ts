import { crc32 } from 'node:zlib';

/** A chunk of a PNG, its checksum being right (ISO/IEC 15948, 5.3). */
export interface PngChunk {
  readonly type: string;
  readonly data: Buffer;
}

/** The chunks of a PNG in their order; throws at a wrong checksum. */
export function pngChunks(bytes: Uint8Array): readonly PngChunk[] {
  const png = Buffer.from(bytes);
  const chunks: PngChunk[] = [];
  for (let at = 8; at < png.length;) {
    const length = png.readUInt32BE(at);
    const type = png.toString('latin1', at + 4, at + 8);
    if (png.readUInt32BE(at + 8 + length) !== crc32(png.subarray(at + 4, at + 8 + length)))
      throw new Error(`The checksum of ${type} is wrong.`);
    chunks.push({ type, data: png.subarray(at + 8, at + 8 + length) });
    at += 12 + length;
  }
  return chunks;
}

/** Keyword and text of an international text chunk that is not compressed (11.3.3.4). */
export function internationalText({ data }: PngChunk): readonly [keyword: string, text: string] {
  const keywordEnd = data.indexOf(0);
  const [compressed, method] = [data[keywordEnd + 1], data[keywordEnd + 2]];
  if (compressed !== 0 || method !== 0) throw new Error('It is compressed.');
  const languageEnd = data.indexOf(0, keywordEnd + 3);
  const translatedEnd = data.indexOf(0, languageEnd + 1);
  return [data.toString('latin1', 0, keywordEnd), data.toString('utf8', translatedEnd + 1)];
}
