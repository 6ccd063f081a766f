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

/** Processor time in ms since the worker began, by stage; sent after each report. */
export interface ReportDone {
  readonly analysis: number;
  readonly rasters: number;
}

async function workOut({ contentDir, slugs, reportFolder, code }: ReportWork): Promise<void> {
  const content = openContent(contentDir, slugs, { cache: diskCache(reportFolder), code });
  for (const slug of content.slugs) {
    const start = performance.now();
    const { report } = content.load(slug);
    const analysed = performance.now();
    const offered = report === null || !isShown(report) ? [] : kitOf(report).offered;
    if (report !== null) {
      for (const { figure } of offered) await cachedPng(exportedSvg(report, figure, version), rasterWidth);
    }
    const done: ReportDone = { analysis: analysed - start, rasters: performance.now() - analysed };
    parentPort?.postMessage(done);
  }
}

const work: ReportWork = workerData;
await workOut(work);
