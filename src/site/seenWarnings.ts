import type { SeenWarning } from '../intake/authored/seen.ts';
import type { Source } from '../intake/authored/source.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';

/**
 * The problems without the warnings that a report says it has seen. One that meets none any more is told, so that it
 * does not keep a later one quiet. What readers of a page are told stays on the page.
 */
export function withoutSeen(problems: readonly Problem[], sources: readonly Source[]): readonly Problem[] {
  const answering = sources.filter(({ front }) => front.seen.length > 0);
  if (answering.length === 0) return problems;
  const met = new Set<SeenWarning>();
  const left = problems.filter((problem) => {
    const entries = answering
      .filter(({ slug }) => problem.file.startsWith(`reports/${slug}/`))
      .flatMap(({ front }) => front.seen)
      .filter((entry) => isMeant(entry, problem));
    entries.forEach((entry) => met.add(entry));
    return entries.length === 0;
  });
  return [...left, ...answering.flatMap((source) => unmet(source, met, left))];
}

/** Whether an answered warning is a problem that was found. */
export function isMeant({ warning, about }: SeenWarning, problem: Problem): boolean {
  const { severity, kind, found, columnName } = problem;
  if (severity !== 'warning' || kind !== warning) return false;
  return about === undefined || columnName === about || (found ?? '').includes(about);
}

/** While there are errors, not all is looked at, and nobody knows which warnings there would be. */
function unmet(
  { front, slug, placeOf }: Source,
  met: ReadonlySet<SeenWarning>,
  left: readonly Problem[],
): readonly Problem[] {
  const stopped = left.some(
    ({ severity, file }) => severity === 'error' && file.startsWith(`reports/${slug}/`),
  );
  if (stopped) return [];
  return front.seen.flatMap((entry, index) =>
    met.has(entry)
      ? []
      : [
          makeProblem('seen-meets-nothing', placeOf(['seen', index]), {
            expected: 'a warning that this report has',
            found: entry.about === undefined ? entry.warning : `${entry.warning} about ${entry.about}`,
            cure: 'Take the entry out of "seen": what it answered is mended, or is worded otherwise.',
          }),
        ],
  );
}
