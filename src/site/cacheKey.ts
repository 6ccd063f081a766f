import type { Ledger } from '../intake/ledger.ts';
import type { Report } from '../kit/report.ts';
import { sha256, type ContentFolder } from './contentFiles.ts';
import { sizeLimit } from './sizeLimits.ts';

/** What all reports of a content folder hang on, besides their own files. */
interface SharedKey {
  /** Hash of the code, see `codeHash`. */
  readonly code: string;
  /** Of the shop's answers and of its logos. */
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
  const text = folder.text(`${own}/report.md`).content ?? '';
  const told = plain(text);
  const files = folder.everything(own)?.map((path) => fileKey(folder, path, told));
  if (files === undefined || files.some(({ key }) => key === null)) return null;
  const { code, shop, sheets, ledger } = shared;
  // Under its name of now, or an older one that its text tells; where that might be written otherwise, all.
  const isOwn = (entry: { readonly slug: string }): boolean =>
    entry.slug === slug || told.includes(plain(entry.slug)) || isEscaped(told);
  return hashOf([
    code,
    slug,
    files.map(({ path, key }) => [path, key]),
    shop,
    sheetsOf(text, sheets),
    ledger?.plans.filter(isOwn) ?? null,
    ledger?.reports.filter(isOwn) ?? null,
  ]);
}

/** Endings of what a report may be made of without its name standing in the text as the disk has it. */
const usual = /\.(?:md|csv|ya?ml|html|png|jpe?g|webp|avif|gif|svg)$/i;

/**
 * A file by what it holds where the report may be made of it, else by its size: a video beside a report is no part of
 * it, and would take long to read. Nor is what is larger than any file that is read.
 *
 * @param told the text of the report, `plain`
 */
function fileKey(
  folder: ContentFolder,
  path: string,
  told: string,
): { readonly path: string; readonly key: string | number | null } {
  const size = folder.size(path);
  const isNamed = told.includes(plain(path.slice(path.lastIndexOf('/') + 1)));
  const mayBePart = usual.test(path) || isNamed || isEscaped(told);
  if (size === null || size > sizeLimit(path).most || !mayBePart) return { path, key: size };
  // What the text names is read anyway; the rest goes by in pieces.
  if (!isNamed && !path.endsWith('/report.md')) return { path, key: folder.hash(path) };
  const { content } = folder.bytes(path);
  return { path, key: content === null ? null : sha256(content) };
}

/** However letters with accents and blanks are written. */
const plain = (text: string): string => text.normalize('NFC').replace(/\s+/g, ' ');

/** Whether a name in the text might be written otherwise than the disk has it. */
const isEscaped = (text: string): boolean => text.includes('\\') || text.includes("''");

/** The sheets whose id stands in the text; all where an id might be written with an escape. */
function sheetsOf(text: string, sheets: ReadonlyMap<string, string>): readonly (readonly [string, string])[] {
  return [...sheets].filter(([id]) => text.includes('\\') || text.includes(id));
}

/** By this a build knows whether a page is as it was; absent where that cannot be told. */
export interface PageKey {
  readonly cacheKey?: string;
}

/** A page: the names in its address, and what it is made of. */
export interface PagePath<Name extends string, Props> extends PageKey {
  readonly params: Readonly<Record<Name, string>>;
  readonly props: Props;
}

/** The key of a page from those of all reports that it shows, and whatever else it prints. */
export function pageKey(reports: readonly Pick<Report, 'key'>[], ...more: readonly string[]): PageKey {
  const keys = reports.map(({ key }) => key);
  return keys.includes(null) ? {} : { cacheKey: hashOf([keys, more]) };
}

/** SHA-256 of a value as JSON, in hexadecimal digits. */
export function hashOf(value: unknown): string {
  return sha256(new TextEncoder().encode(JSON.stringify(value)));
}
