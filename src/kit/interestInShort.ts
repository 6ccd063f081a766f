import { interestSentences } from '../prose/interest.ts';
import type { Contender } from '../intake/authored/contender.ts';
import type { Source } from '../intake/authored/source.ts';
import { dateInWords } from '../prose/date.ts';
import { capitalised, countWord, listed, sentence } from '../prose/words.ts';
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
  return [
    selling.replace(/^We sell/, `${shop} sells`).replace('; we do not sell', ', not'),
    ...fromOutside(contenders),
    ...(interests.supplied === undefined ? [] : [inItsWords(interests.supplied)]),
    ...(takesCommission(source) ? [`Commission or gifts: ${withoutStop(interests.commissionOrGifts)}.`] : []),
    ...(paidByOthers(source) ? [`Paid for by ${withoutStop(interests.paidBy)}.`] : []),
    ...(seenByOthers(source) ? [`Seen before publication by ${withoutStop(interests.seenBefore)}.`] : []),
    ...(interests.sentence === undefined ? [] : [inItsWords(interests.sentence)]),
  ].join(' ');
}

/** The same in the fewest words, without names: "The shop sells both. One came from outside. Others paid for the test." */
export function interestInBrief({ source }: Report): string {
  const { contenders, interests } = source.front;
  const sold = contenders.filter(({ soldHere }) => soldHere !== 'no').length;
  const all = contenders.length === 2 ? 'both' : `all ${countWord(contenders.length)}`;
  const lent = outside(contenders).length;
  return [
    `The shop sells ${sold === 0 ? 'none of them' : sold === contenders.length ? all : `${countWord(sold)} of the ${countWord(contenders.length)}`}.`,
    ...(lent === 0
      ? []
      : [
          `${lent === contenders.length ? capitalised(all) : capitalised(countWord(lent))} came from outside.`,
        ]),
    ...(takesCommission(source) ? ['It takes commission or gifts.'] : []),
    ...(paidByOthers(source) ? ['Others paid for the test.'] : []),
    ...(seenByOthers(source) ? ['Others saw it first.'] : []),
    ...(interests.supplied !== undefined || interests.sentence !== undefined
      ? ['It states more in the report.']
      : []),
  ].join(' ');
}

/** What the shop wrote itself; where it says "we" there, in quotation marks, since nobody else would know who speaks. */
function inItsWords(words: string): string {
  return /\b(we|our|us)\b/i.test(words) ? `The shop says: “${sentence(words)}”` : sentence(words);
}

const takesCommission = ({ front }: Source): boolean =>
  !/^(none|no|nothing)\.?$/i.test(front.interests.commissionOrGifts.trim());

const paidByOthers = ({ front }: Source): boolean =>
  !/^(the shop|us|we|our shop|ourselves)\.?$/i.test(front.interests.paidBy.trim());

const seenByOthers = ({ front }: Source): boolean =>
  !/^(nobody|no one|no-one)\b/i.test(front.interests.seenBefore.trim());

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
  const lent = outside(contenders);
  const bySource = [...Map.groupBy(lent, ({ suppliedBy }) => withoutStop(suppliedBy))];
  if (bySource.length > mostSources) {
    const who =
      lent.length === contenders.length ? `All ${countWord(lent.length)}` : listed(lent.map(nameOf));
    return [`${who} came from outside the shop.`];
  }
  return bySource.map(([source, own]) => {
    const verb = own.length === 1 ? 'was' : 'were each';
    return /^(lent|bought|given|donated|supplied|provided|borrowed)\b/i.test(source)
      ? `${listed(own.map(nameOf))} ${verb} ${source}.`
      : `${listed(own.map(nameOf))} came from: ${source}.`;
  });
}

const outside = (contenders: readonly Contender[]): readonly Contender[] =>
  contenders.filter(({ suppliedBy }) => !/\b(our|own|the shop's)\b/i.test(suppliedBy));

const nameOf = ({ short, label }: Contender): string => short ?? label;

function withoutStop(text: string): string {
  return text.trim().replace(/\.$/, '');
}
