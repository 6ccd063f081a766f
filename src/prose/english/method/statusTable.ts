import type { StatusId } from '../../../findings/findings.ts';
import type { VerdictId } from '../../../findings/verdict.ts';
import type { UnitSystem } from '../../readerUnits.ts';
import { sentence } from '../../words.ts';
import { sayShort } from '../answerWords.ts';
import { comparisonOf } from '../comparisons.ts';
import { noneSeen, pairSentences, tooFewShots, withinMatters, type NamedPair } from '../pairSentences.ts';
import type { WordTable } from './section.ts';

interface Row {
  readonly status: StatusId;
  readonly firstLook?: boolean;
  readonly verdict: VerdictId | 'any of these';
  readonly when: string;
  /** Without its full stop. */
  readonly example: string;
}

const carry = comparisonOf('carry');
const pair: NamedPair = { ...carry, ahead: 'Alder', behind: 'Birch' };

/**
 * Each status with its verdict in the findings, when it is due, and how its answer reads; M is what matters. The numbers
 * of the examples are made up in the reader's units.
 */
const rowsIn = (units: UnitSystem): readonly Row[] => [
  {
    status: 'clear',
    verdict: 'clear',
    when: 'The whole range lies beyond M.',
    example: pairSentences.clear(pair, { about: `12 ${units}`, likely: '8 to 16' }, false),
  },
  {
    status: 'clear',
    firstLook: true,
    verdict: 'clear',
    when: 'The same, with fewer than eight counted shots of either.',
    example: pairSentences.clear(pair, { about: `12 ${units}`, likely: '7 to 18' }, true),
  },
  {
    status: 'size-uncertain',
    verdict: 'size-unsure',
    when: 'The range leaves out 0 and begins below M; the best estimate is M or more.',
    example: pairSentences['size-uncertain'](pair, `2 to 11 ${units}`),
  },
  {
    status: 'size-uncertain',
    verdict: 'maybe-small',
    when: 'The range leaves out 0 and ends beyond M; the best estimate is below M.',
    example: pairSentences['size-uncertain'](pair, `between almost nothing and 7 ${units}`),
  },
  {
    status: 'small',
    verdict: 'small',
    when: 'The range leaves out 0, and all of it is smaller than M.',
    example: pairSentences.small(pair, carry.sized.more.replace('{n}', `1.6 ${units}`)),
  },
  {
    status: 'level',
    verdict: 'level',
    when: 'The range holds 0, and both ends are smaller than M.',
    example: pairSentences.level(pair, `5 ${units}`),
  },
  {
    status: 'cannot-tell',
    verdict: 'too-close',
    when: 'The range holds 0 and reaches beyond M. This is not the same as equal.',
    example: pairSentences['cannot-tell'](pair, `: anything from 8 ${units} for Alder to 3 for Birch`),
  },
  {
    status: 'cannot-tell',
    verdict: 'too-close',
    when: 'The same, and neither end is beyond 1.15 times M.',
    example: withinMatters(pair, `5 ${units}`, 'carry'),
  },
  {
    status: 'cause-unclear',
    verdict: 'any of these',
    when: 'The range leaves out 0, but the order of the shots may be the cause.',
    example: pairSentences['cause-unclear'](
      'Alder went farther than Birch',
      'Alder was hit last and Birch first',
      'the head',
    ),
  },
  {
    status: 'cannot-tell',
    verdict: 'any of these',
    when: 'The range holds 0, and the order of the shots may hide a difference.',
    example: noneSeen('carry', 'between Alder and Birch', 'the order of the shots could hide one'),
  },
  {
    status: 'not-confirmed',
    verdict: 'any of these',
    when: 'Two of our checks, or the only one, do not confirm the answer.',
    example: pairSentences['not-confirmed'](pair, 'two of our three checks do not confirm it'),
  },
  {
    status: 'not-judged',
    verdict: 'not-judged',
    when: 'Fewer than five shots, no reading, or one and the same number each time.',
    example: pairSentences['not-judged']('Cedar', tooFewShots('four', false)),
  },
];

/** What is printed for each answer. */
export const statusTable = (units: UnitSystem): WordTable => ({
  caption: 'What each answer means; M is the smallest difference that matters',
  head: ['Answer', 'When', 'For example', 'Verdict in findings.json'],
  idColumn: 3,
  rows: rowsIn(units).map(({ status, firstLook = false, verdict, when, example }) => [
    sayShort({ status, firstLook }),
    when,
    sentence(example),
    verdict,
  ]),
});
