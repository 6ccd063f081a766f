import { availableParallelism } from 'node:os';
import Tinypool from 'tinypool';
import type { ReportWork } from './reportWorker.ts';
import { ReportsFailed, type FailedReport } from './reportsFailed.ts';

/** Fewer than these are worked out sooner than a worker has started. */
export const fewReports = 4;

/** Reports for one worker: it is then replaced, since the renderer of pictures gives memory back at its end only. */
const mostReports = 250;

const workerFile = new URL('./reportWorker.ts', import.meta.url);

/**
 * Works reports out into the caches, as many at a time as there are processors, and tells of each when it is done.
 * Rejects with `ReportsFailed`, all of them together in the order given, when the others are done.
 */
export async function workOutReports(
  work: ReportWork,
  onDone: () => void,
  file: URL = workerFile,
): Promise<void> {
  // What cannot be loaded here no worker can load, and of workers that cannot start the pool tells nothing of use.
  await import(file.href);
  const workers = Math.min(availableParallelism(), Math.ceil(work.slugs.length / fewReports));
  const atOnce = workers * mostReports;
  const failed: FailedReport[] = [];
  for (let from = 0; from < work.slugs.length; from += atOnce) {
    const slugs = work.slugs.slice(from, from + atOnce);
    failed.push(...(await inWorkers({ ...work, slugs }, workers, onDone, file)));
  }
  if (failed.length === 0) return;
  const place = new Map(work.slugs.map((slug, index) => [slug, index]));
  throw new ReportsFailed(
    failed.toSorted((x, y) => (place.get(x.slug) ?? Infinity) - (place.get(y.slug) ?? Infinity)),
  );
}

async function inWorkers(
  work: ReportWork,
  workers: number,
  onDone: () => void,
  file: URL,
): Promise<readonly FailedReport[]> {
  const pool = new Tinypool({
    filename: file.href,
    minThreads: workers,
    maxThreads: workers,
    workerData: work,
    // Else a worker waits without its event loop, and the renderer of pictures frees its buffers there only.
    useAtomics: false,
  });
  try {
    const failed: FailedReport[] = [];
    const all = work.slugs.map(async (slug) => {
      try {
        await pool.run(slug);
        onDone();
      } catch (error) {
        failed.push({ slug, error });
      }
    });
    // Workers that cannot even start are told by the pool alone, each of them.
    const broken = new Promise<never>((_, reject) => pool.on('error', reject));
    await Promise.race([Promise.all(all), broken]);
    return failed;
  } finally {
    await pool.destroy();
  }
}
