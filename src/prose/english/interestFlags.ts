import type { InterestStatement } from '../interestStatements.ts';
import { listed } from '../words.ts';
import { eachBy } from './eachBy.ts';

/** What came to a test from outside the shop, for a row of a list: money and gifts apart from all else. */
interface InterestFlags {
  readonly money: readonly string[];
  readonly further: readonly string[];
}

/**
 * Statements with anything in them from outside the shop, each in a few words that stand between dots: "paid for by the
 * shop and the maker of Clover, half each". What could not be placed is quoted whole.
 */
export function interestFlags(
  statements: readonly InterestStatement[],
  nameOf: (id: string) => string,
): InterestFlags {
  const outside = statements.filter((told) => told.outside);
  const isMoney = ({ kind }: InterestStatement): boolean => kind === 'payment' || kind === 'gifts';
  const words = (some: readonly InterestStatement[]): readonly string[] =>
    some.flatMap((told) => flagOf(told, nameOf));
  return {
    money: words(outside.filter(isMoney)),
    further: words(outside.filter((told) => !isMoney(told))),
  };
}

function flagOf(told: InterestStatement, nameOf: (id: string) => string): readonly string[] {
  switch (told.kind) {
    case 'payment': {
      const { kind, words } = told.payment;
      return [kind === 'in-words' ? quoted('payment', words) : `paid for by ${words}`];
    }
    case 'gifts':
      return [
        told.gifts.kind === 'in-words'
          ? quoted('commission or gifts', told.gifts.words)
          : `commission or gifts: ${told.gifts.words}`,
      ];
    case 'seen':
      return [
        told.seen.kind === 'in-words'
          ? quoted('seen before publication', told.seen.words)
          : `seen first by ${told.seen.words}`,
      ];
    case 'supply':
      return [suppliedFlag(told, nameOf)];
    case 'sells':
    case 'own-words':
      return [];
  }
}

function suppliedFlag(
  { supply, contenders }: Extract<InterestStatement, { readonly kind: 'supply' }>,
  nameOf: (id: string) => string,
): string {
  const names = listed(contenders.map(nameOf));
  switch (supply.kind) {
    case 'lent':
    case 'given': {
      const when = supply.when === null ? '' : ` ${supply.when}`;
      return supply.by === null
        ? `${names} ${supply.words}`
        : `${names} ${supply.kind}${when}${eachBy(`by ${supply.by}`, contenders)}`;
    }
    case 'customer':
      return `${names} from ${supply.by}`;
    case 'own-stock':
    case 'bought':
    case 'in-words':
      return quoted(names, supply.words);
  }
}

function quoted(about: string, words: string): string {
  return `${about}: “${words.trim().replace(/\.$/, '')}”`;
}
