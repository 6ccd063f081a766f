import { readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readSealed, writeSealed } from '../../src/site/sealed.ts';
import { folderOf } from '../folders/folderOf.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const text = (content: Uint8Array | null): string | null =>
  content === null ? null : new TextDecoder().decode(content);

test('what was sealed comes back, nothing at all as well', () => {
  const file = join(folderOf({}), 'deep/file');
  for (const content of ['', 'a picture', 'ä\n\0'.repeat(1000)]) {
    writeSealed(file, 'key', bytes(content));
    expect(text(readSealed(file, 'key'))).toBe(content);
  }
});

test('changed in any bit, or cut anywhere, it is not believed', () => {
  const file = join(folderOf({}), 'file');
  writeSealed(file, 'key', bytes('a picture'));
  const whole = readFileSync(file);
  for (let bit = 0; bit < 8 * whole.length; bit += 1) {
    const flipped = Buffer.from(whole);
    flipped[bit >> 3] = (flipped[bit >> 3] ?? 0) ^ (1 << (bit & 7));
    writeFileSync(file, flipped);
    expect(readSealed(file, 'key')).toBeNull();
  }
  for (let length = 0; length < whole.length; length += 1) {
    writeFileSync(file, whole.subarray(0, length));
    expect(readSealed(file, 'key')).toBeNull();
  }
  writeFileSync(file, Buffer.concat([whole, bytes(' ')]));
  expect(readSealed(file, 'key')).toBeNull();
});

test('under the name of another one it is not believed', () => {
  const folder = folderOf({});
  writeSealed(join(folder, 'one'), 'one', bytes('a picture'));
  renameSync(join(folder, 'one'), join(folder, 'two'));
  expect(readSealed(join(folder, 'two'), 'two')).toBeNull();
  expect(readSealed(join(folder, 'one'), 'one')).toBeNull();
});
