/** A question of a plan, for a terminal and for a form. */
export interface PlanQuestion {
  /** The question without its mark. */
  readonly asks: string;
  /** What may be answered, where the question names some. */
  readonly among: string | null;
  /** How it is typed, or what no answer means; for who types it into a line. */
  readonly typing: string | null;
}

const question = (
  asks: string,
  { among = null, typing = null }: Partial<Omit<PlanQuestion, 'asks'>> = {},
): PlanQuestion => ({ asks, among, typing });

/** What is asked of whoever plans a test, in the order of asking. */
export const planQuestions = {
  contender: question('What is compared', { typing: 'Two or three names, with commas between them:' }),
  varied: question('The one thing that differs', { among: 'head, shaft, ball, loft, grooves' }),
  metric: question('The one metric to judge by'),
  matters: (metric: string) => question(`The smallest gap in ${metric} that a customer should care about`),
  club: question('Which kind of club', { among: 'driver, iron, wedge or other' }),
  hitter: question('Who hits, as a role and never a name', { among: 'staff fitter, customer, professional' }),
  player: question('A good player, or one of a middle handicap', { among: 'good or mid' }),
  spread: (metric: string, none: string | null) =>
    question(`The spread of ${metric} to plan with, as a standard deviation with its unit`, { typing: none }),
  order: question('The order', {
    among: 'rotation (one shot with each, shuffled), mini-blocks-2 or mini-blocks-3',
  }),
  shots: question('How many shots with each'),
  expectation: question('What do you expect to see', { typing: '(Enter for nothing in particular)' }),
};

/** The whole question, as a terminal asks it. */
export const questionLine = ({ asks, among, typing }: PlanQuestion): string =>
  `${asks}${among === null ? '' : `: ${among}`}?${typing === null ? '' : ` ${typing}`}`;
