import type { InterestStatement } from '../../interestStatements.ts';
import { capitalised, countWord, listed, sentence } from '../../words.ts';
import { told, type InterestTelling } from '../interest.ts';
import { interestInFewWords } from '../interestInFewWords.ts';
import { isOwnToEach } from '../eachBy.ts';

/** Who tells, and what was varied, for one and for several. */
export type BriefTelling = InterestTelling & { readonly nouns: readonly [one: string, several: string] };

/**
 * One statement of interest for a place of a line or two, the shortest form first: each is as exact as it is long, and
 * what it has no room for it does not say.
 */
export function sayInterestBriefly(statement: InterestStatement, telling: BriefTelling): readonly string[] {
  const whole = interestInFewWords([statement], telling).join(' ');
  return [...shorter(statement, telling).filter((words) => words.length < whole.length), whole];
}

function shorter(statement: InterestStatement, telling: BriefTelling): readonly string[] {
  switch (statement.kind) {
    case 'payment': {
      const { payment } = statement;
      if (payment.kind === 'in-words') return ['The report states who paid.'];
      if (payment.kind === 'others') return ['Not paid by the shop.'];
      if (payment.kind === 'shop' || payment.by === null) return ['Not paid by the shop alone.'];
      const share = payment.share === null ? '' : `, ${payment.share}`;
      const by = capitalised(told(payment.by, telling));
      return [
        'Not paid by the shop alone.',
        `${by} co-paid.`,
        ...(share === '' ? [] : [`${by} co-paid${share}.`]),
      ];
    }
    case 'gifts':
      return statement.gifts.kind === 'in-words'
        ? ['The report states commission and gifts.']
        : ['The shop took commission or gifts.'];
    case 'supply': {
      const { supply, contenders } = statement;
      if (supply.kind !== 'lent' && supply.kind !== 'given') return [];
      const names = listed(contenders.map(telling.nameOf));
      const [one, several] = telling.nouns;
      const count = contenders.length;
      const few = sentence(`${countWord(count)} ${count === 1 ? one : several} ${supply.kind}`);
      const lent = sentence(`${names} ${supply.kind}`);
      return supply.by === null || isOwnToEach(supply.by, contenders)
        ? [few, lent]
        : [
            few,
            lent,
            sentence(`${told(supply.by, telling)} ${supply.kind === 'lent' ? 'lent' : 'gave'} ${names}`),
          ];
    }
    case 'seen':
      return ['Seen outside the shop before publication.'];
    case 'own-words':
    case 'sells':
      return [];
  }
}

/** Who states an interest where nobody is there to say "we": "Example Golf Workshop on its interest:". */
export const interestOpening = (shop: string): string => `${shop} on its interest:`;
