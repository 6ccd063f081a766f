import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { inflateSync } from 'node:zlib';

/**
 * The tables of a WOFF 1.0 file (W3C WOFF recommendation) by their names.
 *
 * @throws Error for a table that it does not have
 */
export const woffTables = (specifier: string): ((name: string) => Buffer) => {
  const file = readFileSync(createRequire(import.meta.url).resolve(specifier));
  const tables = new Map<string, Buffer>();
  for (let entry = 0; entry < file.readUInt16BE(12); entry += 1) {
    const at = 44 + entry * 20;
    const offset = file.readUInt32BE(at + 4);
    const packed = file.readUInt32BE(at + 8);
    const bytes = file.subarray(offset, offset + packed);
    const plain = packed < file.readUInt32BE(at + 12) ? inflateSync(bytes) : bytes;
    tables.set(file.toString('latin1', at, at + 4), plain);
  }
  return (name) => {
    const found = tables.get(name);
    if (found === undefined) throw new Error(`${specifier} has no table ${name}`);
    return found;
  };
};

/** Advance widths of a WOFF 1.0 file in thousandths of an em (OpenType tables `head`, `hhea`, `hmtx` and a format 4 `cmap`). */
export const woffAdvances = (specifier: string): ReadonlyMap<number, number> => {
  const table = woffTables(specifier);
  const unitsPerEm = table('head').readUInt16BE(18);
  const metrics = table('hhea').readUInt16BE(34);
  const hmtx = table('hmtx');
  const advance = (glyph: number): number =>
    (hmtx.readUInt16BE(Math.min(glyph, metrics - 1) * 4) * 1000) / unitsPerEm;

  const cmap = table('cmap');
  const advances = new Map<number, number>();
  for (let index = 0; index < cmap.readUInt16BE(2); index += 1) {
    const start = cmap.readUInt32BE(4 + index * 8 + 4);
    if (cmap.readUInt16BE(start) !== 4) continue;
    const doubled = cmap.readUInt16BE(start + 6);
    for (let segment = 0; segment < doubled; segment += 2) {
      const last = cmap.readUInt16BE(start + 14 + segment);
      const first = cmap.readUInt16BE(start + 16 + doubled + segment);
      const delta = cmap.readUInt16BE(start + 16 + 2 * doubled + segment);
      const rangeAt = start + 16 + 3 * doubled + segment;
      const range = cmap.readUInt16BE(rangeAt);
      for (let code = first; code <= last && code < 0xffff; code += 1) {
        const raw = range === 0 ? code : cmap.readUInt16BE(rangeAt + range + 2 * (code - first));
        const glyph = raw === 0 ? 0 : (raw + delta) & 0xffff;
        if (glyph !== 0) advances.set(code, advance(glyph));
      }
    }
  }
  return advances;
};
