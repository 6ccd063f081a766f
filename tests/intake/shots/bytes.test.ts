import { describe, expect, it } from 'vitest';
import { binaryKind, decodeBytes } from '../../../src/intake/shots/bytes.ts';

const bytes = (...parts: (string | readonly number[])[]): Uint8Array =>
  Uint8Array.from(parts.flatMap((part) => (typeof part === 'string' ? [...Buffer.from(part)] : [...part])));

describe('decodeBytes', () => {
  it('drops a mark at the start and in mid-file', () => {
    const mark = [0xef, 0xbb, 0xbf];
    expect(decodeBytes(bytes(mark, 'a\n', mark, 'b')).text).toBe('a\nb');
  });

  it('reads Windows-1252 by its own table', () => {
    // Published code page: 0x80 euro sign, 0x96 en dash, 0xB0 degree sign, 0xEA e with circumflex.
    expect(decodeBytes(bytes([0x80, 0x96, 0xb0, 0xea]))).toMatchObject({
      text: '€–°ê',
      guessed: 'Windows-1252',
    });
  });

  it('does not take zero bytes in a UTF-8 file for UTF-16', () => {
    expect(decodeBytes(bytes('Club,Carry\nA,240\n', Array<number>(30).fill(0)))).toMatchObject({
      guessed: null,
      padding: 30,
      text: 'Club,Carry\nA,240\n',
    });
  });

  it('keeps zero bytes that follow a cell rather than a line end', () => {
    expect(decodeBytes(bytes('A,240', [0, 0]))).toMatchObject({ padding: 0, text: 'A,240\0\0' });
  });

  it('names the line of the first byte that is no character', () => {
    expect(decodeBytes(bytes([0xef, 0xbb, 0xbf], 'a\r\nb\n', [0xff], 'c')).brokenLine).toBe(3);
  });
});

describe('binaryKind', () => {
  it('knows spreadsheets and pictures by their first bytes', () => {
    expect(binaryKind(bytes([0x50, 0x4b, 3, 4]))).toContain('.xlsx');
    expect(binaryKind(bytes([0xd0, 0xcf, 0x11, 0xe0]))).toContain('.xls');
    expect(binaryKind(bytes([0x89, 0x50, 0x4e, 0x47]))).toBe('a picture');
    expect(binaryKind(bytes([1, 2, 3, 4, 5, 6]))).toBe('not text');
  });

  it('takes text in any encoding for text', () => {
    expect(binaryKind(bytes('Club,Carry (yd)\r\n\tA'))).toBeNull();
    expect(binaryKind(new Uint8Array(Buffer.from('\ufeffClub;Тест', 'utf16le')))).toBeNull();
  });
});
