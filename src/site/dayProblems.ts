import type { Source } from '../intake/authored/source.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';

/**
 * Days that cannot be as they stand: shots of a day that has not come, and a report published before it was hit. Of a
 * draft only the second, as a plan is for a day to come, and of made-up shots, whose day is made up too.
 *
 * @param today ISO 8601; null where no clock is asked
 */
export function dayProblems({ front, placeOf }: Source, today: string | null): readonly Problem[] {
  const { date, published, status, inventedData } = front;
  const ahead = (
    key: 'date' | 'published',
    day: string | null,
    done: string,
    more: string,
  ): readonly Problem[] =>
    today === null || status === 'draft' || inventedData || day === null || day <= today
      ? []
      : [
          makeProblem('day-ahead', placeOf([key]), {
            expected: `the day on which it was ${done}, ${today} at the latest`,
            found: day,
            cure: `Look at year and month. ${more}`,
          }),
        ];
  return [
    ...ahead('date', date, 'hit', 'A test that is still to be hit is a draft.'),
    ...ahead(
      'published',
      published,
      'published',
      'The day of publication is not announced: it is the day of the build that shows it.',
    ),
    ...(published !== null && published < date
      ? [
          makeProblem('published-before-hit', placeOf(['published']), {
            expected: `a day from ${date} on, when the shots were hit`,
            found: published,
            cure: 'Correct the day of publication, or "date" if that is the wrong one.',
          }),
        ]
      : []),
  ];
}
