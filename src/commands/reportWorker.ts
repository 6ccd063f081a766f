import { parentPort, workerData } from 'node:worker_threads';
import { exportedSvg, rasterWidth } from '../kit/exportedSvg.ts';
import { kitOf } from '../kit/kitOf.ts';
import { openContent } from '../site/openContent.ts';
import { cachedPng } from '../site/rasters.ts';
import { diskCache } from '../site/reportCache.ts';
import { isShown } from '../site/shown.ts';
import { version } from '../site/version.ts';

/** What a worker is to do: some reports of a content folder, worked out into the cache. */
export interface ReportWork {
  readonly contentDir: string;
  readonly slugs: readonly string[];
  readonly reportFolder: string;
  readonly code: string;
}

/** Says the slug of each report when it is done. */
async function workOut({ contentDir, slugs, reportFolder, code }: ReportWork): Promise<void> {
  const content = openContent(contentDir, slugs, { cache: diskCache(reportFolder), code });
  for (const slug of content.slugs) {
    const { report } = content.load(slug);
    if (report !== null && isShown(report)) {
      for (const { figure } of kitOf(report).offered)
        await cachedPng(exportedSvg(report, figure, version), rasterWidth);
    }
    parentPort?.postMessage(slug);
  }
}

const work: ReportWork = workerData;
await workOut(work);
