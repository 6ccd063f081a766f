import { join } from 'node:path';
import { draftReport } from '../../intake/draft/draftReport.ts';
import { fromFileName } from '../../intake/draft/fileName.ts';
import type { OpenColumn } from '../../intake/draft/openColumns.ts';
import type { PersonName } from '../../intake/privacy/hitterNames.ts';
import type { Shop } from '../../intake/authored/shop.ts';
import { usualGap } from '../../prose/usualGap.ts';
import type { Disk } from '../writing/disk.ts';
import { writeEditorSchemas } from '../writing/editorSchemas.ts';
import { FolderTaken, prepareFolder } from '../writing/wholeFolder.ts';
import type { NamedBytes, SessionRead } from './readSession.ts';

interface Draft {
  readonly contentDir: string;
  readonly slug: string;
  /** Under the names they get beside the report. */
  readonly files: readonly NamedBytes[];
  /** Whom the title must not name. */
  readonly people: readonly PersonName[];
  readonly read: SessionRead & { readonly openColumns: readonly OpenColumn[] };
  readonly shop: Shop | null;
}

/**
 * Writes a new folder `reports/<slug>/` with the files byte for byte and a drafted `report.md`, all at once. Nothing is
 * left of it where the folder is there already, or where the disk refuses.
 *
 * @throws errors of the disk
 */
export function writeDraft(
  disk: Disk,
  { contentDir, slug, files, people, read, shop }: Draft,
): 'written' | 'taken' {
  const told = files.map(({ name }) => fromFileName(name, people));
  const text = draftReport({
    slug,
    title: [...new Set(told.map(({ title }) => title))].join(', '),
    dateInName: told.find(({ date }) => date !== null)?.date ?? null,
    varied: read.varied,
    session: files.map(({ name }) => name),
    understood: read.understood,
    openColumns: read.openColumns,
    usualGap: (own) => usualGap(own, shop?.defaults.units ?? 'yards'),
    shop,
  });
  const folder = prepareFolder(disk, join(contentDir, 'reports', slug), {
    ...Object.fromEntries(files.map(({ name, bytes }) => [name, bytes])),
    'report.md': text,
  });
  try {
    folder.put();
    writeEditorSchemas(contentDir, disk);
    return 'written';
  } catch (error) {
    if (error instanceof FolderTaken) return 'taken';
    throw error;
  } finally {
    folder.discard();
  }
}
