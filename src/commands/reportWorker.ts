import Tinypool from 'tinypool';
import { picturesOf } from '../kit/picturesOf.ts';
import { exportedPng } from '../site/exportedFiles.ts';
import { openContent, type OpenContent } from '../site/openContent.ts';
import { diskCache } from '../site/reportCache.ts';
import { isShown } from '../site/shown.ts';

/** What workers are to do: some reports of a content folder, worked out into the cache. */
export interface ReportWork {
  readonly contentDir: string;
  readonly slugs: readonly string[];
  readonly reportFolder: string;
  readonly code: string;
}

let opened: OpenContent | null = null;

/** The content folder, read once by each worker. */
function content(): OpenContent {
  const { contentDir, slugs, reportFolder, code }: ReportWork = Tinypool.workerData;
  opened ??= openContent(contentDir, slugs, { cache: diskCache(reportFolder), code });
  return opened;
}

/** Works one report out. */
export default async function workOut(slug: string): Promise<void> {
  const { report } = content().load(slug);
  if (report === null || !isShown(report)) return;
  for (const picture of picturesOf(report))
    if (picture.endings.includes('png')) await exportedPng(report, picture);
}
