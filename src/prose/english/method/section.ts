import type { UnitSystem } from '../../readerUnits.ts';

/** A table of words. */
export interface WordTable {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** The column that holds ids of `findings.json`. */
  readonly idColumn: number;
}

/** A piece of the method page: a paragraph, a list or a table. */
export type MethodBlock = string | { readonly list: readonly string[] } | WordTable;

/** What a section is told with: distances that our method fixes in yards, in the reader's units. */
export interface MethodTelling {
  readonly system: UnitSystem;
  /** `8` as "8 yards" or "7.3 metres". */
  readonly distance: (yards: number) => string;
}

/** A section of the method page. */
export interface MethodSection {
  readonly id: string;
  readonly title: string;
  readonly blocks: (telling: MethodTelling) => readonly MethodBlock[];
}
