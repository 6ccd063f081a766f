import type { Source } from '../intake/authored/source.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';

/**
 * Older addresses of reports that are somebody else's: of a report that is there, whether it can be read or not, or of
 * another one's past. Many hosts take capitals and small letters for one.
 *
 * @param slugs names of all folders of reports
 */
export function aliasProblems(sources: readonly Source[], slugs: readonly string[]): readonly Problem[] {
  const taken = new Map(slugs.map((slug) => [slug.toLowerCase(), `the report ${slug} itself`]));
  return sources.flatMap(({ slug, front, placeOf }) =>
    front.aliases.flatMap((alias, index): Problem[] => {
      const owner = taken.get(alias.toLowerCase());
      if (owner === undefined) {
        taken.set(alias.toLowerCase(), `an older name of ${slug}`);
        return [];
      }
      return [
        makeProblem('alias-taken', placeOf(['aliases', index]), {
          expected: 'an older name that no report has or had besides this one, once',
          found: `${alias}, which is ${owner}`,
          cure: 'Take it out here, or there; one address can lead to one report only.',
          cureAtDesk:
            'Take it out under “After publication”, here or there: one address can lead to one report only.',
        }),
      ];
    }),
  );
}
