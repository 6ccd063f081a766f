/** The text of a file, and what had to be guessed or cut off to get it. */
export interface DecodedText {
  readonly text: string;
  /** The encoding, where nothing in the file states it and it is not UTF-8. */
  readonly guessed: 'UTF-16' | 'Windows-1252' | null;
  /** Line of the first byte that is no character in the encoding the file states. */
  readonly brokenLine: number | null;
  /** Zero characters cut off after the last line end. */
  readonly padding: number;
}

type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

const marks: readonly { readonly encoding: Encoding; readonly bytes: readonly number[] }[] = [
  { encoding: 'utf-8', bytes: [0xef, 0xbb, 0xbf] },
  { encoding: 'utf-16le', bytes: [0xff, 0xfe] },
  { encoding: 'utf-16be', bytes: [0xfe, 0xff] },
];

const markAt = (bytes: Uint8Array, at: number) =>
  marks.find((mark) => mark.bytes.every((byte, offset) => bytes[at + offset] === byte)) ?? null;

/** Where a byte order mark stands: at the start, or behind a line end where files were pasted together. */
function markedStarts(bytes: Uint8Array): readonly number[] {
  const starts = [0];
  for (const mark of marks) {
    const [first = 0] = mark.bytes;
    for (let at = bytes.indexOf(first, 1); at > 0; at = bytes.indexOf(first, at + 1)) {
      if (markAt(bytes, at) !== mark) continue;
      const before = bytes[at - 1];
      const wide = before === 0 ? bytes[at - 2] : before;
      if (wide === 0x0a || wide === 0x0d) starts.push(at);
    }
  }
  return starts.sort((a, b) => a - b);
}

/** UTF-16 without a mark: of ASCII-like text every second byte is zero. */
function unmarkedUtf16(bytes: Uint8Array): Encoding | null {
  const sample = Math.min(bytes.length - (bytes.length % 2), 4096);
  const zeros = [0, 0];
  let end = sample;
  while (end > 0 && bytes[end - 1] === 0 && bytes[end - 2] === 0) end -= 2;
  for (let at = 0; at < end; at += 1) if (bytes[at] === 0) zeros[at % 2] = (zeros[at % 2] ?? 0) + 1;
  const [even = 0, odd = 0] = zeros;
  const most = end / 2;
  if (most < 2) return null;
  if (odd >= 0.7 * most && even <= 0.05 * most) return 'utf-16le';
  return even >= 0.7 * most && odd <= 0.05 * most ? 'utf-16be' : null;
}

const decode = (bytes: Uint8Array, encoding: Encoding): string => new TextDecoder(encoding).decode(bytes);

function decodesStrictly(bytes: Uint8Array, encoding: Encoding): string | null {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

const lineOf = (text: string, at: number): number =>
  (text.slice(0, at).match(/\r\n|\n|\r/g)?.length ?? 0) + 1;

/**
 * Decodes the bytes of a CSV: a byte order mark is obeyed, also a second one in mid-file; else strict UTF-8; else
 * UTF-16 where every second byte is zero; else Windows-1252. The last two are guesses.
 */
export function decodeBytes(bytes: Uint8Array): DecodedText {
  let guessed: DecodedText['guessed'] = null;
  let brokenLine: number | null = null;
  let text = '';
  const starts = markedStarts(bytes);
  for (const [index, start] of starts.entries()) {
    const part = bytes.subarray(start, starts[index + 1] ?? bytes.length);
    const mark = markAt(part, 0);
    const wide = mark === null ? unmarkedUtf16(part) : null;
    const encoding = mark?.encoding ?? wide ?? 'utf-8';
    if (wide !== null) guessed = 'UTF-16';
    const strict = decodesStrictly(part, encoding);
    if (strict !== null) text += strict;
    else if (mark === null && wide === null) {
      guessed = 'Windows-1252';
      text += decode(part, 'windows-1252');
    } else {
      const lenient = decode(part, encoding);
      brokenLine ??= lineOf(text + lenient, text.length + Math.max(0, lenient.indexOf('\ufffd')));
      text += lenient;
    }
  }
  // In UTF-16 a second mark arrives as a character.
  text = text.replace(/(^|[\r\n])\ufeff/g, '$1');
  let end = text.length;
  while (end > 0 && text[end - 1] === '\0') end -= 1;
  const padded = end < text.length && (end === 0 || text[end - 1] === '\n' || text[end - 1] === '\r');
  return {
    text: padded ? text.slice(0, end) : text,
    guessed,
    brokenLine,
    padding: padded ? text.length - end : 0,
  };
}

/** What a file is that is no text at all: a spreadsheet, a PDF, a picture. Null where it may be text. */
export function binaryKind(bytes: Uint8Array): string | null {
  const starts = (...head: number[]): boolean => head.every((byte, at) => bytes[at] === byte);
  if (starts(0x50, 0x4b, 0x03, 0x04)) return 'a zip file or a spreadsheet (.xlsx, .ods, .numbers)';
  if (starts(0xd0, 0xcf, 0x11, 0xe0)) return 'an old spreadsheet (.xls)';
  if (starts(0x25, 0x50, 0x44, 0x46)) return 'a PDF';
  if (starts(0x1f, 0x8b)) return 'a compressed file (.gz)';
  if (starts(0x89, 0x50, 0x4e, 0x47) || starts(0xff, 0xd8, 0xff)) return 'a picture';
  if (markAt(bytes, 0) !== null) return null;
  const sample = bytes.subarray(0, 4096);
  const odd = sample.filter(
    (byte) => (byte < 0x20 && ![0, 9, 10, 12, 13, 0x1a, 0x1b].includes(byte)) || byte === 0x7f,
  );
  return odd.length > 0.05 * sample.length ? 'not text' : null;
}
