import type { VerdictId } from '../../../findings/verdict.ts';
import { metrics } from '../../../trade/metrics.ts';
import type { CalculatedHow, Caution, PairAnswer } from '../../statement.ts';
import type { Telling } from '../../telling.ts';
import { capitalised, counted, countWord } from '../../words.ts';
import { comparisonOf } from '../comparisons.ts';
import { causeOf } from '../names.ts';

/** A caution in as few words as leave it true, beside the answer that it bears on. */
export function sayCautionInBrief(caution: Caution, telling: Telling): string {
  const { facts, about, pairs } = caution;
  const { name } = metrics[about.metric];
  switch (facts.overlay) {
    case 'one-after-another':
      return 'Hit one after another.';
    case 'order-unknown':
      return 'The order of the shots is not known.';
    case 'order-drift':
      return `${capitalised(name)} drifted during the test.`;
    case 'order-lever':
      return 'Some were mostly hit later than others.';
    case 'order-few-visits':
      return 'Hit in only a few spells each.';
    case 'depends-on-left-out':
      return `Counting ${facts.leftOut === 1 ? 'the one shot' : facts.leftOut === 0 ? 'the shots' : `the ${counted(facts.leftOut, 'shot')}`} left out, ${wholeInBrief(facts.whole, pairOrWhich(caution, telling))}.`;
    case 'uneven-readings':
      return `Readings of ${name} are missing unevenly.`;
    case 'matters-unusual':
      return `What counts as enough to matter in ${name} is unusual here.`;
    case 'golfers-apart':
      return `For single golfers the ${name} difference ${between(pairs, telling)} may matter.`;
    case 'visits-alike':
      return `With each spell counted as one shot, we cannot tell ${pairOrWhich(caution, telling)}.`;
    case 'mixed-with-swing':
      return `The swing differed too: it may not be ${causeOf(telling)}.`;
    case 'leans':
      return `Most of our checks do not confirm the ${name} answer.`;
    case 'rests-on-one-shot':
      return `Without one stray shot we cannot tell ${pairOrWhich(caution, telling)}.`;
    case 'near-device':
      return `The difference in ${name} is hardly more than the monitor can tell.`;
    case 'modelled-reading':
      return calculated(facts.by, capitalised(name));
    case 'few-shots':
      return 'So few shots make a first look only.';
  }
}

/** Cautions that name the one pair that they are about. */
const naming: readonly Caution['facts']['overlay'][] = [
  'depends-on-left-out',
  'golfers-apart',
  'visits-alike',
  'rests-on-one-shot',
];

/** Whether a caution in brief says itself which pair it is about. */
export function namesItsPair({ facts, pairs }: Caution): boolean {
  return pairs.length === 1 && naming.includes(facts.overlay);
}

/** "Heron and Wren apart in carry" of one pair; "which carried farther" of several. */
function pairOrWhich({ about, pairs }: Caution, telling: Telling): string {
  const { verb, more } = comparisonOf(about.metric);
  const [first, ...others] = pairs;
  return first === undefined || others.length > 0
    ? `which ${verb} ${more}`
    : `${telling.the(first.ahead)} and ${telling.the(first.behind)} apart in ${metrics[about.metric].name}`;
}

/** "between Heron and Wren"; of several pairs "between some of the balls". */
function between(pairs: readonly PairAnswer[], telling: Telling): string {
  const [first, ...others] = pairs;
  return first === undefined || others.length > 0
    ? `between some of the ${telling.nouns}`
    : `between ${telling.the(first.ahead)} and ${telling.the(first.behind)}`;
}

/** The shortest forms of a caution under which the answer would be another one, shortest first; none of any other. */
export function sayWhatDecides({ facts }: Caution): readonly string[] {
  if (facts.overlay === 'rests-on-one-shot') return ['One shot decides.', 'One stray shot decides.'];
  if (facts.overlay !== 'depends-on-left-out') return [];
  if (facts.leftOut === 0) return ['Left-out shots decide.'];
  const whole = `${capitalised(countWord(facts.leftOut))} left-out ${facts.leftOut === 1 ? 'shot decides' : 'shots decide'}.`;
  return facts.leftOut === 1 ? ['One shot decides.', whole] : [whole];
}

function wholeInBrief(whole: VerdictId | null, whom: string): string {
  switch (whole) {
    case 'clear':
      return 'the difference is clear';
    case 'size-unsure':
    case 'maybe-small':
      return 'there is a difference of uncertain size';
    case 'small':
    case 'level':
      return 'no difference matters';
    case 'too-close':
      return `we cannot tell ${whom}`;
    case 'not-judged':
    case null:
      return 'the answer is another one';
  }
}

function calculated(by: CalculatedHow, name: string): string {
  switch (by) {
    case 'flight-model':
      return `${name} by our own flight model.`;
    case 'calculated':
      return `${name} calculated, not watched.`;
    case 'estimated':
      return `${name} estimated by the monitor.`;
    case 'looks-estimated':
      return `${name} looks estimated.`;
  }
}
