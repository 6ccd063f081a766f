import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { forbiddenIn, readersText } from './houseWords.ts';

const read = /\.(?:html|svg|xml|txt)$/;
const notForReaders = /(?:^|\/)robots\.txt$|sitemap[^/]*\.xml$/;

const filesIn = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => read.test(file) && !notForReaders.test(file))
    .sort();

/** Every page, mail, feed and picture of every site: the house's words, and no others. */
describe.each([
  ['demo', inject('siteFolder')],
  ['tried', inject('triedFolder')],
  ['pooled', inject('pooledFolder')],
  ['odd', inject('oddRoot')],
])('%s', (_name, folder) => {
  const files = filesIn(folder);

  test('has pages to read', () => {
    expect(files.length).toBeGreaterThan(20);
  });

  test.each(files)('%s', (file) => {
    const text = readersText(readFileSync(join(folder, file), 'utf8'));
    expect(forbiddenIn(text)).toEqual([]);
  });
});
