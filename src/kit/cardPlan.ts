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
  /** Who hit and when, golfers with their shots and when, or when alone, as the head says how many golfers. */
  readonly whom: 'whole' | 'brief' | 'when';
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

/** What is taken back first where a plan leaves room. */
const takenBack: readonly (keyof CardPlan)[] = [
  'pairs',
  'interest',
  'text',
  'words',
  'finding',
  'picture',
  'caution',
  'whom',
  'foot',
];

/**
 * The first plan for which there is room, with whatever of those before has room in it after all, as one that gives up
 * much at once may leave some; the last plan where there is no room for any.
 */
export function planThatFits(plans: readonly CardPlan[], fits: (plan: CardPlan) => boolean): CardPlan {
  const at = plans.findIndex(fits);
  const found = plans.at(at);
  if (found === undefined) throw new Error('A card has no plan.');
  const before = at < 0 ? [] : plans.slice(0, at);
  // The picture at its least comes before anything that would only be larger or longer.
  const least = before.findLast(({ picture }) => picture > 0)?.picture ?? 0;
  const pictured = { ...found, picture: Math.max(found.picture, least) };
  return takenBack.reduce(
    (plan, part) => {
      const values = [...new Set(before.map((one) => one[part]))];
      const own = values.indexOf(plan[part]);
      const richer = values
        .slice(0, own < 0 ? values.length : own)
        .map((value): CardPlan => ({ ...plan, [part]: value }));
      return richer.find(fits) ?? plan;
    },
    before.length > 0 && fits(pictured) ? pictured : found,
  );
}

/** Where even the least letters leave no room: whole statements of an interest give way, and that there are more is said. */
export const lastSteps: readonly Partial<CardPlan>[] = [
  { interest: 700 },
  { interest: 500 },
  { interest: 300 },
];
