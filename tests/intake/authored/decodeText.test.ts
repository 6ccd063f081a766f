import { describe, expect, test } from 'vitest';
import { decodeText } from '../../../src/intake/authored/decodeText.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const windows = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
const wide = (text: string): Uint8Array => new Uint8Array(Buffer.from(`\ufeff${text}`, 'utf16le'));
const found = (given: Uint8Array) => {
  const { text, encoding, problems } = decodeText('reports/x/report.md', given);
  return { text, encoding, problems: problems.map(({ kind, severity, line }) => [kind, severity, line]) };
};

describe('decodeText', () => {
  test('UTF-8, with a mark or without, is read in silence', () => {
    const right = { text: 'zwölf, 9°\n', encoding: 'UTF-8', problems: [] };
    expect(found(bytes('zwölf, 9°\n'))).toEqual(right);
    expect(found(bytes('\ufeffzwölf, 9°\n'))).toEqual(right);
    expect(found(new Uint8Array())).toEqual({ text: '', encoding: 'UTF-8', problems: [] });
  });

  test('Windows-1252 and UTF-16 keep every letter, with a warning that names them', () => {
    expect(found(windows('zwölf, 9°\n'))).toEqual({
      text: 'zwölf, 9°\n',
      encoding: 'Windows-1252',
      problems: [['not-utf-8', 'warning', null]],
    });
    expect(found(wide('zwölf, 9°\n'))).toEqual({
      text: 'zwölf, 9°\n',
      encoding: 'UTF-16',
      problems: [['not-utf-8', 'warning', null]],
    });
    const [problem] = decodeText('shop.yaml', windows('name: Grünwald')).problems;
    expect(problem).toMatchObject({
      file: 'shop.yaml',
      expected: 'text saved as UTF-8',
      found: 'Windows-1252',
      cure: 'It was read as Windows-1252. Save it as UTF-8, and look at letters with accents, dashes and degree signs.',
    });
  });

  test('UTF-8 with a broken place is refused at its line: as Windows-1252 every other letter would be two', () => {
    const broken = new Uint8Array([...bytes('eins\nzwölf Bälle\n'), 0xf6, ...bytes(' 9°\n')]);
    expect(found(broken)).toEqual({
      text: null,
      encoding: 'Windows-1252',
      problems: [['encoding-broken', 'error', 3]],
    });
    const [problem] = decodeText('shop.yaml', broken).problems;
    expect(problem?.cure).toBe(
      'Open the file in an editor, type the damaged letters of that line anew, and save it as UTF-8.',
    );
  });

  test('two letters of Windows-1252 that would be one of UTF-8 do not make it UTF-8', () => {
    // Sharp s and a closing quotation mark.
    expect(found(windows('f\u00fcr \u0084Fu\u00df\u0093 und \u0084B\u00e4r\u0093')).text).toBe(
      'für „Fuß“ und „Bär“',
    );
  });

  test('letters lost before are a warning, the first of each line', () => {
    expect(found(bytes('D\ufffdp\ufffdt\nwell\nGr\ufffdn\n'))).toEqual({
      text: 'D\ufffdp\ufffdt\nwell\nGr\ufffdn\n',
      encoding: 'UTF-8',
      problems: [
        ['letters-lost', 'warning', 1],
        ['letters-lost', 'warning', 3],
      ],
    });
    const [problem] = decodeText('shop.yaml', bytes('name: Gr\ufffdn')).problems;
    expect(problem).toMatchObject({
      line: 1,
      column: 9,
      expected: 'the letter that stood there',
      found: '\ufffd, the sign for a letter that could not be read',
      cure: 'Type the letter anew: a program has lost it when the file was saved.',
    });
  });

  test('what is no text is refused', () => {
    const [problem] = decodeText('shop.yaml', bytes('%PDF-1.7')).problems;
    expect(problem).toMatchObject({
      kind: 'not-text',
      expected: 'plain text',
      found: 'a PDF',
      cure: 'Save it as plain text, in UTF-8.',
    });
  });
});
