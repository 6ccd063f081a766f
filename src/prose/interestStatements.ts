import { nameInText } from './english/names.ts';
import type { Contender } from '../intake/authored/contender.ts';
import type { Front } from '../intake/authored/front.ts';
import type { Gifts } from '../intake/authored/gifts.ts';
import type { Payment } from '../intake/authored/payment.ts';
import type { SeenBefore } from '../intake/authored/seenBefore.ts';
import type { Supply } from '../intake/authored/supply.ts';

/** What a statement bears on, and whether anything in it comes from outside the shop or cannot be ruled out to. */
interface Bearing {
  /** Ids of contenders. */
  readonly contenders: readonly string[];
  readonly outside: boolean;
}

/** One thing that a shop states of its interest in what it tested; authored words and ids, no sentence. */
export type InterestStatement = Bearing &
  (
    | { readonly kind: 'sells'; readonly how: Contender['soldHere'] }
    | { readonly kind: 'supply'; readonly supply: Supply }
    | { readonly kind: 'payment'; readonly payment: Payment }
    | { readonly kind: 'gifts'; readonly gifts: Gifts }
    | { readonly kind: 'seen'; readonly seen: SeenBefore }
    /** A sentence of the shop's own: on where things came from, or its standing one. */
    | { readonly kind: 'own-words'; readonly words: string }
  );

type Interested = Pick<Front, 'contenders' | 'interests'>;

const soldKinds = ['new', 'used', 'both', 'no'] as const;

/** All that the shop states of its interest, in the order in which it is told; what is alike is stated together. */
export function interestsOf({ contenders, interests }: Interested): readonly InterestStatement[] {
  const { supplied, paidBy, commissionOrGifts, seenBefore, sentence } = interests;
  const named = (words: string): readonly string[] => contendersNamed(words, contenders);
  const own = (words: string | undefined): InterestStatement[] =>
    words === undefined ? [] : [{ kind: 'own-words', words, contenders: named(words), outside: false }];
  return [
    ...soldKinds.flatMap((how): InterestStatement[] => {
      const sold = contenders.filter(({ soldHere }) => soldHere === how);
      return sold.length === 0 ? [] : [{ kind: 'sells', how, contenders: idsOf(sold), outside: false }];
    }),
    ...[...Map.groupBy(contenders, ({ suppliedBy }) => suppliedBy.words)].flatMap(
      ([, [first, ...others]]): InterestStatement[] => {
        if (first === undefined) return [];
        const supply = first.suppliedBy;
        const outside = supply.kind !== 'own-stock' && supply.kind !== 'bought';
        return [{ kind: 'supply', supply, contenders: idsOf([first, ...others]), outside }];
      },
    ),
    ...own(supplied),
    {
      kind: 'payment',
      payment: paidBy,
      contenders: named(paidBy.words),
      outside: paidBy.kind !== 'shop',
    },
    {
      kind: 'gifts',
      gifts: commissionOrGifts,
      contenders: named(commissionOrGifts.words),
      outside: commissionOrGifts.kind !== 'none',
    },
    {
      kind: 'seen',
      seen: seenBefore,
      contenders: named(seenBefore.words),
      outside: seenBefore.kind !== 'nobody-outside',
    },
    ...own(sentence),
  ];
}

const idsOf = (contenders: readonly Contender[]): readonly string[] => contenders.map(({ id }) => id);

/** The contenders that authored words name; all of them where they name none. */
function contendersNamed(words: string, contenders: readonly Contender[]): readonly string[] {
  const named = contenders.filter(({ label, short = label }) =>
    [label, short].some((name) => ` ${words.replace(/[^\p{L}\p{N}]+/gu, ' ')} `.includes(` ${name} `)),
  );
  return idsOf(named.length === 0 ? contenders : named);
}

/** The statements that bear on any of these contenders. */
export function bearingOn(
  statements: readonly InterestStatement[],
  ids: readonly string[],
): readonly InterestStatement[] {
  return statements.filter(({ contenders }) => contenders.some((id) => ids.includes(id)));
}

/** Whether the shop sells, borrows or is paid for anything that it compares. */
export function hasInterest(front: Interested): boolean {
  return interestsOf(front).some(
    (told) =>
      (told.kind === 'sells' && told.how !== 'no') ||
      (told.kind !== 'seen' && told.kind !== 'own-words' && told.outside),
  );
}

/** The name of each contender in running text, by id. */
export function shortNames(contenders: readonly Contender[]): (id: string) => string {
  const names = new Map(
    contenders.map(({ id, label, short = label, article }) => [id, nameInText(short, article)]),
  );
  return (id) => names.get(id) ?? id;
}
