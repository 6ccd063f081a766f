import { interestSentences } from '../prose/interest.ts';
import type { Contender } from '../intake/authored/contender.ts';
import { dateInWords } from '../prose/date.ts';
import { countWord, listed } from '../prose/words.ts';
import type { Report } from './report.ts';

/** Name of who publishes a report, or that it is not recorded. */
export function publisherOf({ source }: Report): string {
  return source.shop?.name ?? 'Publisher not recorded';
}

/**
 * The shop's interest where there is little room and nobody to say "we": what it sells, what came from outside, what
 * it was paid or given. Nothing is left out that could weigh on the answer.
 */
export function interestInShort({ source }: Report, shop = source.shop?.name ?? 'The publisher'): string {
  const { interests, contenders } = source.front;
  const [selling = ''] = interestSentences(source);
  const commission = !/^(none|no|nothing)\.?$/i.test(interests.commissionOrGifts.trim());
  const paidByOthers = !/^(the shop|us|we|our shop|ourselves)\.?$/i.test(interests.paidBy.trim());
  return [
    selling.replace(/^We sell/, `${shop} sells`).replace('; we do not sell', ', not'),
    ...fromOutside(contenders),
    ...(commission ? [`Commission or gifts: ${withoutStop(interests.commissionOrGifts)}.`] : []),
    ...(paidByOthers ? [`Paid for by ${withoutStop(interests.paidBy)}.`] : []),
  ].join(' ');
}

/**
 * The interest behind several reports: each statement once, with the days of the reports that it stands in where they
 * differ, so that what the shop was paid or lent for one of them is not hidden behind another.
 */
export function interestsInShort(reports: readonly Report[]): readonly string[] {
  const days = [...Map.groupBy(reports, (report) => interestInShort(report))];
  if (days.length < 2) return days.map(([words]) => words);
  return days.map(
    ([words, own]) =>
      `${listed([...new Set(own.map(({ source }) => dateInWords(source.front.date)))])}: ${words}`,
  );
}

/** More sources than these are not told one by one. */
const mostSources = 2;

/** What came from elsewhere than the shop's own stock: "Heron was lent by its distributor." */
function fromOutside(contenders: readonly Contender[]): readonly string[] {
  const outside = contenders.filter(({ suppliedBy }) => !/\b(our|own|the shop's)\b/i.test(suppliedBy));
  const bySource = [...Map.groupBy(outside, ({ suppliedBy }) => withoutStop(suppliedBy))];
  if (bySource.length > mostSources) {
    const who =
      outside.length === contenders.length ? `All ${countWord(outside.length)}` : listed(outside.map(nameOf));
    return [`${who} came from outside the shop.`];
  }
  return bySource.map(([source, own]) => {
    const verb = own.length === 1 ? 'was' : 'were';
    return /^(lent|bought|given|donated|supplied|provided|borrowed)\b/i.test(source)
      ? `${listed(own.map(nameOf))} ${verb} ${source}.`
      : `${listed(own.map(nameOf))} came from: ${source}.`;
  });
}

const nameOf = ({ short, label }: Contender): string => short ?? label;

function withoutStop(text: string): string {
  return text.trim().replace(/\.$/, '');
}
