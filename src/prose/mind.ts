import type { OverlayId } from '../findings/findings.ts';
import { metrics } from '../trade/metrics.ts';
import type { Telling } from './telling.ts';
import { capitalised, listed } from './words.ts';

/** Cautions in the order of their weight; only the gravest stands beside the answer. */
const gravity: readonly OverlayId[] = [
  'one-after-another',
  'order-unknown',
  'order-drift',
  'order-lever',
  'order-few-visits',
  'depends-on-left-out',
  'uneven-readings',
  'visits-alike',
  'golfers-apart',
  'mixed-with-swing',
  'leans',
  'rests-on-one-shot',
  'near-device',
  'modelled-reading',
  'few-shots',
];

/** The cautions of a report's primary answers, the gravest first, each a sentence. */
export function cautions(telling: Telling): readonly string[] {
  return ofReport(telling).map((id) => cautionSentence(id, telling));
}

function ofReport({ findings }: Telling): readonly OverlayId[] {
  return gravity.filter((id) => findings.caveats.includes(id));
}

/** Cautions that an answer has in its own words: that the order leaves the cause open, what was calculated, a first look. */
const inTheAnswer: readonly OverlayId[] = [
  'one-after-another',
  'order-unknown',
  'order-drift',
  'order-lever',
  'order-few-visits',
  'visits-alike',
  'leans',
  'modelled-reading',
  'few-shots',
];

/** The gravest caution that an answer without its page would leave out; null where there is none. */
export function cautionBesideAnswer(telling: Telling): string | null {
  const [gravest] = ofReport(telling).filter((id) => !inTheAnswer.includes(id));
  return gravest === undefined ? null : cautionSentence(gravest, telling);
}

function cautionSentence(id: OverlayId, telling: Telling): string {
  const { noun, nouns } = telling;
  const { design } = telling.findings;
  switch (id) {
    case 'one-after-another':
      return `The ${nouns} were hit one after another. By the last one ${design.hitters === 1 ? 'the golfer was' : 'golfers were'} warmer, or more tired, and that may be all there is to a gap.`;
    case 'order-unknown':
      return 'The order of the shots is not known, so warming up or tiring may be all there is to a gap.';
    case 'order-drift':
      return 'Results drifted during the test by enough to move a gap.';
    case 'order-lever':
      return `Some ${nouns} were mostly hit later than others, so warming up or tiring may be part of a gap.`;
    case 'order-few-visits':
      return design.order === 'stated-mini-blocks'
        ? `How often each ${noun} had its turn is not known, so one good or bad spell may be part of a gap.`
        : `Each ${noun} had few turns, so one good or bad spell may be part of a gap.`;
    case 'modelled-reading':
      return calculated(telling);
    case 'few-shots':
      return 'So few shots are a first look only.';
    case 'depends-on-left-out':
      return 'The answer changes when the shots that were left out are counted.';
    case 'uneven-readings':
      return `Readings are missing more often for one ${noun} than for another.`;
    case 'golfers-apart':
      return 'On average nothing matters, but that cannot be said of each golfer.';
    case 'rests-on-one-shot':
      return 'One shot far from the others decides: without it the answer changes.';
    case 'near-device':
      return 'The gap is near the smallest that the monitor can tell.';
    case 'visits-alike':
      return 'Shots of one turn resemble each other; counted by turns, the gap is no longer clear.';
    case 'mixed-with-swing':
      return `The swing differed from one ${noun} to another by enough to make a gap; these shots cannot tell the ${noun} from the swing.`;
    case 'leans':
      return 'Worked out in other ways from the same shots, the answer mostly does not hold.';
    case 'one-hitter':
    case 'few-hitters':
    case 'one-example':
    case 'not-planned':
    case 'found-too-big':
      return '';
  }
}

/** "Carry was calculated, not seen." */
function calculated({ findings }: Telling): string {
  const own = findings.metrics.filter(
    ({ role, class: kind }) => role === 'primary' && (kind === 'modelled' || kind === 'estimated'),
  );
  const names = listed(own.map(({ id }) => metrics[id].name));
  return `${capitalised(names)} ${own.length === 1 ? 'was' : 'were'} calculated, not seen.`;
}
