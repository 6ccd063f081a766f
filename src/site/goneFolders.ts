import type { Source } from '../intake/authored/source.ts';
import type { Ledger } from '../intake/ledger.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import { ledgerFile, planHash } from './ledger.ts';

/** What lies in the content folder, and what is on record of it. */
interface Gone {
  /** Names of all folders of reports. */
  readonly folders: readonly string[];
  readonly ledger: Ledger | null;
}

/** Names that still stand for a report, or that were given up on purpose. */
const knownNames = (sources: readonly Source[], folders: readonly string[], ledger: Ledger): Set<string> =>
  new Set([
    ...folders,
    ...sources.flatMap(({ front }) => front.aliases),
    ...ledger.dropped.map(({ slug }) => slug),
  ]);

/**
 * Reports that were published and whose folder is gone: readers hold links to them. A renamed one names its older
 * address; one that was given up on purpose stands under `dropped`.
 */
export function gonePublished(sources: readonly Source[], { folders, ledger }: Gone): readonly Problem[] {
  if (ledger === null) return [];
  const known = knownNames(sources, folders, ledger);
  return ledger.reports
    .filter(({ slug, records }) => records.length > 0 && !known.has(slug))
    .map(({ slug, records }) =>
      makeProblem(
        'published-report-gone',
        { file: ledgerFile },
        {
          expected: `the folder reports/${slug}, which was published and put on record on ${records.at(-1)?.date ?? ''}`,
          found: 'no such folder',
          cureAtDesk:
            `If it was renamed, add ${slug} to the older names of the report that it is now. If it should no longer stand, ` +
            'put the folder back and withdraw the report, with the day and the reason: a dated notice stays at its address.',
          cure:
            `If it was renamed, add "aliases: [${slug}]" to the report that it is now. If it should no longer stand, put ` +
            `the folder back with "status: withdrawn", the day and the reason: a dated notice stays at its address. If it ` +
            `is to be gone for good: npm run record -- --drop ${slug} --reason "why"`,
        },
      ),
    );
}

/**
 * Tests that were planned and put on record and whose folder is gone: renamed without its older name, a test would pass
 * for one that was not planned, and the plan for one that was never hit.
 */
export function gonePlanned(sources: readonly Source[], { folders, ledger }: Gone): readonly Problem[] {
  if (ledger === null) return [];
  const known = knownNames(sources, folders, ledger);
  const published = new Set(ledger.reports.map(({ slug }) => slug));
  const gone = ledger.plans.filter(({ slug }) => !known.has(slug) && !published.has(slug));
  return gone
    .filter(({ slug }, index) => gone.findIndex((other) => other.slug === slug) === index)
    .map(({ slug, date, hash }) => {
      const renamed = sources.filter(
        ({ slug: own, front }) =>
          planHash(front) === hash && !ledger.plans.some((plan) => plan.slug === own && plan.hash === hash),
      );
      const where =
        renamed.length === 1 ? `reports/${renamed[0]?.slug ?? ''}/report.md` : 'the report that it is now';
      return makeProblem(
        'planned-test-gone',
        { file: ledgerFile },
        {
          expected: `the folder reports/${slug}, whose plan was put on record on ${date}`,
          found: 'no such folder',
          cureAtDesk: `If it was renamed, add ${slug} to the older names of the report that it is now: it keeps its record.`,
          cure:
            `If it was renamed, add "aliases: [${slug}]" to ${where}: it keeps its record. If the test was given up, say ` +
            `so, and it is counted as dropped: npm run record -- --drop ${slug} --reason "why"`,
        },
      );
    });
}
