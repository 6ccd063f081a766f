import { textWidth, type Weight } from '../charts/textWidth.ts';

/**
 * Lines of at most `room` px, broken between words. A word that is wider than a line, as an address may be, is parted
 * after one of its signs or else anywhere: nothing is left out. Each word is measured once, as cards are set many times.
 */
export function wrapWords(told: string, size: number, weight: Weight, room: number): readonly string[] {
  const space = textWidth(' ', size, weight);
  const lines: string[] = [];
  let line = '';
  let filled = 0;
  const add = (word: string): void => {
    const width = textWidth(word, size, weight);
    if (line !== '' && filled + space + width <= room) {
      line += ` ${word}`;
      filled += space + width;
      return;
    }
    if (line !== '') lines.push(line);
    if (width <= room) {
      line = word;
      filled = width;
      return;
    }
    const [start, rest] = parted(word, size, weight, room);
    lines.push(start);
    line = '';
    add(rest);
  };
  for (const word of told.split(/\s+/)) if (word !== '') add(word);
  return line === '' ? lines : [...lines, line];
}

/** As much of a word as fits a line, up to its last sign there, and the rest. */
function parted(word: string, size: number, weight: Weight, room: number): readonly [string, string] {
  const letters = [...word];
  let fitting = letters.length - 1;
  while (fitting > 1 && textWidth(letters.slice(0, fitting).join(''), size, weight) > room) fitting -= 1;
  const sign = letters.slice(0, fitting).findLastIndex((letter) => '/-.'.includes(letter));
  const end = sign > 0 ? sign + 1 : fitting;
  return [letters.slice(0, end).join(''), letters.slice(end).join('')];
}
