import type { Foresight } from '../intake/plan/foresight.ts';
import {
  chosenHeading,
  chosenRows,
  fewerLine,
  neededInVisits,
  neededLine,
  spreadLines,
  type ChosenFacts,
  type ChosenRow,
  type SpreadFacts,
} from './planWords.ts';

/** Something that follows from the answers of a plan, in the order in which it can be told. */
export type PlanFact =
  | { readonly kind: 'spread'; readonly facts: SpreadFacts }
  | {
      readonly kind: 'needed';
      readonly foresight: Foresight;
      readonly matters: string;
      readonly contenders: number;
      /** Shots with each that two and three of them would take. */
      readonly fewer: readonly [two: number | null, three: number | null];
    }
  | { readonly kind: 'needed-in-visits'; readonly needed: number | null; readonly shotsAVisit: number }
  | { readonly kind: 'chosen'; readonly facts: ChosenFacts };

/** A fact in words: sentences, then rows of a list where it has some. */
interface SaidFact {
  readonly sentences: readonly string[];
  readonly rows: readonly ChosenRow[];
}

export function sayFact(fact: PlanFact): SaidFact {
  switch (fact.kind) {
    case 'spread':
      return { sentences: spreadLines(fact.facts), rows: [] };
    case 'needed': {
      const fewer = fewerLine(fact.contenders, fact.fewer);
      return {
        sentences: [neededLine(fact.foresight, fact.matters), ...(fewer === null ? [] : [fewer])],
        rows: [],
      };
    }
    case 'needed-in-visits':
      return { sentences: [neededInVisits(fact.needed, fact.shotsAVisit)], rows: [] };
    case 'chosen':
      return { sentences: [chosenHeading(fact.facts)], rows: chosenRows(fact.facts) };
  }
}
