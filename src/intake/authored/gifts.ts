import { oneOf } from './answers.ts';
import { checkedFurther } from './collections.ts';
import { lineOr } from './lineOr.ts';
import { kindInWords, type KindInWords } from './kindInWords.ts';
import { invalid, refused, understood, type Schema, type Understood } from './trouble.ts';
import { isMadeOf, withoutStop, wordSet, wordsOf } from './wholeLine.ts';

/** Whether there was a commission, sponsorship or gift; `words` names what there was. */
export type Gifts = KindInWords<'none' | 'some' | 'in-words'>;

const negative = wordSet('no none nothing neither');
const noneWords = new Set([
  ...negative,
  ...wordSet(
    'any at all of either kind sort whatsoever commission commissions gift gifts sponsorship sponsor sponsors payment payments ' +
      'or and nor from anybody anyone was were is are taken received given accepted paid promised we took take the shop us for this test',
  ),
]);
const unsure = /^(?:no|not|none|nothing|neither|unknown|unclear|yes|we|i|it|there|maybe|perhaps)\b/i;

/** "none taken" is none; "none, but a box of balls" is kept in its words, since it is no such thing. */
function readGifts(line: string): Gifts {
  const words = withoutStop(line);
  if (isMadeOf(words, noneWords) && wordsOf(words).some((word) => negative.has(word)))
    return { kind: 'none', words };
  return { kind: unsure.test(words) ? 'in-words' : 'some', words };
}

const exactly: Schema<Gifts> = kindInWords(
  oneOf(['none', 'some']).describe('whether there was any'),
  'what there was, and from whom',
  { none: 'none', some: 'not named' },
);

/** Commission, sponsorship or gifts: a line, or a block for those who want it exact. */
export const gifts = checkedFurther(
  lineOr('which gifts', readGifts, exactly, 'text, such as `none`'),
  (read): Understood<Gifts> =>
    onlyYes.test(read.words)
      ? refused(
          invalid(
            [],
            'none, or which commission or gift there was and from whom',
            read.words,
            'Write what it was, such as "a commission of 5% on new heads, from their distributor", or none.',
          ),
        )
      : understood(read),
);

/** Readers are told which, so that "yes" answers nothing. */
const onlyYes = /^(?:yes|true|some|there (?:is|was|were))\.?$/i;
