import type { Ledger } from '../intake/ledger.ts';
import type { Report } from '../kit/report.ts';
import { sha256, type ContentFolder } from './contentFiles.ts';

/** What all reports of a content folder hang on, besides their own files. */
export interface SharedKey {
  /** Hash of the code, see `codeHash`. */
  readonly code: string;
  readonly shop: string | null;
  /** Hash of each build sheet by its id. */
  readonly sheets: ReadonlyMap<string, string>;
  readonly ledger: Ledger | null;
}

/**
 * A name for everything a report is made from: it changes whenever any of it does. Null where that cannot be told, as
 * when a link in the folder leads elsewhere.
 */
export function reportKey(folder: ContentFolder, slug: string, shared: SharedKey): string | null {
  const own = `reports/${slug}`;
  const files = folder.everything(own).map((path) => {
    const bytes = folder.bytes(path);
    return [path, bytes === null ? null : sha256(bytes)] as const;
  });
  if (files.some(([, hash]) => hash === null)) return null;
  const { code, shop, sheets, ledger } = shared;
  return hashOf([
    code,
    slug,
    files,
    shop,
    sheetsOf(folder.text(`${own}/report.md`) ?? '', sheets),
    ledger?.plans.filter((plan) => plan.slug === slug) ?? null,
    ledger?.reports.filter((report) => report.slug === slug) ?? null,
  ]);
}

/** The sheets whose id stands in the text; all where an id might be written with an escape. */
function sheetsOf(text: string, sheets: ReadonlyMap<string, string>): readonly (readonly [string, string])[] {
  return [...sheets].filter(([id]) => text.includes('\\') || text.includes(id));
}

/** By this a build knows whether a page is as it was; absent where that cannot be told. */
export interface PageKey {
  readonly cacheKey?: string;
}

/** The key of a page from those of all reports that it shows, and whatever else it prints. */
export function pageKey(reports: readonly Pick<Report, 'key'>[], ...more: readonly string[]): PageKey {
  const keys = reports.map(({ key }) => key);
  return keys.includes(null) ? {} : { cacheKey: hashOf([keys, more]) };
}

function hashOf(value: unknown): string {
  return sha256(new TextEncoder().encode(JSON.stringify(value)));
}
