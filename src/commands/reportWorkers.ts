import { availableParallelism } from 'node:os';
import { pathToFileURL } from 'node:url';
import Tinypool from 'tinypool';
import type { ReportPlaces, ReportTask } from './reportWorker.ts';
import type { WrittenPage } from './rendering/writePages.ts';
import { moduleFile } from './ownCode.ts';
import { readCode } from './readCode.ts';
import { ReportsFailed, type FailedReport } from './reportsFailed.ts';

/** Fewer than these are worked out sooner than a worker has started. */
export const fewReports = 4;

/** Tasks for one worker: it is then replaced, since the renderer of pictures gives memory back at its end only. */
const mostTasks = 250;

const workerFile = pathToFileURL(moduleFile('commands/reportWorker.ts'));

/** What each report's task has written. */
export type Done = ReadonlyMap<string, readonly WrittenPage[]>;

export interface ReportWorkers {
  /**
   * Does tasks, as many at a time as there are processors, and tells of each when it is done. Rejects with
   * `ReportsFailed`, all of them together in the order given, when the others are done.
   */
  readonly run: (tasks: readonly ReportTask[], onDone: () => void) => Promise<Done>;
  readonly close: () => Promise<void>;
}

/** Workers that start with the first tasks and stay ready for more until they are closed. */
export function reportWorkers(places: ReportPlaces, file: URL = workerFile): ReportWorkers {
  let pool: Tinypool | null = null;
  const opened = async (): Promise<Tinypool> => {
    // What cannot be loaded here no worker can load, and of workers that cannot start the pool tells nothing of use.
    await import(file.href);
    const workers = availableParallelism();
    return new Tinypool({
      filename: file.href,
      minThreads: workers,
      maxThreads: workers,
      workerData: places,
      // A worker starts in half the time where it need not read all code anew.
      env: { ...process.env, NODE_COMPILE_CACHE: readCode },
      // Else a worker waits without its event loop, and the renderer of pictures frees its buffers there only.
      useAtomics: false,
    });
  };
  return {
    run: async (tasks, onDone) => {
      pool ??= await opened();
      const done = new Map<string, readonly WrittenPage[]>();
      const failed: FailedReport[] = [];
      const atOnce = availableParallelism() * mostTasks;
      for (let from = 0; from < tasks.length; from += atOnce) {
        if (from > 0) await pool.recycleWorkers();
        failed.push(...(await inPool(pool, tasks.slice(from, from + atOnce), done, onDone)));
      }
      if (failed.length === 0) return done;
      const place = new Map(tasks.map(({ slug }, index) => [slug, index]));
      throw new ReportsFailed(
        failed.toSorted((x, y) => (place.get(x.slug) ?? Infinity) - (place.get(y.slug) ?? Infinity)),
      );
    },
    close: async () => {
      await pool?.destroy();
      pool = null;
    },
  };
}

async function inPool(
  pool: Tinypool,
  tasks: readonly ReportTask[],
  done: Map<string, readonly WrittenPage[]>,
  onDone: () => void,
): Promise<readonly FailedReport[]> {
  const failed: FailedReport[] = [];
  const all = tasks.map(async (task) => {
    try {
      const written: readonly WrittenPage[] = await pool.run(task);
      done.set(task.slug, written);
      onDone();
    } catch (error) {
      failed.push({ slug: task.slug, error });
    }
  });
  // Workers that cannot even start are told by the pool alone, each of them.
  const broken = new Promise<never>((_, reject) => pool.on('error', reject));
  await Promise.race([Promise.all(all), broken]);
  return failed;
}
