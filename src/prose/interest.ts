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

/** So many alike are "the others", told last: six long names twice over would hide what is special. */
const fewestOthers = 3;

/** What groups have in common, the smaller ones by their names and a large one, if there are further, as the others. */
function groupsTold(groups: readonly (readonly string[])[]): readonly string[] {
  const most = Math.max(...groups.map(({ length }) => length));
  const largest = groups.findIndex(({ length }) => length === most);
  return groups.map((names, index) =>
    index === largest && groups.length > 1 && most >= fewestOthers ? 'the others' : listed(names),
  );
}

/** "We sell all three new." or "We sell Alder and Birch new and Cedar used." */
function sellingSentence(contenders: readonly Contender[]): string {
  const kinds = new Set(contenders.map(({ soldHere }) => soldHere));
  const [only] = kinds;
  const all = contenders.length === 2 ? 'both' : `all ${countWord(contenders.length)}`;
  if (kinds.size === 1 && only === 'no')
    return `We sell none of ${contenders.length === 2 ? 'the two' : 'them'}.`;
  if (kinds.size === 1 && only !== undefined) return `We sell ${all} ${soldWords[only]}.`;
  const namesOf = (kind: Contender['soldHere']): readonly string[] =>
    contenders.filter(({ soldHere }) => soldHere === kind).map(nameOf);
  const groups = (['new', 'used', 'both', 'no'] as const)
    .map((kind) => ({ kind, names: namesOf(kind) }))
    .filter(({ names }) => names.length > 0);
  const told = groupsTold(groups.map(({ names }) => names));
  const sold = groups.flatMap(({ kind }, index) =>
    kind === 'no' ? [] : [`${told[index] ?? ''} ${soldWords[kind]}`],
  );
  const unsold = groups.findIndex(({ kind }) => kind === 'no');
  const without = told[unsold] === 'the others' ? 'the others' : listed(namesOf('no'), 'or');
  const rest = unsold < 0 ? '' : `; we do not sell ${without}`;
  const last = sold.filter((words) => words.startsWith('the others'));
  return `We sell ${listed([...sold.filter((words) => !last.includes(words)), ...last])}${rest}.`;
}

/** Who supplied each, those from one source together: "Birch was lent by its distributor; Alder and Cedar: our stock." */
function suppliersSentence(contenders: readonly Contender[]): string {
  const bySource = [...Map.groupBy(contenders, ({ suppliedBy }) => suppliedBy.trim())];
  const all = contenders.length === 2 ? 'both' : `all ${countWord(contenders.length)}`;
  const told = groupsTold(bySource.map(([, own]) => own.map(nameOf)));
  const parts = bySource.map(([source, own], index) => {
    const names = own.length === contenders.length ? all : (told[index] ?? '');
    const verb = own.length === 1 ? 'was' : 'were';
    return /^(lent|bought|given|donated|supplied|provided|borrowed)\b/i.test(source)
      ? `${names} ${verb} ${source}`
      : `${names}: ${source}`;
  });
  const last = parts.filter((words) => words.startsWith('the others'));
  return sentence([...parts.filter((words) => !last.includes(words)), ...last].join('; '));
}
