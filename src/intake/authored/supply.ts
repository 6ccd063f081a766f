import { oneOf, text } from './answers.ts';
import { lineOr } from './lineOr.ts';
import { strict } from './strict.ts';
import { isMadeOf, isOnePiece, namesShop, withoutStop, wordSet, wordsOf } from './wholeLine.ts';

const supplyKinds = ['own-stock', 'bought', 'lent', 'given', 'customer'] as const;
type SupplyKind = (typeof supplyKinds)[number];

/** How a contender came to the test; `words` is the line as written, which is printed whole where nothing else fits. */
export type Supply =
  /** `stock` is which stock, such as "used"; null where the line says no more. */
  | { readonly kind: 'own-stock'; readonly stock: string | null; readonly words: string }
  /**
   * `by` is who lent, gave or sold it, `when` such as "for the day"; null where the line does not say it in one piece.
   * `whole` tells whether the two are all that the line says.
   */
  | {
      readonly kind: 'bought' | 'lent' | 'given';
      readonly by: string | null;
      readonly when: string | null;
      readonly whole: boolean;
      readonly words: string;
    }
  /** It belongs to a customer or golfer. */
  | { readonly kind: 'customer'; readonly by: string; readonly words: string }
  /** A line that could not be placed; `participle` where it follows "was": "supplied by its maker". */
  | { readonly kind: 'in-words'; readonly participle: boolean; readonly words: string };

const stockKinds = wordSet('used new demo retail rental second-hand ex-demo demonstration');
const stockWords = new Set([
  ...stockKinds,
  ...wordSet(
    "our ours own the shop's shop stock from off of in shelf shelves rack racks us we ourselves taken sales floor it was",
  ),
]);
const ownWords = wordSet("our ours own shop shop's us we ourselves stock");
const ownership =
  /^(?:(?:the|a|an|our|his|her|their|one of our) )?(?:customer|golfer|player)(?:s|['’]s|s['’])?(?: own)?(?: (?:club|ball|bag|set|one))?$/i;
const openings = {
  lent: /^(?:lent|loaned|on loan|borrowed)\b/i,
  given: /^(?:given|gifted|donated|a gift|free)\b/i,
  bought: /^(?:bought|purchased)\b/i,
} as const;

/** A line such as "lent by our distributor", placed where it leaves no doubt, else kept in its words. */
function readSupply(line: string): Supply {
  const words = withoutStop(line);
  const own = wordsOf(words);
  if (isMadeOf(words, stockWords) && own.some((word) => ownWords.has(word))) {
    const kinds = own.filter((word) => stockKinds.has(word));
    return { kind: 'own-stock', stock: kinds.length === 0 ? null : kinds.join(' '), words };
  }
  if (ownership.test(words)) return { kind: 'customer', by: ownerIn(words), words };
  if (openings.lent.test(words)) return handedOver('lent', words, /\b(?:by|from)\s+/i);
  if (openings.given.test(words)) return handedOver('given', words, /\b(?:by|from)\s+/i);
  if (openings.bought.test(words)) return boughtIn(words);
  return {
    kind: 'in-words',
    participle: /^(?:supplied|provided|sent|made|built|cut) (?:by|from)\b/i.test(words),
    words,
  };
}

const ownerIn = (words: string): string => words.replace(/(?:['’]s|s['’]).*$/i, '').replace(/ own\b.*$/i, '');

/** "lent for the day by its maker": by whom and when, as far as each stands in one piece. */
function handedOver(kind: 'lent' | 'given' | 'bought', words: string, before: RegExp, line = words): Supply {
  const at = before.exec(line);
  const by = at === null ? null : line.slice(at.index + at[0].length);
  const between = line.slice(0, at?.index ?? line.length).replace(/^(?:on loan|a gift|\S+)/i, '');
  const when = between.replace(/^ ?to us\b/i, '').trim();
  const whole = (by === null || isOnePiece(by)) && (when === '' || /^for [\w' ]+$/i.test(when));
  if (!whole) return { kind, by: null, when: null, whole, words };
  return { kind, by, when: when === '' ? null : when, whole, words };
}

/** Bought by the shop, unless the line names another buyer. */
function boughtIn(words: string): Supply {
  const buyer = /\bby\s+(.*?)(?:\s+(?:from|at|in)\b|$)/i.exec(words)?.[1];
  if (buyer !== undefined && !namesShop(buyer)) return { kind: 'in-words', participle: true, words };
  const line = words.replace(/ by (?:us|the shop|our shop|ourselves)\b/i, '');
  return handedOver('bought', words, /\bfrom\s+/i, line);
}

/** The line that a block in place of it amounts to. */
function inOneLine(kind: SupplyKind, by: string | null): string {
  if (kind === 'own-stock') return by === null ? 'our stock' : `our ${by} stock`;
  if (kind === 'customer') return `${by ?? 'a customer'}’s own`;
  const link = kind === 'bought' ? 'from' : 'by';
  return by === null ? kind : `${kind} ${link} ${by}`;
}

const exactly = strict({
  kind: oneOf(supplyKinds).describe('how it came to the test'),
  by: text('who lent, gave or sold it, or whose it is; of our own stock, which').exactOptional(),
  words: text('the same in words of your own, printed in the list of conditions').exactOptional(),
}).transform(({ kind, by = null, words }): Supply => {
  const told = { words: words ?? inOneLine(kind, by) };
  if (kind === 'own-stock') return { kind, stock: by, ...told };
  if (kind === 'customer') return { kind, by: by ?? 'a customer', ...told };
  return { kind, by, when: null, whole: true, ...told };
});

/** Who supplied a contender: a line, or a block for those who want it exact. */
export const supply = lineOr(
  'who supplied it',
  readSupply,
  exactly,
  'text, such as `our stock` or `lent by its distributor`',
);
