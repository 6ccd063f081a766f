import { oneOf } from './answers.ts';
import { lineOr } from './lineOr.ts';
import { kindInWords, type KindInWords } from './kindInWords.ts';
import type { Schema } from './trouble.ts';
import { isMadeOf, withoutStop, wordSet, wordsOf } from './wholeLine.ts';

/** Who outside the shop saw a report before its publication; `words` names them. */
export type SeenBefore = KindInWords<'nobody-outside' | 'others' | 'in-words'>;

const negative = wordSet('nobody none no-one');
const nobodyWords = new Set([
  ...negative,
  ...wordSet(
    'no one outside of from the our shop but except us we else at all saw it this report before publication',
  ),
]);

/** "nobody outside the shop" is nobody; "nobody but the maker of Clover" is kept in its words. */
function readSeenBefore(line: string): SeenBefore {
  const words = withoutStop(line);
  const first = wordsOf(words.replace(/^no one\b/i, 'nobody'))[0] ?? '';
  if (negative.has(first) && isMadeOf(words, nobodyWords)) return { kind: 'nobody-outside', words };
  return {
    kind: negative.has(first) || /^(?:no|not|unknown|yes)\b/i.test(first) ? 'in-words' : 'others',
    words,
  };
}

const exactly: Schema<SeenBefore> = kindInWords(
  oneOf(['nobody-outside', 'others']).describe('whether anybody outside the shop saw it'),
  'who saw it',
  { 'nobody-outside': 'nobody outside the shop', others: 'others, not named' },
);

/** Who saw the report first: a line, or a block for those who want it exact. */
export const seenBefore = lineOr(
  'who saw it',
  readSeenBefore,
  exactly,
  'text, such as `nobody outside the shop`',
);
