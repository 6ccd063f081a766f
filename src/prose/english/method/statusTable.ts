import type { VerdictId } from '../../../findings/verdict.ts';
import type { UnitSystem } from '../../readerUnits.ts';
import type { WordTable } from './section.ts';

interface Row {
  readonly status: string;
  readonly verdict: VerdictId | 'any of these';
  readonly when: string;
  readonly example: string;
}

/** Each status with its verdict in the findings, when it is due, and how its answer reads; M is what matters. The examples are made up in the reader's units. */
const rowsIn = (units: UnitSystem): readonly Row[] => [
  {
    status: 'Clear difference',
    verdict: 'clear',
    when: 'The whole range lies beyond M.',
    example: `Alder carried farther than Birch: about 12 ${units}, likely 8 to 16.`,
  },
  {
    status: 'Clear difference, first look',
    verdict: 'clear',
    when: 'The same, with fewer than eight counted shots of either.',
    example: `On a first look Alder carried farther than Birch: about 12 ${units}, likely 7 to 18.`,
  },
  {
    status: 'Difference, size uncertain',
    verdict: 'size-unsure',
    when: 'The range leaves out 0 and begins below M; the best estimate is M or more.',
    example: `Alder carried farther than Birch, by how much is uncertain: likely 2 to 11 ${units}.`,
  },
  {
    status: 'Difference, size uncertain',
    verdict: 'maybe-small',
    when: 'The range leaves out 0 and ends beyond M; the best estimate is below M.',
    example: `Alder carried farther than Birch, by how much is uncertain: likely between almost nothing and 7 ${units}.`,
  },
  {
    status: 'Too little to matter',
    verdict: 'small',
    when: 'The range leaves out 0, and all of it is smaller than M.',
    example: `Alder carried about 1.6 ${units} farther than Birch, too little to matter.`,
  },
  {
    status: 'No difference that matters',
    verdict: 'level',
    when: 'The range holds 0, and both ends are smaller than M.',
    example: `Alder and Birch carried alike: any difference is likely under 5 ${units}.`,
  },
  {
    status: 'Cannot tell',
    verdict: 'too-close',
    when: 'The range holds 0 and reaches beyond M. This is not the same as equal.',
    example: `We cannot tell whether Alder or Birch carried farther: anything from 8 ${units} for Alder to 3 for Birch.`,
  },
  {
    status: 'Cannot tell',
    verdict: 'too-close',
    when: 'The same, and neither end is beyond 1.15 times M.',
    example: `Alder and Birch were within about 5 ${units} of each other; we cannot say which is longer.`,
  },
  {
    status: 'Difference seen, cause unclear',
    verdict: 'any of these',
    when: 'The range leaves out 0, but the order of the shots may be the cause.',
    example: 'Alder went farther than Birch, but Alder was hit last, so we cannot say that it was the head.',
  },
  {
    status: 'Cannot tell',
    verdict: 'any of these',
    when: 'The range holds 0, and the order of the shots may hide a difference.',
    example: 'We saw no difference, though the order of the shots could hide one.',
  },
  {
    status: 'Not confirmed',
    verdict: 'any of these',
    when: 'Two of our checks, or the only one, do not confirm the answer.',
    example: 'Alder may carry farther than Birch; two of our three checks do not confirm it.',
  },
  {
    status: 'Not judged',
    verdict: 'not-judged',
    when: 'Fewer than five shots, no reading, or one and the same number each time.',
    example: 'We did not judge Cedar: four shots are too few.',
  },
];

/** What is printed for each answer. */
export const statusTable = (units: UnitSystem): WordTable => ({
  caption: 'What each answer means; M is the smallest difference that matters',
  head: ['Answer', 'When', 'For example', 'Verdict in findings.json'],
  idColumn: 3,
  rows: rowsIn(units).map(({ status, verdict, when, example }) => [status, when, example, verdict]),
});
