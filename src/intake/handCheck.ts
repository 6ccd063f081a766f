import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import type { Sheet } from './authored/sheet.ts';
import type { Source } from './authored/source.ts';
import type { Session } from './session.ts';

/**
 * Warns where golfers of both hands hit the same club: nobody hits a head made for the other hand. A sheet that speaks
 * of heads for both hands answers it, and a ball has no hand.
 */
export function checkHands({ front, placeOf }: Source, session: Session): readonly Problem[] {
  if (/\bballs?\b/i.test(front.varied)) return [];
  const ofHand = (hand: 'left' | 'right'): readonly string[] =>
    front.hitters.filter((hitter) => hitter.hand === hand).map(({ id }) => id);
  const [left, right] = [ofHand('left'), ofHand('right')];
  const hitBy = (id: string, hitters: readonly string[]): boolean =>
    session.shots.some(({ contender, hitter }) => contender === id && hitters.includes(hitter));
  const heldForBoth = isForBothHands(front.held);
  const shared = front.contenders.filter(
    ({ id, build = {} }) => !heldForBoth && !isForBothHands(build) && hitBy(id, left) && hitBy(id, right),
  );
  const [hitter] = left.length <= right.length ? left : right;
  if (shared.length === 0 || hitter === undefined) return [];
  return [
    makeProblem('hands-differ', placeOf(['hitters', hitter, 'hand']), {
      expected: 'golfers of one hand, or heads for both hands',
      found: `${left.join(', ')} left-handed and ${right.join(', ')} right-handed, all with ${shared.map(({ label }) => label).join(', ')}`,
      cure: 'Correct the hand. If there was a head for each hand, say so where the head stands: "head: one left-handed and one right-handed of each".',
      forReader:
        'Right- and left-handed golfers hit the same clubs. That there was a head for each hand is not recorded.',
    }),
  ];
}

/** Whether a build sheet speaks of both hands. */
function isForBothHands({ also = {}, ...items }: Sheet): boolean {
  const words = [...Object.values(items), ...Object.values(also)].join(' ');
  return /\bleft\b|\bboth hands\b/i.test(words) && /\bright\b|\bboth hands\b/i.test(words);
}
