import type { Telling } from './telling.ts';

/** A contender as a sentence names it. */
export interface NamedContender {
  readonly id: string;
  readonly at: number;
}

/** Contenders that a sentence names, by label, short name, id or the first word of the label where that will do. */
export function named(sentence: string, telling: Telling): readonly NamedContender[] {
  const { contenders } = telling.findings;
  const firsts = contenders.map(({ label }) => label.split(/\s+/)[0] ?? label);
  return contenders
    .flatMap(({ id, label }, index): NamedContender[] => {
      const first = firsts[index] ?? label;
      const own = firsts.filter((other) => other === first).length === 1 && first.length > 2 ? [first] : [];
      const names = [label, telling.nameOf(id), id, ...own].filter((name) => name.length > 1);
      if (names.length === 0) return [];
      const pattern = new RegExp(
        `(?<![\\p{L}\\p{N}])(?:${names.map(escaped).join('|')})(?![\\p{L}\\p{N}])`,
        'giu',
      );
      return [...sentence.matchAll(pattern)].map((found) => ({ id, at: found.index }));
    })
    .toSorted((x, y) => x.at - y.at);
}

/** Whether a sentence names a contender, or the thing that was varied. */
export function isAboutCompared(sentence: string, telling: Telling): boolean {
  const thing = new RegExp(`(?<![\\p{L}\\p{N}])${escaped(telling.noun)}s?(?![\\p{L}\\p{N}])`, 'iu');
  return named(sentence, telling).length > 0 || thing.test(sentence);
}

/** Text as a regular expression that matches it and nothing else. */
export function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
}
