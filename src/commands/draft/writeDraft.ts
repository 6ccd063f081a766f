import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { draftReport } from '../../intake/draft/draftReport.ts';
import { fromFileName } from '../../intake/draft/fileName.ts';
import type { OpenColumn } from '../../intake/draft/openColumns.ts';
import type { PersonName } from '../../intake/privacy/hitterNames.ts';
import type { Shop } from '../../intake/authored/shop.ts';
import { usualGap } from '../usualGap.ts';
import type { NamedBytes, SessionRead } from './readSession.ts';

interface Draft {
  readonly contentDir: string;
  readonly slug: string;
  /** Under the names they get beside the report. */
  readonly files: readonly NamedBytes[];
  /** Whom the title must not name. */
  readonly people: readonly PersonName[];
  readonly read: SessionRead;
  readonly openColumns: readonly OpenColumn[];
  readonly shop: Shop | null;
}

/** What became of a draft; `failed` says why in the words of the system. */
export type Written = 'written' | 'taken' | { readonly failed: string };

/**
 * Writes a new folder `reports/<slug>/` with the files byte for byte and a drafted `report.md`. Nothing is left
 * of it where the folder is there already, or where the disk refuses.
 */
export function writeDraft({ contentDir, slug, files, people, read, openColumns, shop }: Draft): Written {
  const told = files.map(({ name }) => fromFileName(name, people));
  const text = draftReport({
    slug,
    title: [...new Set(told.map(({ title }) => title))].join(', '),
    dateInName: told.find(({ date }) => date !== null)?.date ?? null,
    varied: read.varied,
    session: files.map(({ name }) => name),
    understood: read.understood,
    openColumns,
    usualGap: (own) => usualGap(own, shop?.defaults.units ?? 'yards'),
    shop,
  });
  const folder = join(contentDir, 'reports', slug);
  // Not looked up beforehand: whoever makes the folder first has it.
  try {
    mkdirSync(dirname(folder), { recursive: true });
    mkdirSync(folder);
  } catch (error) {
    return errorCode(error) === 'EEXIST' ? 'taken' : { failed: words(error) };
  }
  try {
    for (const { name, bytes } of files) writeFileSync(join(folder, name), bytes, { flag: 'wx' });
    writeFileSync(join(folder, 'report.md'), text, { flag: 'wx' });
  } catch (error) {
    rmSync(folder, { recursive: true, force: true });
    return { failed: words(error) };
  }
  return 'written';
}

const errorCode = (error: unknown): unknown =>
  error instanceof Error && 'code' in error ? error.code : undefined;

const words = (error: unknown): string => (error instanceof Error ? error.message : String(error));
