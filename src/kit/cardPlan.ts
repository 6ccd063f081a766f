/** How a card is set; each plan gives up a little more than the one before. */
export interface CardPlan {
  /** Size of the finding's letters, px. */
  readonly finding: number;
  /** Longest finding, words; a shorter form of the answer is taken where it has more. */
  readonly words: number;
  /** Most lines of the finding. */
  readonly lines: number;
  readonly text: number;
  /** Size of what is looked up and not read: who hit and when, address, version. */
  readonly foot: number;
  /** How many pairs are drawn. */
  readonly pairs: number;
  /** How many times as large as in a list they are drawn. */
  readonly picture: number;
  /** The caution with its pair and its size, in brief, or only one under which the answer would be another one. */
  readonly caution: 'whole' | 'brief' | 'if-it-decides';
  readonly whom: 'whole' | 'brief';
  /** Every sentence of the page, the fewest words that are as exact, or at most so many characters of them. */
  readonly interest: 'whole' | 'few-words' | number;
}

/** A first plan and those that follow, each changed in what a step names. */
export function plansOf(first: CardPlan, steps: readonly Partial<CardPlan>[]): readonly CardPlan[] {
  return steps.reduce<readonly CardPlan[]>(
    (made, step) => [...made, { ...(made.at(-1) ?? first), ...step }],
    [first],
  );
}

/** Where even the least letters leave no room: whole statements of an interest give way, and that there are more is said. */
export const lastSteps: readonly Partial<CardPlan>[] = [
  { interest: 700 },
  { interest: 500 },
  { interest: 300 },
];
