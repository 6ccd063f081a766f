import MarkdownIt from 'markdown-it';

/** A sentence of a narrative as a reader sees it, by its place in the text. */
export interface ProseSentence {
  /** Length and offsets as in the source; what is not prose is blank. */
  readonly text: string;
  /** The sentence as it is written, without blanks around it and marks of lists, quotations and headings before it. */
  readonly written: string;
  /** Offset of the first character in the narrative. */
  readonly start: number;
  /** Whether the sentence takes its comparison from the findings: `{{ answer ... }}` or `{{ apart ... }}`. */
  readonly answered: boolean;
}

/** Nobody writes a sentence so long: what goes on without a stop is read in pieces, so that reading takes time in step with the text. */
const longestSentence = 1000;

/** The prose of a narrative: code, references and addresses are not read. A sentence of over 1,000 characters comes in pieces. */
export function sentencesOf(text: string): readonly ProseSentence[] {
  const prose = withoutCode(text);
  const read = blanked(prose, notProse);
  const sentences: ProseSentence[] = [];
  let start = 0;
  const end = (at: number, next: number): void => {
    while (at - start > longestSentence) {
      const blank = read.lastIndexOf(' ', start + longestSentence);
      const cut = blank > start ? blank : start + longestSentence;
      add(cut);
      start = cut;
    }
    add(at);
    start = next;
  };
  const add = (at: number): void => {
    const own = read.slice(start, at);
    const answered = /\{\{\s*(answer|apart)\b/.test(prose.slice(start, at));
    if (own.trim() !== '')
      sentences.push({
        text: own,
        written: text.slice(start, at).trim().replace(blockMark, ''),
        start,
        answered,
      });
  };
  for (const found of read.matchAll(sentenceEnd)) end(found.index, found.index + found[0].length);
  end(read.length, read.length);
  return sentences;
}

/** What makes a line an entry of a list, a quotation or a heading. */
const blockMark = /^(?:(?:[-+*>|]|\d+[.)]|#{1,6})[ \t]+)+/;

/** References, code spans, link addresses, bare addresses; marks of emphasis that would join words. */
const notProse: readonly RegExp[] = [
  /\{\{[^{}]*\}\}/g,
  /(?<!`)(`+)(?!`)(?:(?!\n\s*\n)[\s\S])*?(?<!`)\1(?!`)/g,
  /(?<=\])\([^()\n]*\)/g,
  /^ {0,3}\[[^\]\n]+\]:.*$/gm,
  /\bhttps?:\/\/\S+/g,
  /(?<![\p{L}\p{N}])[_*]+|[_*]+(?![\p{L}\p{N}])/gu,
];

/** An empty line, a new entry, heading, quote or cell, or a stop that is no decimal point and no abbreviation. */
const sentenceEnd =
  /\n[ \t]*\n|\n(?=[ \t]*(?:[-+>|]|\d+[.)]|#{1,6})[ \t])|\||(?=\s)(?<=[.!?]["'”’)]*)(?<!\b(?:e\.g|i\.e|vs|approx|no|cf)\.)\s+(?=\S)/gi;

const markdown = new MarkdownIt({ html: false });

/** Without one of these no text has code in it: a fence, or an indent of four blanks or a tab. */
const mayHoldCode = /`{3}|~{3}|\t| {4}/;

function withoutCode(text: string): string {
  if (!mayHoldCode.test(text)) return text;
  const lines = text.split('\n');
  for (const { type, map } of markdown.parse(text, {})) {
    if ((type !== 'fence' && type !== 'code_block') || map === null) continue;
    for (let line = map[0]; line < map[1]; line++) lines[line] = ' '.repeat((lines[line] ?? '').length);
  }
  return lines.join('\n');
}

function blanked(text: string, patterns: readonly RegExp[]): string {
  return patterns.reduce(
    (rest, pattern) => rest.replace(pattern, (match) => match.replace(/[^\n]/g, ' ')),
    text,
  );
}

/** A place in a file. */
interface LineAndColumn {
  readonly line: number;
  readonly column: number;
}

/** Line and column of any offset of a text, both counted from 1; the lines count on from `firstLine`. */
export function placesIn(text: string, firstLine: number): (offset: number) => LineAndColumn {
  const starts = [0, ...[...text.matchAll(/\n/g)].map(({ index }) => index + 1)];
  return (offset) => {
    let [line, after] = [0, starts.length];
    while (after - line > 1) {
      const middle = (line + after) >> 1;
      if ((starts[middle] ?? Infinity) <= offset) line = middle;
      else after = middle;
    }
    return { line: firstLine + line, column: offset - (starts[line] ?? 0) + 1 };
  };
}
