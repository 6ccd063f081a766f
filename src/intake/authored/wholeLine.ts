/** Whether a line is made of these words alone, so that nothing in it can take back what it opens with. */
export function isMadeOf(line: string, words: ReadonlySet<string>): boolean {
  const own = wordsOf(line);
  return own.length > 0 && own.every((word) => words.has(word));
}

/** The words of a line in lower case, without punctuation at their ends. */
export function wordsOf(line: string): readonly string[] {
  return line
    .toLowerCase()
    .replace(/’/g, "'")
    .split(/[\s,;.()]+/)
    .filter((word) => word !== '');
}

/** Words of an English line as a set. */
export const wordSet = (words: string): ReadonlySet<string> => new Set(words.split(' '));

/** A name or description in one piece, that a sentence can be built round: no clause of its own follows. */
export const isOnePiece = (words: string): boolean => words !== '' && !/[,;:()]|\.\s/.test(words);

/** Whether the shop itself is named, and not something that is the shop's. */
export const namesShop = (line: string): boolean =>
  /\b(?:us|we|ourselves|the shop itself)\b|\bshop\b(?!['’]s)/i.test(line);

/** A line without the full stop at its end. */
export const withoutStop = (line: string): string => line.trim().replace(/\.$/, '');
