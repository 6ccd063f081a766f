import type { Front } from '../intake/authored/front.ts';
import type { Source } from '../intake/authored/source.ts';
import { readLedger, type DroppedPlan, type Ledger, type ReportRecord } from '../intake/ledger.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import { onRecordAtDesk } from '../problems/onRecordAtDesk.ts';
import type { Problem } from '../problems/problem.ts';
import { sha256, type ContentFolder } from './contentFiles.ts';

export const ledgerFile = 'ledger.json';

/** A ledger as read; null where there is none, or none that can be read, which is an error. */
interface LedgerRead {
  readonly ledger: Ledger | null;
  readonly problems: readonly Problem[];
}

/** The ledger of a content folder. */
export function ledgerOf(folder: ContentFolder): LedgerRead {
  const { content: json, problems } = folder.text(ledgerFile);
  if (json !== null) {
    const read = readLedger(ledgerFile, json);
    return { ledger: read.ledger, problems: [...problems, ...read.problems] };
  }
  if (problems.length > 0 || !folder.files('').includes(ledgerFile)) return { ledger: null, problems };
  // Read as no ledger at all, it would be replaced by an empty one.
  const problem = makeProblem(
    'folder-is-link',
    { file: ledgerFile },
    {
      expected: 'the ledger in the content folder itself',
      found: 'a link that leads elsewhere, or no file',
      cure: 'Copy what it leads to in its place: content must be whole wherever it is built.',
    },
  );
  return { ledger: null, problems: [problem] };
}

/**
 * What a plan binds the shop to: the plan itself, the metrics chosen before hitting, and the gaps in them that
 * matter. Null without a plan.
 */
export function planHash({
  plan,
  primary,
  matters,
}: Pick<Front, 'plan' | 'primary' | 'matters'>): string | null {
  if (plan === null) return null;
  return hashOf({ plan, primary, matters: primary.map((metric) => matters[metric]?.value ?? null) });
}

/** What a published report is held to: its answers as typed, to every question but corrections and replies. */
export function contentHashes({
  typed,
  files,
}: Pick<Source, 'typed' | 'files'>): { readonly typed: string } & Pick<ReportRecord, 'data'> {
  return {
    typed: hashOf(typed),
    data: files.map(({ name, sha256: hash }) => ({ name, sha256: hash })),
  };
}

/** The narrative as written, but for blanks: another spacing says nothing else. */
export function narrativeHash({ body }: Pick<Source, 'body'>): string {
  return hashOf(body.text.trim().replace(/\s+/g, ' '));
}

/** What a one-file edition bears, so that it is known which version it is of: all that a record holds it to. */
export function editionStamp({
  typed,
  data,
  corrections,
}: Pick<ReportRecord, 'typed' | 'data' | 'corrections'>): string {
  return hashOf({ typed, data, corrections });
}

/** The latest record of a report, or null. */
export function latestRecord(slug: string, ledger: Ledger | null): ReportRecord | null {
  return ledger?.reports.find((report) => report.slug === slug)?.records.at(-1) ?? null;
}

/** What is not as it was when the report was last put on record, as far as that record can tell. */
export function changesSince(
  source: Pick<Source, 'typed' | 'files'>,
  record: ReportRecord,
): readonly string[] {
  const now = contentHashes(source);
  const names = new Set([...now.data, ...record.data].map(({ name }) => name));
  const hashIn = (data: ReportRecord['data'], name: string): string | undefined =>
    data.find((file) => file.name === name)?.sha256;
  return [
    ...(record.typed === null || now.typed === record.typed ? [] : ['front matter']),
    ...[...names].filter((name) => hashIn(now.data, name) !== hashIn(record.data, name)),
  ];
}

/** Warns of a published report that is not what it was, while no correction says so. */
export function changedWithoutCorrection(source: Source, ledger: Ledger | null): readonly Problem[] {
  const record = latestRecord(source.slug, ledger);
  if (record === null || source.front.status !== 'published') return [];
  const changed = changesSince(source, record);
  if (changed.length === 0 || source.front.corrections.length > record.corrections) return [];
  return [
    makeProblem('changed-without-correction', source.placeOf(['corrections'], 'key'), {
      expected: `what was put on record on ${record.date}, or a correction that says what changed`,
      found: `changed since: ${changed.join(', ')}`,
      cure: 'Add an entry to "corrections" with date, what, was and now, then run "npm run record".',
      cureAtDesk: `Say under “After publication” what was corrected, then ${onRecordAtDesk}.`,
      forReader: `Since ${record.date} this report was changed without a correction: ${changed.join(', ')}.`,
    }),
  ];
}

/** Warns of a narrative that is not the one on record: a sentence may say something else of the same shots. */
export function narrativeChanged(source: Source, ledger: Ledger | null): readonly Problem[] {
  const { slug, front, placeOf, body } = source;
  const record = latestRecord(slug, ledger);
  if (record === null || record.narrative === null || front.status !== 'published') return [];
  if (record.narrative === narrativeHash(source) || front.corrections.length > record.corrections) return [];
  const { file } = placeOf([]);
  return [
    makeProblem(
      'narrative-changed',
      { file, line: body.firstLine, column: 1 },
      {
        expected: `the narrative that was put on record on ${record.date}`,
        found: 'another one',
        cure:
          'If it says something else now, add an entry to "corrections" with date, what, was and now. Then, or if only ' +
          'the wording was mended, run "npm run record".',
        cureAtDesk:
          'If it says something else now, say so under “After publication”. Then, or if only the wording was mended, ' +
          `${onRecordAtDesk}.`,
      },
    ),
  ];
}

/**
 * The ledger with a planned test dropped, or a published report whose folder is gone; null where it holds no such, or
 * the report stands, or it was dropped before.
 *
 * @param folders names of all folders of reports
 */
export function dropFrom(ledger: Ledger, dropped: DroppedPlan, folders: readonly string[]): Ledger | null {
  const { slug } = dropped;
  const published = ledger.reports.some((own) => own.slug === slug);
  const known = published ? !folders.includes(slug) : ledger.plans.some((plan) => plan.slug === slug);
  const before = ledger.dropped.some((own) => own.slug === slug);
  return known && !before ? { ...ledger, dropped: [...ledger.dropped, dropped] } : null;
}

/** The text of the file; an entry a few lines, so that a change shows as such in version control. */
export function ledgerJson(ledger: Ledger): string {
  return `${JSON.stringify(ledger, null, 1)}\n`;
}

function hashOf(value: unknown): string {
  return sha256(new TextEncoder().encode(JSON.stringify(sorted(value))));
}

/** The same value with keys in alphabetical order: their order in a file is no change. */
function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .toSorted(([x], [y]) => (x < y ? -1 : 1))
      .map(([key, own]) => [key, sorted(own)]),
  );
}
