import type { Contender } from '../intake/authored/contender.ts';
import type { Source } from '../intake/authored/source.ts';
import { countWord, listed, sentence } from './words.ts';

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
    suppliersSentence(contenders),
    ...(interests.supplied === undefined ? [] : [sentence(interests.supplied)]),
    sentence(`Paid for by ${interests.paidBy}`),
    isNone(interests.commissionOrGifts)
      ? 'No commission or gifts.'
      : sentence(`Commission or gifts: ${interests.commissionOrGifts}`),
    /^(nobody|no one|no-one)\b/i.test(interests.seenBefore)
      ? sentence(`${interests.seenBefore} saw this first`)
      : sentence(`Seen before publication by ${interests.seenBefore}`),
    ...(interests.sentence === undefined ? [] : [sentence(interests.sentence)]),
  ];
}

function isNone(answer: string): boolean {
  return /^(none|no|nothing)\.?$/i.test(answer.trim());
}

const nameOf = ({ short, label }: Contender): string => short ?? label;

/** "We sell all three new." or "We sell Alder and Birch new and Cedar used." */
function sellingSentence(contenders: readonly Contender[]): string {
  const kinds = new Set(contenders.map(({ soldHere }) => soldHere));
  const [only] = kinds;
  const all = contenders.length === 2 ? 'both' : `all ${countWord(contenders.length)}`;
  if (kinds.size === 1 && only === 'no')
    return `We sell none of ${contenders.length === 2 ? 'the two' : 'them'}.`;
  if (kinds.size === 1 && only !== undefined) return `We sell ${all} ${soldWords[only]}.`;
  const sold = (['new', 'used', 'both'] as const).flatMap((kind) => {
    const names = contenders.filter(({ soldHere }) => soldHere === kind).map(nameOf);
    return names.length === 0 ? [] : [`${listed(names)} ${soldWords[kind]}`];
  });
  const unsold = contenders.filter(({ soldHere }) => soldHere === 'no').map(nameOf);
  const rest = unsold.length === 0 ? '' : `; we do not sell ${listed(unsold, 'or')}`;
  return `We sell ${listed(sold)}${rest}.`;
}

/** Who supplied each, those from one source together: "Birch was lent by its distributor; Alder and Cedar: our stock." */
function suppliersSentence(contenders: readonly Contender[]): string {
  const bySource = [...Map.groupBy(contenders, ({ suppliedBy }) => suppliedBy.trim())];
  const all = contenders.length === 2 ? 'both' : `all ${countWord(contenders.length)}`;
  const parts = bySource.map(([source, own]) => {
    const names = own.length === contenders.length ? all : listed(own.map(nameOf));
    const verb = own.length === 1 ? 'was' : 'were';
    return /^(lent|bought|given|donated|supplied|provided|borrowed)\b/i.test(source)
      ? `${names} ${verb} ${source}`
      : `${names}: ${source}`;
  });
  return sentence(parts.join('; '));
}
