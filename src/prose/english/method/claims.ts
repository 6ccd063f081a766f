import type { MethodSection } from './section.ts';

/** How a shop's own sentences are held against the shots. */
export const claims: MethodSection = {
  id: 'said',
  title: 'What a shop says, checked',
  blocks: () => [
    'A shop may put sentences on record as claims. We hold each against the same likely range:',
    {
      list: [
        'Supported: the whole range lies beyond what is claimed, and the club or ball may be named as the cause.',
        'Overstated: there is a difference that way, but the range reaches below the size claimed.',
        'Not shown: the shots cannot say, or a caution forbids it.',
        'Contradicted: the whole range lies below what is claimed. Such a claim stops the page.',
      ],
    },
    'What the shots support but the test did not set out to check is called so. A claim about scores, forgiveness or ' +
      'wear is refused, since nothing of the kind was measured.',
    "Numbers in the shop's own text come from the shots or from what it wrote down. Before publication we point out " +
      'a comparison without a claim, a promise, and a number that matches nothing.',
  ],
};

/** What a report never says. */
export const limits: MethodSection = {
  id: 'not',
  title: 'What our reports do not say',
  blocks: () => [
    {
      list: [
        'Whether you would see the same. A test is no fitting; try clubs with a qualified fitter.',
        'Anything about scores, forgiveness or wear: we did not measure these.',
        'Whether you may use a club or ball in a competition. Check the current lists and the local rules.',
        'Whether another example of the same model does the same. Unless a report says otherwise, we hit one of each.',
        'Anything about your body. Warm up, stop if it hurts, keep others clear of the swing, and follow the rules of ' +
          'the place.',
      ],
    },
    'In a net, distances are calculated from the start of the flight. A report says so for every column that was not ' +
      'measured.',
  ],
};
