import { glossary, type GlossaryEntry } from '../prose/glossary.ts';

/** Elements whose words are left as they are: links and controls, headings, pictures, and what is not text. */
const leftAlone = new Set(['a', 'button', 'summary', 'h1', 'h2', 'h3', 'h4', 'svg', 'code', 'title']);
const empty = new Set(['br', 'img', 'wbr', 'hr', 'meta', 'link', 'input']);

interface Element {
  readonly name: string;
  readonly alone: boolean;
  /** Whether words of the trade are linked here. */
  readonly heading: boolean;
  /** Where room is scarce, the link alone has to do; the next use is written out. */
  readonly scarce: boolean;
  readonly units: string | null;
}

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
  const open: Element[] = [];
  const used = new Set<string>();
  return html.replaceAll(
    /<!--[\s\S]*?-->|<(\/?)([a-z][a-z0-9]*)([^>]*)>|[^<]+/gi,
    (token, end: string | undefined, name: string | undefined, attributes: string | undefined) => {
      if (name !== undefined) {
        if (end === '/') open.pop();
        else if (!empty.has(name) && !attributes?.endsWith('/'))
          open.push(element(name, attributes ?? '', open.at(-1)));
        return token;
      }
      const place = open.at(-1);
      if (token.startsWith('<') || place?.alone === true) return token;
      return place?.heading === true
        ? linked(token, place, used, address)
        : written(token, place, used, address);
    },
  );
}

function element(name: string, attributes: string, parent: Element | undefined): Element {
  const authored = /\sdata-authored\b/.test(attributes);
  return {
    name,
    alone: parent?.alone === true || leftAlone.has(name) || authored,
    heading:
      parent?.heading === true || name === 'caption' || (name === 'th' && attributes.includes('"col"')),
    scarce: parent?.scarce === true || attributes.includes('data-first-screen'),
    units: /\sdata-units="(\w+)"/.exec(attributes)?.[1] ?? parent?.units ?? null,
  };
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
function isFirst(use: string, place: Element | undefined, used: Set<string>): boolean {
  const readers = place?.units == null ? ['yards', 'metres'] : [place.units];
  const fresh = readers.filter((units) => !used.has(`${use} ${units}`));
  for (const units of fresh) used.add(`${use} ${units}`);
  return fresh.length > 0;
}

function written(text: string, place: Element | undefined, used: Set<string>, address: string): string {
  const [pattern, entries] = inText;
  return text.replaceAll(pattern, (word) => {
    const entry = entries.get(word.toLowerCase());
    if (entry === undefined) return word;
    const link = `<a href="${address}#${entry.id}">${word}</a>`;
    if (place?.scarce === true) return isFirst(`scarce ${entry.id}`, place, used) ? link : word;
    return isFirst(`text ${entry.id}`, place, used) ? `${link} (${entry.writtenOut ?? ''})` : word;
  });
}

function linked(text: string, place: Element, used: Set<string>, address: string): string {
  const [pattern, entries] = inTables;
  return text.replaceAll(pattern, (word) => {
    const entry = entries.get(word.toLowerCase());
    if (entry === undefined || !isFirst(`table ${entry.id}`, place, used)) return word;
    return `<a href="${address}#${entry.id}">${word}</a>`;
  });
}
