import type { Front } from '../intake/authored/front.ts';
import { dateInWords } from '../prose/date.ts';
import { interestInEnglish } from '../prose/english/interest.ts';
import { interestInFewWords } from '../prose/english/interestInFewWords.ts';
import { interestsOf, shortNames, type InterestStatement } from '../prose/interestStatements.ts';
import { listed } from '../prose/words.ts';
import type { Report } from './report.ts';

/** Name of who publishes a report, or that it is not recorded. */
export function publisherOf({ source }: Report): string {
  return source.shop?.name ?? 'Publisher not recorded';
}

/**
 * The shop's interest where there is little room and nobody to say "we": what it sells, what came from outside, what
 * it was paid or given, who saw it first. Left out is only what speaks of nobody outside the shop.
 */
export function interestInShort({ source }: Report, shop = source.shop?.name ?? 'The publisher'): string {
  const { front } = source;
  return interestInEnglish(weighing(front), {
    speaker: { shop },
    nameOf: shortNames(front.contenders),
  }).join(' ');
}

/** What gives way first where there is no room for every statement. */
const givingWay: readonly InterestStatement['kind'][] = ['sells', 'own-words', 'seen', 'supply', 'gifts'];

/**
 * The same in the fewest words that are as exact, with the shop's name left to the text around it. Where even these
 * are longer than `longest` characters, whole statements give way, and that there are more is said.
 */
export function interestInBrief({ source: { front } }: Report, longest = Infinity): string {
  const stated = weighing(front);
  const told = (dropped: number): string => {
    const kept = stated.filter(({ kind }) => !givingWay.slice(0, dropped).includes(kind));
    const telling = { speaker: { shop: 'The shop' }, nameOf: shortNames(front.contenders) };
    const more = kept.length < stated.length ? ['The report states more of its interest.'] : [];
    return [...interestInFewWords(kept, telling), ...more].join(' ');
  };
  const fitting = givingWay.findIndex((_, dropped) => told(dropped).length <= longest);
  return told(fitting < 0 ? givingWay.length : fitting);
}

/** What comes from outside or is the shop's gain; that nobody paid need not be told in short. */
function weighing(front: Front): readonly InterestStatement[] {
  return interestsOf(front).filter(weighs);
}

/** Whether a statement is of the shop's gain, or of what comes from outside. */
export function weighs(told: InterestStatement): boolean {
  return told.kind === 'sells' || told.kind === 'own-words' || told.outside || isBought(told);
}

const isBought = (told: InterestStatement): boolean =>
  told.kind === 'supply' && told.supply.kind === 'bought';

/**
 * The interest behind several reports: each statement once, with the days of the reports that it stands in where they
 * differ, so that what the shop was paid or lent for one of them is not hidden behind another.
 */
export function interestsInShort(reports: readonly Report[]): readonly string[] {
  const days = [...Map.groupBy(reports, (report) => interestInShort(report))];
  if (days.length < 2) return days.map(([words]) => words);
  return days.map(
    ([words, own]) =>
      `${listed([...new Set(own.map(({ source }) => dateInWords(source.front.date, source.locale)))])}: ${words}`,
  );
}
