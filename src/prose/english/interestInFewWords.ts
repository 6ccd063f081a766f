import type { InterestStatement } from '../interestStatements.ts';
import { listed } from '../words.ts';
import {
  all,
  furtherSentence,
  sellingSentence,
  soldAndSupplied,
  supplyTold,
  told,
  weSell,
  type InterestTelling,
  type Of,
} from './interest.ts';

/**
 * The same of one statement in the fewest words that lose nothing of what came from outside, with nobody speaking:
 * "Paid for by the shop and the maker of Clover, half each."
 */
export function interestInFewWords(
  statements: readonly InterestStatement[],
  telling: InterestTelling,
): readonly string[] {
  const { sold, supplied } = soldAndSupplied(statements);
  return [
    ...soldAtAll(sold, telling),
    ...supplyTold(supplied, sold, telling).map(({ text }) => text),
    ...statements.flatMap((statement) => {
      switch (statement.kind) {
        case 'sells':
        case 'supply':
          return [];
        case 'payment': {
          const { kind, words } = statement.payment;
          return kind === 'others' || kind === 'shared'
            ? [`Paid for by ${told(words, telling)}.`]
            : [furtherSentence(statement, telling)];
        }
        case 'gifts':
          return statement.gifts.kind === 'some'
            ? [`Commission or gifts: ${told(statement.gifts.words, telling)}.`]
            : [furtherSentence(statement, telling)];
        case 'seen':
          return statement.seen.kind === 'others'
            ? [`Seen before publication by ${told(statement.seen.words, telling)}.`]
            : [furtherSentence(statement, telling)];
        case 'own-words':
          return [furtherSentence(statement, telling)];
      }
    }),
  ];
}

/** "The shop sells all three." or "The shop sells all but Mallow." */
function soldAtAll(sold: readonly Of<'sells'>[], telling: InterestTelling): readonly string[] {
  if (sold.length === 0) return [];
  const every = sold.flatMap(({ contenders }) => contenders);
  const not = sold.filter(({ how }) => how === 'no').flatMap(({ contenders }) => contenders);
  if (every.length === not.length) return sellingSentence(sold, telling);
  const [one] = every.filter((id) => !not.includes(id));
  if (not.length === every.length - 1 && one !== undefined)
    return [`${weSell(telling)} ${telling.nameOf(one)} alone.`];
  const but = not.length === 0 ? '' : ` but ${listed(not.map(telling.nameOf))}`;
  return [`${weSell(telling)} ${but === '' ? all(every) : `all${but}`}.`];
}
