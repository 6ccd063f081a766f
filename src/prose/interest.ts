import type { Contender } from '../intake/authored/contender.ts';
import type { Source } from '../intake/authored/source.ts';
import { listed, sentence } from './words.ts';

const soldWords: Readonly<Record<Contender['soldHere'], string>> = {
  new: 'new',
  used: 'used',
  both: 'new and used',
  no: '',
};

/** The shop's interest in what it tested, in sentences, with the shop speaking. */
export function interestSentences({ front }: Source): readonly string[] {
  const { interests, contenders } = front;
  return [
    sellingSentence(contenders),
    ...suppliers(contenders),
    ...(interests.supplied === undefined ? [] : [sentence(interests.supplied)]),
    sentence(`Paid for by: ${interests.paidBy}`),
    sentence(`Commission, sponsorship or gifts: ${interests.commissionOrGifts}`),
    sentence(`Seen before publication by: ${interests.seenBefore}`),
    ...(interests.sentence === undefined ? [] : [sentence(interests.sentence)]),
  ];
}

/** "We sell Alder and Birch new and Cedar used." */
function sellingSentence(contenders: readonly Contender[]): string {
  const nameOf = ({ short, label }: Contender): string => short ?? label;
  const kinds = (['new', 'used', 'both'] as const).flatMap((kind) => {
    const names = contenders.filter(({ soldHere }) => soldHere === kind).map(nameOf);
    return names.length === 0 ? [] : [`${listed(names)} ${soldWords[kind]}`];
  });
  const unsold = contenders.filter(({ soldHere }) => soldHere === 'no').map(nameOf);
  if (kinds.length === 0) return `We sell none of them: ${listed(unsold, 'or')}.`;
  const rest = unsold.length === 0 ? '' : `; we do not sell ${listed(unsold, 'or')}`;
  return `We sell ${listed(kinds)}${rest}.`;
}

/** Who supplied each, contenders from one source together. */
function suppliers(contenders: readonly Contender[]): readonly string[] {
  const bySource = Map.groupBy(contenders, ({ suppliedBy }) => suppliedBy.trim());
  return [...bySource].map(([source, own]) => {
    const names = listed(own.map(({ short, label }) => short ?? label));
    const verb = own.length === 1 ? 'was' : 'were';
    return /^(lent|bought|given|donated|supplied|provided|borrowed)\b/i.test(source)
      ? `${names} ${verb} ${source}.`
      : `${names}: ${source}.`;
  });
}
