import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { draftReport } from '../../intake/draft/draftReport.ts';
import { fromFileName } from '../../intake/draft/fileName.ts';
import type { OpenColumn } from '../../intake/draft/openColumns.ts';
import type { Shop } from '../../intake/authored/shop.ts';
import type { NamedBytes, SessionRead } from './readSession.ts';

interface Draft {
  readonly contentDir: string;
  readonly slug: string;
  /** Under the names they get beside the report. */
  readonly files: readonly NamedBytes[];
  readonly read: SessionRead;
  readonly openColumns: readonly OpenColumn[];
  readonly shop: Shop | null;
}

/**
 * Writes a new folder `reports/<slug>/` with the files byte for byte and a drafted `report.md`. False, and nothing
 * written, where the folder is there already.
 */
export function writeDraft({ contentDir, slug, files, read, openColumns, shop }: Draft): boolean {
  const { title, date } = fromFileName(files[0]?.name ?? '');
  const text = draftReport({
    slug,
    title,
    dateInName: date,
    varied: read.varied,
    session: files.map(({ name }) => name),
    understood: read.understood,
    openColumns,
    shop,
  });
  const reports = join(contentDir, 'reports');
  const folder = join(reports, slug);
  mkdirSync(reports, { recursive: true });
  // Not looked up beforehand: whoever makes the folder first has it.
  try {
    mkdirSync(folder);
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EEXIST') return false;
    throw error;
  }
  try {
    for (const { name, bytes } of files) writeFileSync(join(folder, name), bytes, { flag: 'wx' });
    writeFileSync(join(folder, 'report.md'), text, { flag: 'wx' });
  } catch (error) {
    rmSync(folder, { recursive: true, force: true });
    throw error;
  }
  return true;
}
