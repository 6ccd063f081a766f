import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, test } from 'vitest';
import { ReportsFailed } from '../../src/commands/reportsFailed.ts';
import { reportWorkers } from '../../src/commands/reportWorkers.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from './contentFolder.ts';

const five = ['alder', 'birch', 'cedar', 'damson', 'elder'];

async function workedOut(slugs: readonly string[], worker?: string) {
  const reportFolder = join(contentFolder({}), 'reports');
  const contentDir = contentFolder({
    'shop.yaml': shop,
    ...Object.fromEntries(
      five.flatMap((slug) => [
        [`reports/${slug}/report.md`, twoHeads((front) => front.replace('Two heads', slug))],
        [`reports/${slug}/shots.csv`, twoHeadsCsv],
      ]),
    ),
  });
  const file = worker === undefined ? undefined : new URL(`./workers/${worker}.ts`, import.meta.url);
  const workers = reportWorkers({ contentDir, reportFolder, code: 'x' }, file);
  let done = 0;
  const tasks = slugs.map((slug) => ({ slug, pages: null }));
  const failure: unknown = await workers
    .run(tasks, () => (done += 1))
    .then(
      () => null,
      (error: unknown) => error,
    );
  await workers.close();
  return { done, failure, reportFolder };
}

beforeEach(() => {
  process.env['CACHE_DIR'] = contentFolder({});
});

describe('reports are worked out by workers', () => {
  test('into the caches, each told when it is done', async () => {
    const { done, failure, reportFolder } = await workedOut(['alder', 'birch']);
    expect([failure, done]).toEqual([null, 2]);
    expect(readdirSync(reportFolder).length).toBeGreaterThanOrEqual(2);
  });

  test('what fails is told by its name with its error, and the others are done', async () => {
    const { done, failure } = await workedOut(['alder', 'unwell-1', 'birch', 'unwell-2', 'cedar'], 'failing');
    expect(failure).toBeInstanceOf(ReportsFailed);
    expect(done).toBe(3);
    expect(failure).toMatchObject({
      failed: [
        { slug: 'unwell-1', error: { name: 'TypeError', message: 'unwell-1 is not a function' } },
        { slug: 'unwell-2', error: { name: 'TypeError', message: 'unwell-2 is not a function' } },
      ],
    });
  });

  test('a worker that dies takes one report with it, and the others are done', async () => {
    const { done, failure } = await workedOut(['alder', 'astray', 'birch', 'cedar', 'damson'], 'failing');
    expect(failure).toMatchObject({
      failed: [{ slug: 'astray', error: { message: 'astray went astray' } }],
    });
    expect(done).toBe(4);
  });

  test('workers that cannot start do not leave anybody waiting', async () => {
    const { done, failure } = await workedOut(five, 'broken');
    expect([done, failure]).toEqual([0, expect.objectContaining({ message: expect.any(String) })]);
    const words =
      failure instanceof ReportsFailed ? failure.failed.map(({ error }) => String(error)) : [String(failure)];
    expect(words.join()).toContain('this worker cannot start');
  });
});
