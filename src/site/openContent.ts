import type { PlaceOf } from '../intake/authored/places.ts';
import { readReport } from '../intake/authored/readReport.ts';
import type { Ledger } from '../intake/ledger.ts';
import { reportKey } from './cacheKey.ts';
import { logosOf, type Brand } from './brand/brand.ts';
import { composedNames } from './composedNames.ts';
import { openContentFolder, sha256, type ContentFolder } from './contentFiles.ts';
import { ledgerOf } from './ledger.ts';
import { makeReport, type MadeReport } from './makeReport.ts';
import { rememberedFiles } from './rememberedFiles.ts';
import type { ReportCache } from './reportCache.ts';
import { listContent, type ContentList } from './contentList.ts';
import { shopFile } from './sharedFiles.ts';
import { readWritten } from './writtenReport.ts';

/** Where reports that were worked out before are kept, and the hash of the code that worked them out. */
export interface Cached {
  readonly cache: ReportCache;
  readonly code: string;
}

export interface LoadedReport extends MadeReport {
  readonly slug: string;
  /** A draft with answers still to be given: it does not keep the others from being published. */
  readonly unfinished: boolean;
}

/** A content folder whose reports are taken from the cache where they are in it, and worked out where not. */
export interface OpenContent extends ContentList {
  /** What was planned, published and said before; null where the shop keeps no ledger. */
  readonly ledger: Ledger | null;
  /** Whether a report need not be worked out. */
  readonly isKnown: (slug: string) => boolean;
  readonly load: (slug: string) => LoadedReport;
}

export function openContent(root: string, only: readonly string[], cached: Cached | null): OpenContent {
  const folder = rememberedFiles(composedNames(openContentFolder(root)));
  const list = listContent(folder, only);
  const { ledger, problems: ledgerProblems } = ledgerOf(folder);
  const shared = cached === null ? null : { code: cached.code, ...sharedHashes(folder, list.brand), ledger };
  const keyOf = (slug: string): string | null => (shared === null ? null : reportKey(folder, slug, shared));
  return {
    ...list,
    problems: [...list.problems, ...ledgerProblems],
    ledger,
    isKnown: (slug) => {
      const key = keyOf(slug);
      return key !== null && cached !== null && cached.cache.has(key);
    },
    load: (slug) => {
      const key = keyOf(slug);
      const around = { shop: list.shared.shop, placeOf: placesIn(folder, slug) };
      const known = key === null ? null : (cached?.cache.read(key, around) ?? null);
      if (known !== null) return { slug, unfinished: false, report: known, problems: known.problems };
      const written = readWritten(folder, slug, list.shared);
      const made = { slug, unfinished: written.unfinished, ...makeReport(written, ledger, key) };
      if (key === null || cached === null || made.report === null) return made;
      cached.cache.write(key, made.report);
      // As every later build will have it, and without its drawings in memory.
      return { ...made, report: cached.cache.read(key, around) ?? made.report };
    },
  };
}

function sharedHashes(
  folder: ContentFolder,
  brand: Brand,
): {
  readonly shop: string;
  readonly sheets: ReadonlyMap<string, string>;
} {
  const hash = (path: string): string | null => {
    const { content } = folder.bytes(path);
    return content === null ? null : sha256(content);
  };
  return {
    // With the logos, which every page shows; their names are those of what they hold.
    shop: JSON.stringify([hash(shopFile), logosOf(brand).map(({ name }) => name)]),
    sheets: new Map(
      folder
        .files('contenders')
        .map(
          (name) => [name.replace(/\.ya?ml$/i, ''), `${name} ${hash(`contenders/${name}`) ?? ''}`] as const,
        ),
    ),
  };
}

/** Places in the front matter of a report; it is read for them only when one is asked for. */
function placesIn(folder: ContentFolder, slug: string): PlaceOf {
  const file = `reports/${slug}/report.md`;
  let known: PlaceOf | null = null;
  return (path, part) => {
    known ??= readReport(file, folder.text(file).content ?? '').placeOf;
    return known(path, part);
  };
}
