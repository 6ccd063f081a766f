import { oneOf, text } from './answers.ts';
import { lineOr } from './lineOr.ts';
import { strict } from './strict.ts';
import { isMadeOf, isOnePiece, namesShop, withoutStop, wordSet } from './wholeLine.ts';

/** Who paid for a test; `words` is the line as written. */
export type Payment =
  | { readonly kind: 'shop'; readonly words: string }
  /** `words` names them and can follow "paid for by". */
  | { readonly kind: 'others'; readonly words: string }
  /** The shop and others; `by` and `share` where the line says them in one piece: "half each". */
  | {
      readonly kind: 'shared';
      readonly by: string | null;
      readonly share: string | null;
      readonly words: string;
    }
  | { readonly kind: 'in-words'; readonly words: string };

const shopWords = wordSet('the our own this shop itself us we ourselves only alone paid by it workshop');
const bothPaid = /^(?:the shop|our shop|us|we)(?: itself)?,? (?:and|with|together with) (.+)$/i;
const othersAndShop =
  /^([^,;]+?) (?:and|with|together with) (?:the shop|our shop|us)(?: itself)?(?:, (.+))?$/i;
const unsure = /^(?:no|not|none|nobody|nothing|unknown|unclear|yes|half|part|partly|some|mostly|paid)\b/i;

/** A line such as "the shop and the maker of Clover, half each", placed where it leaves no doubt. */
function readPayment(line: string): Payment {
  const words = withoutStop(line);
  if (isMadeOf(words, shopWords)) return { kind: 'shop', words };
  const others = bothPaid.exec(words)?.[1];
  if (others !== undefined) return shared(words, others);
  const [, first, share] = othersAndShop.exec(words) ?? [];
  if (first !== undefined) return shared(words, share === undefined ? first : `${first}, ${share}`);
  if (unsure.test(words) || namesShop(words)) return { kind: 'in-words', words };
  return { kind: 'others', words };
}

/** Others beside the shop, and how the costs were shared: "the maker of Clover, half each". */
function shared(words: string, rest: string): Payment {
  const [by = '', share = null, ...more] = rest.split(/,\s*/);
  if (more.length > 0 || !isOnePiece(by) || unsure.test(by))
    return { kind: 'shared', by: null, share: null, words };
  return { kind: 'shared', by, share, words };
}

const exactly = strict({
  kind: oneOf(['shop', 'others', 'shared']).describe('who paid: the shop, others, or both'),
  by: text('who else paid').exactOptional(),
  share: text('how the costs were shared, such as half each').exactOptional(),
  words: text('the same in words of your own, printed in the list of conditions').exactOptional(),
}).transform(({ kind, by = null, share = null, words }): Payment => {
  if (kind === 'shop') return { kind, words: words ?? 'the shop' };
  const others = by ?? 'others, not named';
  if (kind === 'others') return { kind, words: words ?? others };
  const said = words ?? `the shop and ${others}${share === null ? '' : `, ${share}`}`;
  return { kind, by, share, words: said };
});

/** Who paid for the test: a line, or a block for those who want it exact. */
export const payment = lineOr(
  'who paid',
  readPayment,
  exactly,
  'text, such as `the shop` or `the shop and the maker of Clover, half each`',
);
