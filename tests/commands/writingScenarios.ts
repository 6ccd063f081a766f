import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { draftCommand } from '../../src/commands/draft/draftCommand.ts';
import { initCommand } from '../../src/commands/init/initCommand.ts';
import { localDate } from '../../src/commands/localDate.ts';
import { planCommand } from '../../src/commands/plan/planCommand.ts';
import { recordLedger } from '../../src/commands/recordLedger.ts';
import { realDisk, type Disk } from '../../src/commands/writing/disk.ts';
import { readLedger, type Ledger } from '../../src/intake/ledger.ts';
import { checkedSite } from '../../src/site/checkedSite.ts';
import { currentStamp } from '../../src/site/keptVersions.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from './contentFolder.ts';
import { listen } from './listen.ts';

/** As of the commands that the bench starts: what they write is compared with what is written here. */
const today = localDate(new Date());

export interface Run {
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
  const status = await planCommand({
    contentDir,
    options,
    asker: null,
    today: day,
    time: '09:00',
    terminal,
    disk,
  });
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

function record(contentDir: string, disk: Disk = realDisk, outDir?: string): Run {
  const { terminal, said } = listen();
  const built = outDir === undefined ? {} : { outDir };
  return { ok: recordLedger({ contentDir, today, terminal, disk, ...built }), said: said() };
}

function init(folder: string, disk: Disk = realDisk): Run {
  const { terminal, said } = listen();
  return { ok: initCommand({ folder, named: folder, from: null, terminal, disk }) === 0, said: said() };
}

let site: string | null = null;

/** The folder of a built site that holds one report. */
function builtSite(): string {
  site ??= mkdtempSync(join(tmpdir(), 'straightface-built-'));
  mkdirSync(join(site, 'reports/third'), { recursive: true });
  return site;
}

function ledgerIn(content: string): Ledger {
  const { ledger, problems } = readLedger('ledger.json', readFileSync(join(content, 'ledger.json'), 'utf8'));
  if (ledger === null) throw new Error(JSON.stringify(problems));
  return ledger;
}

export const planned = (content: string): readonly string[] =>
  ledgerIn(content).plans.map(({ slug }) => slug);

/**
 * Bytes of every file by its path, locks and half-written ones apart, and schemas, which are no content: whatever drafts
 * next writes them.
 */
export function filesIn(content: string): Readonly<Record<string, string>> {
  return Object.fromEntries(
    readdirSync(content, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .filter((file) => !file.includes('.straightface-') && !file.includes('.schema'))
      .sort()
      .map((file) => [relative(content, file), readFileSync(file, 'latin1')]),
  );
}

export const leftovers = (content: string): readonly string[] =>
  readdirSync(content, { recursive: true, encoding: 'utf8' }).filter((path) =>
    path.includes('.straightface-'),
  );

export const errorsIn = (content: string): readonly string[] =>
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

export interface Scenario {
  readonly name: string;
  /** The content folder of before. */
  readonly make: () => Promise<string>;
  readonly run: (content: string, disk?: Disk) => Run | Promise<Run>;
  /** What a person does after a command that was killed or has failed, until all is right. */
  readonly next: (content: string) => void | Promise<void>;
  /** The command as it is typed, with `CONTENT_DIR` as the folder. */
  readonly typed: (content: string) => readonly string[];
  /** The built site that it reads, as `OUT_DIR`. */
  readonly outDir?: () => string;
  /** It asks more of the disk than so often. */
  readonly steps: number;
}

const withTwoPlans = async (files: Readonly<Record<string, string>> = {}): Promise<string> => {
  const content = contentFolder({ 'shop.yaml': shop, ...files });
  for (const slug of ['first', 'second']) {
    const run = await plan(content, slug, realDisk, '2026-04-01');
    if (!run.ok) throw new Error(run.said);
  }
  return content;
};

export const scenarios: readonly Scenario[] = [
  {
    name: 'plan',
    make: () => withTwoPlans(),
    run: (content, disk) => plan(content, 'third', disk),
    typed: () => [
      ...['plan.ts', '--contender', 'Alder', '--contender', 'Birch', '--varied', 'head', '--club', 'driver'],
      ...['--hitter', 'staff fitter', '--shots', '12', '--slug', 'third', '--yes'],
    ],
    next: async (content) => {
      await plan(content, 'third');
    },
    steps: 40,
  },
  {
    name: 'draft',
    make: async () => contentFolder({ 'shop.yaml': shop, 'inbox/two.csv': twoHeadsCsv }),
    run: draft,
    typed: () => ['draft.ts'],
    next: (content) => void draft(content),
    steps: 30,
  },
  {
    name: 'draft of a planned test, with warm-up swings',
    make: () => withTwoPlans({ 'inbox/export.csv': numbered(10) }),
    run: draftWithWarmUps,
    typed: (content) => [
      'draft.ts',
      '--warm-ups',
      '10',
      '--slug',
      'first',
      join(content, 'inbox/export.csv'),
    ],
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
        front
          .replace('date: 2026-05-02', 'date: 2099-05-02')
          .replace('status: published', 'plan: {date: 2026-04-20, stopping_rule: six each}\nstatus: draft');
      return withTwoPlans({ 'reports/third/report.md': twoHeads(withPlan) });
    },
    run: record,
    typed: () => ['record.ts'],
    next: (content) => void record(content),
    steps: 15,
  },
  {
    name: 'record of a correction, with the version of before',
    make: async () => {
      const content = contentFolder({
        'shop.yaml': shop,
        'reports/third/report.md': twoHeads(),
        'reports/third/shots.csv': twoHeadsCsv,
      });
      const [report] = loadSite(content).reports;
      const stamp = report === undefined ? '' : currentStamp(report.source);
      writeFileSync(
        join(builtSite(), 'reports/third/report.html'),
        `<meta name="straightface-edition" content="${stamp}"><main id="main">Before</main>`,
      );
      record(content);
      const corrected =
        'corrections: [{date: 2026-05-20, what: the title, was: x, now: y}]\nstatus: published';
      writeFileSync(
        join(content, 'reports/third/report.md'),
        twoHeads((front) => front.replace('status: published', corrected)),
      );
      return content;
    },
    outDir: builtSite,
    run: (content, disk) => record(content, disk, builtSite()),
    typed: () => ['record.ts'],
    next: (content) => void record(content, realDisk, builtSite()),
    steps: 20,
  },
  {
    name: 'init, in the folder of a shop',
    make: async () => contentFolder({ 'shop/README.md': 'Ours.' }),
    run: (folder, disk) => init(join(folder, 'shop'), disk),
    typed: (folder) => ['straightface.ts', 'init', join(folder, 'shop')],
    next: (folder) => void init(join(folder, 'shop')),
    steps: 40,
  },
];
