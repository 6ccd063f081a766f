import type { Source } from '../intake/authored/source.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';

/**
 * Reports that send their readers to one that is not there, that is themselves, or that is not published: the link would
 * lead nowhere.
 *
 * @param folders names of all folders of reports
 */
export function replacementProblems(
  sources: readonly Source[],
  folders: readonly string[],
): readonly Problem[] {
  const status = new Map(sources.map(({ slug, front }) => [slug, front.status]));
  return sources.flatMap(({ slug, front, placeOf }): readonly Problem[] => {
    const next = front.supersededBy;
    if (front.status !== 'superseded' || next === null) return [];
    const problem = (found: string, cure: string): readonly Problem[] => [
      makeProblem('replacement-missing', placeOf(['superseded_by']), {
        expected: 'the name of a published report that replaces this one',
        found,
        cure,
        cureAtDesk:
          'Choose under “After publication” the report that takes its place, or publish this one again.',
      }),
    ];
    const others = folders.filter((name) => name !== slug);
    if (next === slug)
      return problem(
        `${next}, which is this report`,
        others.length === 0 ? noneYet : `Write the name of the newer one: ${others.join(', ')}.`,
      );
    if (!folders.includes(next))
      return problem(
        `${next}, which is no report`,
        others.length === 0 ? noneYet : `Write one of: ${others.join(', ')}.`,
      );
    if (status.get(next) === 'draft')
      return problem(
        `${next}, which is a draft`,
        `Publish ${next} first, or set this one to status: withdrawn with the day and the reason.`,
      );
    return [];
  });
}

const noneYet =
  'Make the report that replaces it first, or set this one to status: withdrawn with the day and the reason.';
