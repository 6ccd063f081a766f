import { contenderMatcher, type NamedContender } from '../contenderNames.ts';

/** A name that the shop's files have for somebody who hit: the words of it that may tell who that is. */
export interface PersonName {
  readonly whole: readonly string[];
  /** Words of it that tell who it is even alone. */
  readonly telling: readonly string[];
}

/** Words by which files tell hitters apart without naming them. */
const roles =
  /^(?:one|two|three|four|five|six|first|second|third|left|right|hand(?:ed|er)?|golfer|player|hitter|tester|user|guest|customer|client|member|visitor|fitter|staff|shop|pro|professional|coach|teacher|amateur|owner|junior|senior|man|woman|lady|men|women|low|mid|high|scratch|handicap|robot|machine|swing|average|default|unknown|none|not|recorded|test|demo|am|the|our|and|with|own)$/;

/** Words of the trade and of any day that are names as well: alone they tell nothing. */
const plainWords =
  /^(?:drivers?|woods?|hybrids?|irons?|wedges?|putters?|heads?|shafts?|balls?|lofts?|grooves?|clubs?|grips?|long|short|carry|launch|spin|shots?|sessions?|range|rough|fairway|green|sand|field|hill|stone|rose|will|mark|grace|hope|faith|young|good|best|new|old|used|fresh|worn|may|april|june|march|august|summer|winter|spring|autumn|north|south|east|west|white|black|brown|gray|grey|king|price|page|day|week|morning|evening|indoors?|outdoors?|mats?|turf|net|bay|tee|flight|speed|angle|chase|chip|drew|pace|frank|grant|rich|bill|jack|tour|stiff|regular|fast|slow|draw|fade)$/;

const wordsOf = (text: string): readonly string[] =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((word) => word !== '');

/** A label without those whose thing it is: "Dora's driver" lends Dora's name to no contender. */
const withoutOwners = (label: string): string => label.replace(/[\p{L}\p{M}]+['’]s(?!\p{L})/gu, ' ');

/** The names among those that stand for people: "G1", "left" and "Customer A" stand for none, nor does a contender. */
export function personNames(
  names: readonly string[],
  contenders: readonly NamedContender[],
): readonly PersonName[] {
  const contenderOf = contenderMatcher(contenders);
  const ofContenders = new Set(
    contenders.flatMap(({ id, label, short = '', match = [] }) =>
      [id, label, short, ...match].flatMap((name) => wordsOf(withoutOwners(name))),
    ),
  );
  return [...new Set(names)].flatMap((name): PersonName[] => {
    const whole = wordsOf(name);
    const own = whole.filter((word) => /^\p{Lo}{2}|^.{3}/u.test(word) && !roles.test(word));
    if (own.length === 0 || contenderOf(name) !== null) return [];
    const telling = own.filter((word) => !plainWords.test(word) && !ofContenders.has(word));
    return telling.length === 0 && own.length < 2 ? [] : [{ whole, telling }];
  });
}

/** Whether a file name, or an address, holds one of the names: all its words in a row, or one that tells alone. */
export function namesPerson(text: string, people: readonly PersonName[]): boolean {
  const words = wordsOf(text);
  return people.some(
    ({ whole, telling }) =>
      (whole.length > 1 && standsIn(whole, words)) ||
      words.some((word) => telling.includes(word) || telling.includes(ownerIn(word))),
  );
}

/** An address has no apostrophe: "doras-driver". */
const ownerIn = (word: string): string => (/^.{4,}s$/u.test(word) ? word.slice(0, -1) : word);

/** Whether prose holds one of the names: all its words in a row, or one that tells alone, written as a name. */
export function proseNamesPerson(typed: string, people: readonly PersonName[]): boolean {
  // Signs of emphasis inside a word part it for the eye of nobody.
  const text = typed.replace(/(?<=\p{L})[*_]+(?=\p{L})/gu, '');
  const capitals = new Set(
    [...text.matchAll(/(?<![\p{L}\p{N}])[\p{Lu}\p{Lo}][\p{L}\p{M}]*/gu)].flatMap(([word]) => wordsOf(word)),
  );
  const words = wordsOf(text);
  return people.some(
    ({ whole, telling }) =>
      (whole.length > 1 && standsIn(whole, words) && whole.every((word) => capitals.has(word))) ||
      telling.some((word) => capitals.has(word)),
  );
}

/** The text without the words of the names. */
export function withoutPeople(text: string, people: readonly PersonName[]): string {
  return text.replace(/[\p{L}\p{M}]+/gu, (typed) => {
    const [word = ''] = wordsOf(typed);
    return people.some(({ whole }) => whole.includes(word)) ? ' ' : typed;
  });
}

/** A name of two capitalised words of no trade, as a file may have it that the files themselves know nobody by. */
export function likePerson(fileName: string, contenders: readonly string[]): PersonName | null {
  const known = new Set(contenders.flatMap(wordsOf));
  const found = /(?<![\p{L}\p{N}])(\p{Lu}\p{Ll}{2,})[ _-](\p{Lu}\p{Ll}{2,})(?![\p{L}\p{N}])/u.exec(fileName);
  if (found === null) return null;
  const whole = wordsOf(found[0]);
  const isPlain = whole.some((word) => plainWords.test(word) || roles.test(word) || known.has(word));
  return isPlain ? null : { whole, telling: whole };
}

function standsIn(whole: readonly string[], words: readonly string[]): boolean {
  return words.some((_, start) => whole.every((word, index) => words[start + index] === word));
}
