import { binaryKind, decodeBytes, type DecodedText } from './bytes.ts';
import type { Report } from './collector.ts';

/** Largest file in bytes that is read. */
export const largestFile = 50_000_000;

/** Bytes to text, with a problem for all that was guessed; null where there is no text to read. */
export function decodeFile(bytes: Uint8Array, report: Report): DecodedText | null {
  if (bytes.length > largestFile) {
    report('file-too-large', {
      expected: `at most ${largestFile / 1_000_000} MB`,
      found: `${(bytes.length / 1_000_000).toFixed(1)} MB`,
      cure: 'split the session over several files',
    });
    return null;
  }
  const binary = binaryKind(bytes);
  if (binary !== null) {
    report('not-text', {
      expected: 'a CSV, which is plain text',
      found: binary,
      cure: 'export or save the session as CSV',
    });
    return null;
  }
  const decoded = decodeBytes(bytes);
  if (decoded.text.trim() === '') {
    report('empty-file', {
      expected: 'a line of headings and a row for each shot',
      found: null,
      cure: 'export the session again',
    });
    return null;
  }
  if (decoded.brokenLine !== null) {
    report('encoding-broken', {
      line: decoded.brokenLine,
      expected: 'text in the encoding that the file states',
      found: 'bytes that are no characters',
      cure: 'export the session again, as UTF-8 if you are asked',
    });
  }
  if (decoded.guessed !== null) {
    report('encoding-guessed', {
      expected: 'UTF-8, or a mark at the start of the file that names its encoding',
      found: decoded.guessed,
      cure: `check names with accents: the file was read as ${decoded.guessed}, which spreadsheets often write; save it as UTF-8 to be sure`,
    });
  }
  if (decoded.padding > 0) {
    report('trailing-nul-padding', {
      expected: 'nothing after the last row',
      found: `${decoded.padding} empty bytes`,
      cure: 'nothing need be done if the last shot is in the file; else export it again',
    });
  }
  return decoded;
}
