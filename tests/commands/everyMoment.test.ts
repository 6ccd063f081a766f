import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { draftCommand } from '../../src/commands/draft/draftCommand.ts';
import { planCommand } from '../../src/commands/plan/planCommand.ts';
import { recordLedger } from '../../src/commands/recordLedger.ts';
import { realDisk, type Disk } from '../../src/commands/writing/disk.ts';
import { readLedger, type Ledger } from '../../src/intake/ledger.ts';
import { checkedSite } from '../../src/site/checkedSite.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from './contentFolder.ts';
import { failingDisk, Killed, type Failure } from './failingDisk.ts';
import { listen } from './listen.ts';

const today = '2026-05-01';

interface Run {
  readonly ok: boolean;
  readonly said: string;
}

async function plan(contentDir: string, slug: string, disk: Disk = realDisk, day = today): Promise<Run> {
  const { terminal, said } = listen();
  const options = {
    contender: ['Alder', 'Birch'],
    varied: 'head',
    club: 'driver',
    hitter: 'staff fitter',
    shots: '12',
    slug,
  };
  const status = await planCommand({ contentDir, options, asker: null, today: day, terminal, disk });
  return { ok: status === 0, said: said() };
}

function draft(contentDir: string, disk: Disk = realDisk): Run {
  const { terminal, said } = listen();
  const typed = { contentDir, paths: [], slug: null, dryRun: false, json: false, terminal, disk };
  return { ok: draftCommand(typed) === 0, said: said() };
}

function draftWithWarmUps(contentDir: string, disk: Disk = realDisk): Run {
  const { terminal, said } = listen();
  const paths = [join(contentDir, 'inbox/export.csv')];
  const typed = { contentDir, paths, slug: 'first', warmUps: '10', dryRun: false, json: false };
  return { ok: draftCommand({ ...typed, terminal, disk }) === 0, said: said() };
}

function record(contentDir: string, disk: Disk = realDisk): Run {
  const { terminal, said } = listen();
  return { ok: recordLedger({ contentDir, today, terminal, disk }), said: said() };
}

function ledgerIn(content: string): Ledger {
  const { ledger, problems } = readLedger('ledger.json', readFileSync(join(content, 'ledger.json'), 'utf8'));
  if (ledger === null) throw new Error(JSON.stringify(problems));
  return ledger;
}

const planned = (content: string): readonly string[] => ledgerIn(content).plans.map(({ slug }) => slug);

/** Bytes of every file by its path, locks and half-written ones apart. */
function filesIn(content: string): Readonly<Record<string, string>> {
  return Object.fromEntries(
    readdirSync(content, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .filter((file) => !file.includes('.straightface-'))
      .sort()
      .map((file) => [relative(content, file), readFileSync(file, 'latin1')]),
  );
}

const leftovers = (content: string): readonly string[] =>
  readdirSync(content, { recursive: true, encoding: 'utf8' }).filter((path) =>
    path.includes('.straightface-'),
  );

const errorsIn = (content: string): readonly string[] =>
  checkedSite(content)
    .problems.filter(({ severity, kind }) => severity === 'error' && kind !== 'no-reports')
    .map(({ kind, file }) => `${kind} ${file}`);

/** Twenty-four shots by number alone, `before` swings before them. */
const numbered = (before: number): string =>
  [
    'Shot,Carry (yd)',
    ...Array.from({ length: 24 + before }, (_, i) => `${i + 1},${230 + ((i * 37) % 23) - 11}`),
    '',
  ].join('\n');

interface Scenario {
  readonly name: string;
  /** The content folder of before. */
  readonly make: () => Promise<string>;
  readonly run: (content: string, disk?: Disk) => Run | Promise<Run>;
  /** What a person does after a command that was killed or has failed, until all is right. */
  readonly next: (content: string) => void | Promise<void>;
  /** How many files, sheets and entries there are when all is right. */
  readonly steps: number;
}

const withTwoPlans = async (files: Readonly<Record<string, string>> = {}): Promise<string> => {
  const content = contentFolder({ 'shop.yaml': shop, ...files });
  for (const slug of ['first', 'second']) {
    const run = await plan(content, slug, realDisk, '2026-04-01');
    expect(run.ok, run.said).toBe(true);
  }
  return content;
};

const scenarios: readonly Scenario[] = [
  {
    name: 'plan',
    make: () => withTwoPlans(),
    run: (content, disk) => plan(content, 'third', disk),
    next: async (content) => {
      await plan(content, 'third');
    },
    steps: 40,
  },
  {
    name: 'draft',
    make: async () => contentFolder({ 'shop.yaml': shop, 'inbox/two.csv': twoHeadsCsv }),
    run: draft,
    next: (content) => void draft(content),
    steps: 30,
  },
  {
    name: 'draft of a planned test, with warm-up swings',
    make: () => withTwoPlans({ 'inbox/export.csv': numbered(10) }),
    run: draftWithWarmUps,
    next: (content) => {
      if (existsSync(join(content, 'inbox/export.csv'))) draftWithWarmUps(content);
      // The report has its session, and the file waits still.
      draft(content);
    },
    steps: 40,
  },
  {
    name: 'record',
    make: async () => {
      const withPlan = (front: string): string =>
        front.replace(
          'status: published',
          'plan: {date: 2026-04-20, stopping_rule: six each}\nstatus: draft',
        );
      return withTwoPlans({ 'reports/third/report.md': twoHeads(withPlan) });
    },
    run: record,
    next: (content) => void record(content),
    steps: 15,
  },
];

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
    for (let step = 1; step <= steps; step += stride) {
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
