import { advanceTable, type Advance } from './advanceTable.ts';
import advances from './sourceSansAdvances.json' with { type: 'json' };

export type Weight = 400 | 600;

/** How far a text in Source Sans 3 reaches, without kerning. */
const sourceSansAdvance: Readonly<Record<Weight, Advance>> = {
  400: advanceTable(advances.runs.map(({ first, regular }) => ({ first, advances: regular }))),
  600: advanceTable(advances.runs.map(({ first, semibold }) => ({ first, advances: semibold }))),
};

/** Width in px of a line set in Source Sans 3 without kerning, which only ever makes it narrower by a little. */
export const textWidth = (text: string, size: number, weight: Weight): number =>
  (sourceSansAdvance[weight](text) * size) / 1000;

/** Width in px of a line in one type. */
type Measure = (line: string) => number;

const sourceSans =
  (size: number, weight: Weight): Measure =>
  (line) =>
    textWidth(line, size, weight);

/** The text, or as much of it as fits `room` px with an ellipsis. */
export const shortenText = (text: string, size: number, weight: Weight, room: number): string =>
  shortenMeasured(text, sourceSans(size, weight), room);

const shortenMeasured = (text: string, widthOf: Measure, room: number): string => {
  if (widthOf(text) <= room) return text;
  const characters = [...text];
  while (characters.length > 1) {
    characters.pop();
    const shorter = `${characters.join('').trimEnd()}…`;
    if (widthOf(shorter) <= room) return shorter;
  }
  return '…';
};

/** Lines of at most `room` px, broken between words; a single word that is too long is shortened. */
export const wrapText = (text: string, size: number, weight: Weight, room: number): readonly string[] =>
  wrapMeasured(text, sourceSans(size, weight), room);

/** The same in any type. */
const wrapMeasured = (text: string, widthOf: Measure, room: number): readonly string[] => {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter((part) => part !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (widthOf(longer) <= room) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = shortenMeasured(word, widthOf, room);
  }
  return line === '' ? lines : [...lines, line];
};

/** As `wrapText`, the lines as even as they may be without one more. */
export const wrapEvenly = (text: string, size: number, weight: Weight, room: number): readonly string[] => {
  const lines = wrapText(text, size, weight, room);
  if (lines.length < 2) return lines;
  const widthOf = sourceSans(size, weight);
  // A narrower column helps only as long as no word has to be split.
  let [least, most] = [Math.max(room / 2, ...text.split(/\s+/).map(widthOf)), room];
  if (least >= room) return lines;
  while (most - least > 1) {
    const middle = (least + most) / 2;
    if (wrapText(text, size, weight, middle).length > lines.length) least = middle;
    else most = middle;
  }
  return wrapText(text, size, weight, most);
};

/** As `wrapText`, but never more than `most` lines: the last one is shortened. */
export const fitText = (
  text: string,
  size: number,
  weight: Weight,
  room: number,
  most: number,
): readonly string[] => {
  const lines = wrapText(text, size, weight, room);
  if (lines.length <= most) return lines;
  const rest = lines.slice(most - 1).join(' ');
  return [...lines.slice(0, most - 1), shortenText(`${rest} …`, size, weight, room)];
};
