import { makeProblem } from '../../problems/makeProblem.ts';
import type { Problem } from '../../problems/problem.ts';
import { binaryKind, decodeBytes } from '../shots/bytes.ts';

/** The text of a file that a shop wrote; null with an error where its bytes cannot be read as one. */
export interface DecodedFile {
  readonly text: string | null;
  /** What it was saved as. */
  readonly encoding: 'UTF-8' | 'UTF-16' | 'Windows-1252';
  readonly problems: readonly Problem[];
}

/** Signs that a program puts in the place of letters that it could not read. */
const lost = '\ufffd';

/**
 * Reads the bytes of a text by the rules of the CSV intake, and without losing a letter: what is not UTF-8 gets a
 * warning, and what cannot be told for certain is refused. So is UTF-8 with a broken place in it, which read as
 * Windows-1252 would turn every other letter beyond ASCII into two wrong ones.
 *
 * @param file path from the content folder
 */
export function decodeText(file: string, bytes: Uint8Array): DecodedFile {
  const binary = binaryKind(bytes);
  if (binary !== null) {
    const text = { expected: 'plain text', found: binary, cure: 'Save it as plain text, in UTF-8.' };
    return { text: null, encoding: 'UTF-8', problems: [makeProblem('not-text', { file }, text)] };
  }
  const decoded = decodeBytes(bytes);
  const marked = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
  const encoding = decoded.guessed ?? (marked ? 'UTF-16' : 'UTF-8');
  const broken = decoded.brokenLine ?? (encoding === 'Windows-1252' ? brokenLineOfUtf8(bytes) : null);
  if (broken !== null) {
    const problem = makeProblem(
      'encoding-broken',
      { file, line: broken },
      {
        expected: 'text in one encoding, best UTF-8',
        found: 'bytes that are no characters',
        cure: 'Open the file in an editor, type the damaged letters of that line anew, and save it as UTF-8.',
      },
    );
    return { text: null, encoding, problems: [problem] };
  }
  const other =
    encoding === 'UTF-8'
      ? []
      : [
          makeProblem(
            'not-utf-8',
            { file },
            {
              expected: 'text saved as UTF-8',
              found: encoding,
              cure: `It was read as ${encoding}. Save it as UTF-8, and look at letters with accents, dashes and degree signs.`,
            },
          ),
        ];
  return { text: decoded.text, encoding, problems: [...other, ...lostLetters(file, decoded.text)] };
}

/**
 * The line of the first byte that is no UTF-8, where most of what lies beyond ASCII is; null where little of it is,
 * and the text is in another encoding. Windows-1252 now and then has two letters that would be one of UTF-8.
 */
function brokenLineOfUtf8(bytes: Uint8Array): number | null {
  const lenient = new TextDecoder().decode(bytes);
  const right = lenient.match(/[^\u0000-\u007f\ufffd]/gu)?.length ?? 0;
  const wrong = lenient.split(lost).length - 1;
  if (right === 0 || right < wrong) return null;
  return lenient.slice(0, lenient.indexOf(lost)).split(/\r\n|\n|\r/).length;
}

/** The first lost letter of each line. */
function lostLetters(file: string, text: string): readonly Problem[] {
  if (!text.includes(lost)) return [];
  return text.split(/\r\n|\n|\r/).flatMap((line, index) => {
    const at = line.indexOf(lost);
    return at === -1 ? [] : [lostLetter({ file, line: index + 1, column: at + 1 })];
  });
}

const lostLetter = (place: {
  readonly file: string;
  readonly line: number;
  readonly column: number;
}): Problem =>
  makeProblem('letters-lost', place, {
    expected: 'the letter that stood there',
    found: `${lost}, the sign for a letter that could not be read`,
    cure: 'Type the letter anew: a program has lost it when the file was saved.',
  });
