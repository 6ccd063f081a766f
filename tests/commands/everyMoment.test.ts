import { cpSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { isEveryday } from '../everyday.ts';
import { failingDisk, Killed, type Failure } from './failingDisk.ts';
import { errorsIn, filesIn, leftovers, planned, scenarios, type Scenario } from './writingScenarios.ts';

describe.each(scenarios)('$name', ({ make, run, next, steps: fewest }) => {
  let template = '';
  let whole: Readonly<Record<string, string>> = {};
  let steps = 0;
  const copy = (): string => {
    const content = mkdtempSync(join(tmpdir(), 'straightface-moment-'));
    cpSync(template, content, { recursive: true });
    return content;
  };

  beforeAll(async () => {
    template = await make();
    const content = copy();
    const counted = failingDisk(Infinity, 'killed');
    const { ok, said } = await run(content, counted.disk);
    expect(ok, said).toBe(true);
    steps = counted.steps();
    whole = filesIn(content);
    expect(whole).not.toEqual(filesIn(template));
    expect(leftovers(content)).toEqual([]);
    expect(steps).toBeGreaterThan(fewest);
  });

  // All steps of the other two take four minutes more, and tell nothing new.
  test.each<[Failure, number]>([
    ['killed', 1],
    ['full', 3],
    ['faulty', 4],
  ])('%s at each step, or each so many: %i', async (failure, stride) => {
    const before = filesIn(template);
    const errorsBefore = [...errorsIn(template)];
    const errorsAfter = [...errorsIn(await finished(copy(), run))];
    for (let step = 1; step <= steps; step += stride * (isEveryday ? 24 : 1)) {
      const content = copy();
      const { disk } = failingDisk(step, failure);
      const ended = await Promise.resolve()
        .then(() => run(content, disk))
        .catch((error: unknown) => {
          if (error instanceof Killed) return null;
          throw error;
        });
      const where = `${failure} at step ${step}`;
      // A fault in what need not succeed is no fault of the command.
      if (failure === 'killed') expect(ended, where).toBeNull();
      else if (ended?.ok === false)
        expect(ended.said, where).toMatch(/\((?:ENOSPC|EIO)\)|stays in the inbox/);
      const now = filesIn(content);
      const lost = Object.keys(before).filter((path) => ![before[path], whole[path]].includes(now[path]));
      expect(lost, where).toEqual([]);
      if ('ledger.json' in before)
        expect(planned(content), where).toEqual(expect.arrayContaining([...planned(template)]));
      if (failure !== 'killed' && ended?.ok === false) expect(leftovers(content), where).toEqual([]);
      // Whatever the moment, readers see nothing worse than before or after.
      const errors = errorsIn(content);
      expect(
        [errorsBefore, errorsAfter].some((known) => errors.every((error) => known.includes(error))),
        `${where}: ${errors.join(', ')}`,
      ).toBe(true);
      await next(content);
      expect(filesIn(content), where).toEqual(whole);
      expect(leftovers(content), where).toEqual([]);
    }
  });
});

async function finished(content: string, run: Scenario['run']): Promise<string> {
  await run(content);
  return content;
}
