import type { Telling } from './telling.ts';

/** A contender as a sentence names it. */
interface NamedContender {
  readonly id: string;
  readonly at: number;
}

/** Contenders that a sentence names, by label, short name, id or the first word of the label where that will do. */
export function named(sentence: string, telling: Telling): readonly NamedContender[] {
  return patternsOf(telling)
    .contenders.flatMap(({ id, names }) =>
      [...sentence.matchAll(names)].map((found): NamedContender => ({ id, at: found.index })),
    )
    .toSorted((x, y) => x.at - y.at);
}

/** Whether a sentence names a contender, or the thing that was varied. */
export function isAboutCompared(sentence: string, telling: Telling): boolean {
  return named(sentence, telling).length > 0 || patternsOf(telling).thing.test(sentence);
}

/** What names the things of a report. */
interface NamePatterns {
  readonly contenders: readonly { readonly id: string; readonly names: RegExp }[];
  readonly thing: RegExp;
}

const made = new WeakMap<Telling, NamePatterns>();

function patternsOf(telling: Telling): NamePatterns {
  const known = made.get(telling) ?? makePatterns(telling);
  made.set(telling, known);
  return known;
}

function makePatterns({ findings: { contenders }, nameOf, noun }: Telling): NamePatterns {
  const firsts = contenders.map(({ label }) => label.split(/\s+/)[0] ?? label);
  return {
    contenders: contenders.flatMap(({ id, label }, index) => {
      const first = firsts[index] ?? label;
      const own = firsts.filter((other) => other === first).length === 1 && first.length > 2 ? [first] : [];
      const names = [label, nameOf(id), id, ...own].filter((name) => name.length > 1);
      return names.length === 0 ? [] : [{ id, names: wholeWord(names.map(escaped).join('|'), 'giu') }];
    }),
    thing: wholeWord(`${escaped(noun)}s?`, 'iu'),
  };
}

const wholeWord = (source: string, flags: string): RegExp =>
  new RegExp(`(?<![\\p{L}\\p{N}])(?:${source})(?![\\p{L}\\p{N}])`, flags);

/** Text as a regular expression that matches it and nothing else. */
export function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
}
