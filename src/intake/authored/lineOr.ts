import { text } from './answers.ts';
import { wordsOr } from './collections.ts';
import type { Schema } from './trouble.ts';

/** One line of text, or a block for those who want it exact. @param short says in Markdown what the line tells */
export const lineOr = <T>(
  what: string,
  read: (line: string) => T,
  block: Schema<T>,
  short: string = what,
): Schema<T> => wordsOr(text(what).transform(read), block, short);
