import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { ReportWork } from './reportWorker.ts';

/** Fewer than these are worked out sooner than a worker has started. */
export const fewReports = 4;

/** Reports for one worker: it is then replaced, since the renderer of pictures gives memory back at its end only. */
const mostReports = 250;

const workerFile = new URL('./reportWorker.ts', import.meta.url);

/**
 * Works reports out into the caches, as many at a time as there are processors. What a worker fails at is left out of
 * the cache, and fails again where it can be told.
 */
export async function workOutReports({ slugs, ...work }: ReportWork, onDone: () => void): Promise<void> {
  const workers = Math.min(availableParallelism(), Math.ceil(slugs.length / fewReports));
  const size = Math.min(mostReports, Math.ceil(slugs.length / workers));
  const batches = Array.from({ length: Math.ceil(slugs.length / size) }, (_, index) =>
    slugs.slice(index * size, (index + 1) * size),
  );
  const next = async (): Promise<void> => {
    for (let batch = batches.shift(); batch !== undefined; batch = batches.shift())
      await inWorker({ ...work, slugs: batch }, onDone);
  };
  await Promise.all(Array.from({ length: workers }, next));
}

function inWorker(work: ReportWork, onDone: () => void): Promise<void> {
  return new Promise((resolve) => {
    const worker = new Worker(workerFile, { workerData: work });
    worker.on('message', onDone);
    worker.on('error', () => resolve());
    worker.on('exit', () => resolve());
  });
}
