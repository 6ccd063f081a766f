import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { diskTrouble } from './diskTrouble.ts';
import { writeWhole } from './writeWhole.ts';

/** Length of a seal before the content: SHA-256 in hexadecimal digits and the end of the line. */
const sealLength = 65;

/**
 * The content of a cache file that was written under this key; null for one that is missing, cut short, changed, or
 * written under another key.
 */
export function readSealed(file: string, key: string): Uint8Array | null {
  if (!existsSync(file)) return null;
  const bytes = readFileSync(file);
  const content = bytes.subarray(sealLength);
  return bytes.subarray(0, sealLength).toString('latin1') === `${sealOf(key, content)}\n` ? content : null;
}

/** As `readSealed` takes it. On a full or locked disk nothing is kept: it is then worked out anew. */
export function writeSealed(file: string, key: string, content: Uint8Array): void {
  try {
    writeWhole(file, Buffer.concat([Buffer.from(`${sealOf(key, content)}\n`, 'latin1'), content]));
  } catch (error) {
    if (diskTrouble(error) === null) throw error;
  }
}

/** SHA-256 over key and content, in hexadecimal digits: files that were exchanged do not pass for one another. */
export function sealOf(key: string, content: Uint8Array): string {
  return createHash('sha256').update(`${key}\n`).update(content).digest('hex');
}
