import type { Source } from '../intake/authored/source.ts';
import type { Ledger } from '../intake/ledger.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import { ledgerFile } from './ledger.ts';

/**
 * Reports that were published and whose folder is gone: readers hold links to them. A renamed one names its older
 * address; one that was given up on purpose stands under `dropped`.
 *
 * @param folders names of all folders of reports
 */
export function gonePublished(
  sources: readonly Source[],
  { folders, ledger }: { readonly folders: readonly string[]; readonly ledger: Ledger | null },
): readonly Problem[] {
  if (ledger === null) return [];
  const known = new Set([
    ...folders,
    ...sources.flatMap(({ front }) => front.aliases),
    ...ledger.dropped.map(({ slug }) => slug),
  ]);
  return ledger.reports
    .filter(({ slug, records }) => records.length > 0 && !known.has(slug))
    .map(({ slug, records }) =>
      makeProblem(
        'published-report-gone',
        { file: ledgerFile },
        {
          expected: `the folder reports/${slug}, which was published and put on record on ${records.at(-1)?.date ?? ''}`,
          found: 'no such folder',
          cure:
            `If it was renamed, add "aliases: [${slug}]" to the report that it is now. If it should no longer stand, put ` +
            `the folder back with "status: withdrawn", the day and the reason: a dated notice stays at its address. If it ` +
            `is to be gone for good: npm run record -- --drop ${slug} --reason "why"`,
        },
      ),
    );
}
