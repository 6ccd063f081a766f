import type { InterestStatement } from '../interestStatements.ts';
import { countWord, listed, sentence } from '../words.ts';
import { eachBy } from './eachBy.ts';

/** Who tells: the shop itself, or somebody else of it by a name that can begin a sentence. */
export interface InterestTelling {
  readonly speaker: 'we' | { readonly shop: string };
  readonly nameOf: (id: string) => string;
}

export type Of<K extends InterestStatement['kind']> = Extract<InterestStatement, { readonly kind: K }>;
type Supplied = Of<'supply'>;

const soldWords = { new: 'new', used: 'used', both: 'new and used', no: '' } as const;

/**
 * Statements of interest as sentences, in their order: what is sold and where it came from in one, where that can be
 * said in one. Everything stated is told; what could not be placed stands in the shop's own words.
 */
export function interestInEnglish(
  statements: readonly InterestStatement[],
  telling: InterestTelling,
): readonly string[] {
  return interestTold(statements, telling).map(({ text }) => text);
}

/** A sentence of an interest with the statements that it tells. */
interface InterestSentence {
  readonly text: string;
  readonly of: readonly InterestStatement[];
}

/** Those that are told together. */
export const soldAndSupplied = (
  statements: readonly InterestStatement[],
): { readonly sold: readonly Of<'sells'>[]; readonly supplied: readonly Supplied[] } => ({
  sold: statements.filter((told) => told.kind === 'sells'),
  supplied: statements.filter((told) => told.kind === 'supply'),
});

/** The same, each sentence with what it tells. */
export function interestTold(
  statements: readonly InterestStatement[],
  telling: InterestTelling,
): readonly InterestSentence[] {
  const { sold, supplied } = soldAndSupplied(statements);
  const further = statements.flatMap((told) =>
    told.kind === 'sells' || told.kind === 'supply'
      ? []
      : [{ text: furtherSentence(told, telling), of: [told] }],
  );
  const together = soldFromStock(sold, supplied, telling);
  const apart = [
    ...sellingSentence(sold, telling).map((text) => ({ text, of: sold })),
    ...supplyTold(supplied, sold, telling),
  ];
  return [...(together === null ? apart : [{ text: together, of: [...sold, ...supplied] }]), ...further];
}

/** "We sell all three new and took them from stock, save Heron, which its distributor lent us." */
function soldFromStock(
  sold: readonly Of<'sells'>[],
  supplied: readonly Supplied[],
  telling: InterestTelling,
): string | null {
  const [only, ...otherKinds] = sold;
  const stocks = supplied.filter(({ supply }) => supply.kind === 'own-stock');
  const [stock, ...otherStocks] = stocks;
  const lent = supplied.filter((told) => !stocks.includes(told));
  if (only === undefined || stock === undefined || otherKinds.length + otherStocks.length > 0) return null;
  const exceptions = lent.map((told) => exception(told, telling));
  const few = lent.flatMap(({ contenders }) => contenders).length <= stock.contenders.length;
  if (only.how === 'no' || !few || lent.length > 2 || exceptions.includes(null)) return null;
  const save = exceptions.length === 0 ? '' : `, save ${exceptions.join(', and ')}`;
  return `${weSell(telling)} ${all(only.contenders)} ${soldWords[only.how]} and took them from ${stockName(stock, telling)}${save}.`;
}

/** "Heron, which its distributor lent us"; null where the words make no such clause. */
function exception({ supply, contenders }: Supplied, telling: InterestTelling): string | null {
  const names = listed(contenders.map(telling.nameOf));
  const which = contenders.length === 1 ? 'which' : 'each of which';
  if (supply.kind !== 'lent' && supply.kind !== 'given') return null;
  if (supply.by === null) return null;
  const when = supply.when === null ? '' : ` ${supply.when}`;
  if (telling.speaker === 'we')
    return `${names}, ${which} ${supply.by} ${supply.kind === 'lent' ? 'lent' : 'gave'} us${when}`;
  return `${names}, ${which} was ${supply.kind}${when} by ${told(supply.by, telling)}`;
}

/** "We sell all three new." or "We sell Alder and Birch new and Cedar used; we do not sell Dogwood." */
export function sellingSentence(sold: readonly Of<'sells'>[], telling: InterestTelling): readonly string[] {
  const [only, ...others] = sold;
  if (only === undefined) return [];
  const count = only.contenders.length;
  if (others.length === 0 && only.how === 'no')
    return [`${weSell(telling)} ${count === 2 ? 'neither of the two' : 'none of them'}.`];
  if (others.length === 0) return [`${weSell(telling)} ${all(only.contenders)} ${soldWords[only.how]}.`];
  const groups = othersLast(sold, telling);
  const kinds = groups.flatMap(({ told: { how }, names }) =>
    how === 'no' ? [] : [`${apartFrom(names, soldWords[how])} ${soldWords[how]}`],
  );
  const rest = groups.flatMap(({ told: { how, contenders }, names, others: many }) =>
    how !== 'no' ? [] : [many ? names : listed(contenders.map(telling.nameOf), 'or')],
  );
  const not = telling.speaker === 'we' ? 'we do not sell' : 'it does not sell';
  return [`${weSell(telling)} ${listed(kinds)}${rest.length === 0 ? '' : `; ${not} ${rest.join('')}`}.`];
}

/** A label that is the very word behind it stands in quotation marks: “Used” used. */
const apartFrom = (names: string, word: string): string =>
  names.toLowerCase() === word ? `“${names}”` : names;

/** From this many with the same supply on, they are called "the others" and told last: six long names twice over would hide what is special. */
const fewestOthers = 3;

interface Group<T> {
  readonly told: T;
  readonly names: string;
  /** Whether `names` is "the others". */
  readonly others: boolean;
}

/** Each group with its names; the largest, if it is large and not the only one, last and as the others. */
function othersLast<T extends InterestStatement>(
  groups: readonly T[],
  { nameOf }: InterestTelling,
): readonly Group<T>[] {
  const most = Math.max(...groups.map(({ contenders }) => contenders.length));
  const largest = groups.findIndex(({ contenders }) => contenders.length === most);
  const named = groups.map((own, index): Group<T> => {
    const others = index === largest && groups.length > 1 && most >= fewestOthers;
    return { told: own, names: others ? 'the others' : listed(own.contenders.map(nameOf)), others };
  });
  return [...named.filter(({ others }) => !others), ...named.filter(({ others }) => others)];
}

/** Who supplied each, those from one source together; what was lent by several in one sentence. */
export function supplyTold(
  supplied: readonly Supplied[],
  sold: readonly Of<'sells'>[],
  telling: InterestTelling,
): readonly InterestSentence[] {
  const every = sold.flatMap(({ contenders }) => contenders).length;
  const groups = othersLast(supplied, telling).map((group) =>
    group.told.contenders.length === every && supplied.length === 1
      ? { ...group, names: all(group.told.contenders) }
      : group,
  );
  return groups.flatMap((group, index) => {
    const { supply } = group.told;
    const alone = { text: supplySentence(group, telling), of: [group.told] };
    if (!isHandedOver(supply)) return [alone];
    const alike = groups.filter(
      ({ told: { supply: other } }) => isHandedOver(other) && other.kind === supply.kind,
    );
    return alike[0] === groups[index]
      ? [{ text: handedOverSentence(alike, telling), of: alike.map((one) => one.told) }]
      : [];
  });
}

const isHandedOver = (supply: Supplied['supply']): boolean =>
  (supply.kind === 'lent' || supply.kind === 'given') && supply.by !== null;

/** "Heron was lent to us by its distributor, Wren by its maker and Plover for the day by a customer." */
function handedOverSentence(groups: readonly Group<Supplied>[], telling: InterestTelling): string {
  const parts = groups.map(({ told: { supply, contenders }, names }, index) => {
    if (supply.kind !== 'lent' && supply.kind !== 'given') return names;
    const when = supply.when === null ? '' : ` ${supply.when}`;
    const by = eachBy(`by ${told(supply.by ?? '', telling)}`, contenders);
    const us = telling.speaker === 'we' ? ' to us' : '';
    const verb = `${was(contenders)} ${supply.kind}${us}`;
    return index === 0 ? `${names} ${verb}${when}${by}` : `${names}${when}${by}`;
  });
  return sentence(listed(parts));
}

function supplySentence(
  { told: { supply, contenders }, names }: Group<Supplied>,
  telling: InterestTelling,
): string {
  switch (supply.kind) {
    case 'own-stock':
      return `${subject(telling)} took ${names} from ${stockName({ supply }, telling)}.`;
    case 'customer': {
      const own = /s$/.test(supply.by) ? `${supply.by}’` : `${supply.by}’s`;
      return sentence(`${names} ${contenders.length === 1 ? 'is' : 'are'} ${told(own, telling)} own`);
    }
    case 'bought':
      if (supply.whole && supply.when === null) {
        const from = supply.by === null ? '' : eachBy(`from ${told(supply.by, telling)}`, contenders);
        return `${subject(telling)} bought ${names}${from}.`;
      }
      return handedOver(names, contenders, told(supply.words, telling));
    case 'lent':
    case 'given':
      return handedOver(names, contenders, told(supply.words, telling));
    case 'in-words':
      return supply.participle
        ? handedOver(names, contenders, told(supply.words, telling))
        : inItsWords(`the source of ${names}`, supply.words, telling);
  }
}

type Further = Exclude<InterestStatement, { readonly kind: 'sells' | 'supply' }>;

export function furtherSentence(statement: Further, telling: InterestTelling): string {
  switch (statement.kind) {
    case 'payment':
      return paymentSentence(statement.payment, telling);
    case 'gifts':
      return giftsSentence(statement.gifts, telling);
    case 'seen':
      return seenSentence(statement.seen, telling);
    case 'own-words':
      return telling.speaker === 'we' || !speaksAsShop.test(statement.words)
        ? sentence(statement.words)
        : `The shop says: “${sentence(statement.words)}”`;
  }
}

function paymentSentence(payment: Of<'payment'>['payment'], telling: InterestTelling): string {
  switch (payment.kind) {
    case 'shop':
      return `${subject(telling)} paid for the test.`;
    case 'others':
      return `The test was paid for by ${told(payment.words, telling)}.`;
    case 'shared': {
      if (payment.by === null) return `The test was paid for by ${told(payment.words, telling)}.`;
      const share = payment.share === null ? '' : `, ${payment.share}`;
      return `${subject(telling)} and ${told(payment.by, telling)} paid for the test${share}.`;
    }
    case 'in-words':
      return inItsWords('the payment for the test', payment.words, telling);
  }
}

function giftsSentence({ kind, words }: Of<'gifts'>['gifts'], telling: InterestTelling): string {
  if (kind === 'in-words') return inItsWords('commission, sponsorship and gifts', words, telling);
  if (kind === 'none') return `${subject(telling)} took no commission, sponsorship or gifts.`;
  return `${subject(telling)} took a commission, sponsorship or gift: ${told(words, telling)}.`;
}

function seenSentence({ kind, words }: Of<'seen'>['seen'], telling: InterestTelling): string {
  const it = telling.speaker === 'we' ? 'it' : 'the report';
  if (kind === 'in-words') return inItsWords('readers before publication', words, telling);
  if (kind === 'nobody-outside') return `Nobody outside the shop saw ${it} before publication.`;
  return sentence(`${told(words, telling)} saw ${it} before publication`);
}

const speaksAsShop = /\b(?:we|us|our|ours|ourselves|I|my|me)\b/i;

/** The shop's words within a sentence of somebody else's: "our distributor" is the shop's; what else says "we" is quoted. */
export function told(words: string, { speaker }: InterestTelling): string {
  const plain = words.trim().replace(/\.$/, '');
  if (speaker === 'we' || !speaksAsShop.test(plain)) return plain;
  const named = plain.replace(/\bour\b/gi, 'the shop’s');
  return speaksAsShop.test(named) ? `“${plain}”` : named;
}

/** A line that could not be placed, whole and in quotation marks. */
function inItsWords(about: string, words: string, telling: InterestTelling): string {
  const state = telling.speaker === 'we' ? 'we state' : `${lowerThe(telling.speaker.shop)} states`;
  return sentence(`Of ${about} ${state}: “${words.trim().replace(/\.$/, '')}”`);
}

const subject = ({ speaker }: InterestTelling): string => (speaker === 'we' ? 'We' : speaker.shop);
export const weSell = ({ speaker }: InterestTelling): string =>
  speaker === 'we' ? 'We sell' : `${speaker.shop} sells`;
const lowerThe = (shop: string): string => shop.replace(/^The\b/, 'the');
export const all = (ids: readonly string[]): string =>
  ids.length === 2 ? 'both' : `all ${countWord(ids.length)}`;
const was = (ids: readonly string[]): string => (ids.length === 1 ? 'was' : 'were');

/** In the shop's words: "Heron was bought online", "Heron and Wren were lent for the day, each by its maker". */
function handedOver(names: string, ids: readonly string[], words: string): string {
  // A quotation stays as it was written.
  const [done = '', ...by] = words.startsWith('“') ? [words] : words.split(/ (?=(?:by|from) )/);
  const whom = by.length === 0 ? '' : eachBy(by.join(' '), ids);
  return sentence(`${names} ${was(ids)} ${done}${whom}`);
}

function stockName({ supply }: Pick<Supplied, 'supply'>, { speaker }: InterestTelling): string {
  const kind = supply.kind === 'own-stock' ? supply.stock : null;
  return kind === null ? 'stock' : `${speaker === 'we' ? 'our' : 'its'} ${kind} stock`;
}
