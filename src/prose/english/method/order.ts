import type { MethodSection } from './section.ts';

/** What the order of the shots does to a difference. */
export const order: MethodSection = {
  id: 'order',
  title: 'The order of the shots',
  blocks: ({ distance }) => [
    'Golfers warm up and tire. If one club is hit after the other, that alone can make a difference. We tried this ' +
      `with made-up sessions of equal clubs and a drift of ${distance(8)} from first shot to last. Hit one after ` +
      'another, 10 to 50 tests in 100 showed a false difference. Hit in rounds, about 4 in 100 did.',
    'A round is each club or ball hit once. A spell is a few shots in a row with one. We take the order from the ' +
      'rows of the file and not from what is claimed. We call an order random only if the seed of the plan gives ' +
      'it again, shot by shot. If the shop says that the rows are not in hit order, the order it states counts, ' +
      'and the page says that it cannot be checked.',
    'We say that it was the club or ball only if the order allows it. It does not in these cases:',
    {
      list: [
        'They were hit one after another, or nobody knows the order.',
        'One was hit much later than the other on the whole, by a quarter of the test or more, and not in rounds. ' +
          'If the difference is still sure with a steady drift taken out, this does not count.',
        'A steady drift is surely there, and it moves the difference by half of M.',
        'They were hit in spells, and each had fewer than three.',
      ],
    },
    'Then the page says how large a steady drift would have to be to make the whole difference. Seeing no drift ' +
      'does not prove that there was none: a test sees such a drift about once in ten times.',
    'Golfers can even out the order between them. If some hit one first and some the other, so that no one was ' +
      'later on the whole, the order allows an answer.',
  ],
};
