import { readTags, valueIn, type Attribute, type StartTag } from '../kit/htmlTags.ts';
import { glossary, type GlossaryEntry } from '../prose/glossary.ts';

/** Elements whose words are left as they are: links and controls, headings, pictures, and what is not text. */
const leftAlone = new Set(['a', 'button', 'summary', 'h1', 'h2', 'h3', 'h4', 'svg', 'code', 'title']);

interface Place {
  /** Whether words of the trade are linked here. */
  readonly heading: boolean;
  /** Where room is scarce, the link alone has to do; the next use is written out. */
  readonly scarce: boolean;
  readonly units: string | null;
}

const anywhere: Place = { heading: false, scarce: false, units: null };

const abbreviations = glossary.filter(({ writtenOut }) => writtenOut !== undefined);
const inText = wordsFinder(abbreviations.map((entry) => [entry.term, entry]));
const inTables = wordsFinder(
  glossary.flatMap((entry) => [entry.term, ...(entry.inTables ?? [])].map((word) => [word, entry] as const)),
);

/**
 * A page's own words with help where a reader needs it first: an abbreviation is written out and linked to the glossary
 * at its first use in a sentence, a word of the trade or of statistics at its first use in the head or caption of a
 * table. The shop's own words (`data-authored`), headings, links and charts stay as they are. What stands twice, in two
 * systems of units, has a first use in each. On the first screen (`data-first-screen`) there is room for the link only.
 *
 * @param html well-formed, as our components write it
 * @param address of the glossary page
 */
export function helpAtFirstUse(html: string, address: string): string {
  const open: Place[] = [];
  // Of what is left alone only its end is looked for.
  let passedOver: { readonly name: string; readonly depth: number } | null = null;
  const used = new Set<string>();
  const pieces: string[] = [];
  let at = 0;
  readTags(html, {
    concerns: (name) => passedOver === null || name === passedOver.name,
    opened: (tag) => {
      if (tag.alone) return;
      if (passedOver !== null) passedOver = { ...passedOver, depth: passedOver.depth + 1 };
      else if (isLeftAlone(tag)) passedOver = { name: tag.name, depth: 1 };
      else open.push(placeIn(tag, open.at(-1) ?? anywhere));
    },
    closed: () => {
      if (passedOver === null) open.pop();
      else passedOver = passedOver.depth === 1 ? null : { ...passedOver, depth: passedOver.depth - 1 };
    },
    text: (start, end) => {
      if (passedOver !== null) return;
      const place = open.at(-1) ?? anywhere;
      const text = html.slice(start, end);
      const helped = place.heading ? linked(text, place, used, address) : written(text, place, used, address);
      if (helped === text) return;
      pieces.push(html.slice(at, start), helped);
      at = end;
    },
  });
  return [...pieces, html.slice(at)].join('');
}

function isLeftAlone({ name, attributes }: StartTag): boolean {
  return leftAlone.has(name) || has(attributes, 'data-authored');
}

function placeIn({ name, attributes }: StartTag, parent: Place): Place {
  if (attributes.length === 0 && name !== 'caption') return parent;
  return {
    heading:
      parent.heading || name === 'caption' || (name === 'th' && valueIn(attributes, 'scope') === 'col'),
    scarce: parent.scarce || has(attributes, 'data-first-screen'),
    units: valueIn(attributes, 'data-units') ?? parent.units,
  };
}

function has(attributes: readonly Attribute[], name: string): boolean {
  return attributes.some((one) => one.name === name);
}

type Finder = readonly [pattern: RegExp, entries: ReadonlyMap<string, GlossaryEntry>];

function wordsFinder(words: readonly (readonly [string, GlossaryEntry])[]): Finder {
  const longestFirst = words.map(([word]) => word).sort((one, other) => other.length - one.length);
  const escaped = longestFirst.map((word) => word.replace(/[()/]/g, '\\$&'));
  return [
    new RegExp(`(?<![\\w/])(?:${escaped.join('|')})(?![\\w/])`, 'gi'),
    new Map(words.map(([word, entry]) => [word.toLowerCase(), entry])),
  ];
}

/** Notes the use of an entry; whether it is the first that a reader of these units meets. */
function isFirst(use: string, place: Place, used: Set<string>): boolean {
  const readers = place.units === null ? ['yards', 'metres'] : [place.units];
  const fresh = readers.filter((units) => !used.has(`${use} ${units}`));
  for (const units of fresh) used.add(`${use} ${units}`);
  return fresh.length > 0;
}

function written(text: string, place: Place, used: Set<string>, address: string): string {
  const [pattern, entries] = inText;
  return text.replaceAll(pattern, (word) => {
    const entry = entries.get(word.toLowerCase());
    if (entry === undefined) return word;
    const link = `<a href="${address}#${entry.id}">${word}</a>`;
    if (place.scarce === true) return isFirst(`scarce ${entry.id}`, place, used) ? link : word;
    return isFirst(`text ${entry.id}`, place, used) ? `${link} (${entry.writtenOut ?? ''})` : word;
  });
}

function linked(text: string, place: Place, used: Set<string>, address: string): string {
  const [pattern, entries] = inTables;
  return text.replaceAll(pattern, (word) => {
    const entry = entries.get(word.toLowerCase());
    if (entry === undefined || !isFirst(`table ${entry.id}`, place, used)) return word;
    return `<a href="${address}#${entry.id}">${word}</a>`;
  });
}
