import type { MethodSection } from './section.ts';

/** The rule by which every printed number follows from `findings.json`. */
export const rounding: MethodSection = {
  id: 'rounding',
  title: 'How numbers are rounded',
  blocks: ({ system }) => [
    'The file findings.json of a report holds its numbers unrounded. With these rules you can get every printed ' +
      'number from it.',
    {
      list: [
        'Change the number into your unit first. A yard is 0.9144 metres, a foot 0.3048 metres, and a mile an hour ' +
          '0.44704 metres a second, exactly. Yards and metres are each rounded by themselves.',
        'Each measure has one step in a report. Take half the width of its widest likely range, and divide it by ' +
          '2.5. The step is the largest of 1, 2 and 5 times a power of ten that is no more than this. It is never ' +
          `finer than the step of the file, nor, for distance, than half a ${system === 'yards' ? 'yard' : 'metre'}.`,
        'Differences, ends of ranges, spreads, what luck does and the smallest difference found all use this step, ' +
          'in sentences, charts and tables alike. The smallest difference found is rounded up. Single shots keep ' +
          'the digits of the file.',
        'Averages use it too. If two printed averages, subtracted, then miss the printed difference by more than ' +
          'half a step, all averages of that measure are rounded to the next power of ten below the step.',
        'The ends of a likely range are rounded outwards, away from its middle. An end that comes to 0, or lies ' +
          'nearer to it than half a step, is "almost nothing", in tables "almost 0". One that would land on the smallest difference that matters is "just over" or ' +
          '"just under" it.',
        'A half step is printed as it is: 10.5, and 10 rather than 10.0. All else is rounded to the nearest, a ' +
          'half away from 0.',
        'What comes from our flight model is never printed finer than whole yards or metres.',
        'The p of a pair stands in tables only, with two digits; a smaller one is "under 0.001". It allows for all ' +
          'pairs. It is held against 0.05, or against 0.025 where a test has two main measures.',
      ],
    },
  ],
};
