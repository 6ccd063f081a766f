import { interestKeys, interestQuestions, type InterestAnswers } from './interests.ts';
import { isBlock, isUnanswered, valueAt, type Block } from './tree.ts';
import type { Trouble } from './trouble.ts';

/** The three questions about money must be answered, here or in `shop.yaml`. */
export function interestChecks(tree: Block, shop: InterestAnswers): Trouble[] {
  const answered: Readonly<Record<string, unknown>> = {
    paid_by: shop.paidBy,
    commission_or_gifts: shop.commissionOrGifts,
    seen_before: shop.seenBefore,
  };
  const open = interestKeys.filter(
    (key) => answered[key] === undefined && isUnanswered(valueAt(tree, ['interests', key])),
  );
  const interests = tree['interests'];
  if (open.length === 0 || (!isUnanswered(interests) && !isBlock(interests))) return [];
  if (!isBlock(interests)) {
    return [
      {
        kind: 'interests-missing',
        path: ['interests'],
        expected: 'who paid, what was given, and who saw the report before it was published',
        found: null,
        cure: `Add a block "interests:" that answers ${open.join(', ')}; "none" and "nobody" are answers.`,
      },
    ];
  }
  return open.map((key) => ({
    kind: 'interests-missing',
    path: ['interests', key],
    expected: interestQuestions[key],
    found: null,
    cure: null,
  }));
}
