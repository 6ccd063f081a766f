import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Problem } from '../problems/problem.ts';
import { codeHash } from '../site/codeHash.ts';
import { diskTrouble } from '../site/diskTrouble.ts';
import { cacheFolder } from '../site/folders.ts';
import { openContent } from '../site/openContent.ts';
import { checkPageCopies, recordPageCopies } from '../site/pageCopies.ts';
import { diskCache } from '../site/reportCache.ts';
import { loadSite, type SiteContent } from '../site/siteContent.ts';
import { markSite } from '../site/siteMark.ts';
import { isShown } from '../site/shown.ts';
import { prepareEnvironment } from './buildEnvironment.ts';
import { markBuild, unmarkBuild } from './buildMark.ts';
import { collectSooner } from './collectSooner.ts';
import { contentGate, type ReadContent } from './contentGate.ts';
import { openFolders, type OpenFolders } from './openFolders.ts';
import { publishSite } from './publishSite.ts';
import { siteConfig } from './siteConfig.ts';
import { stagesInWords, stageTimes, type StageTime, type StageTimes } from './stageTimes.ts';
import { tellProblems } from './tellProblems.ts';
import type { Terminal } from './terminal.ts';
import { tidyAfter, tidyBefore } from './tidy.ts';
import { newWorkFolder, removeWorkFolder } from './workFolders.ts';
import { fewReports, workOutReports } from './workOutReports.ts';

export interface BuildRequest {
  readonly contentDir: string;
  readonly outDir: string;
  readonly terminal: Terminal;
  /** ISO 8601; null where no clock is asked. */
  readonly today?: string | null;
}

export interface BuildOutcome {
  readonly built: boolean;
  readonly problems: readonly Problem[];
  readonly stages: readonly StageTime[];
}

const projectFolder = resolve(import.meta.dirname, '../..');

/** From so many on, the command says how far it is instead of naming each. */
const manyReports = 20;

/** From so many on, memory counts for more than the last tenth of time. */
const enoughToFillMemory = 200;

/**
 * The main job: checks everything and prints the table; with an error nothing is written. Else the site is built in
 * a folder aside and then published, so that `outDir` always holds a whole site.
 */
export async function buildSite({
  contentDir,
  outDir,
  terminal,
  today = null,
}: BuildRequest): Promise<BuildOutcome> {
  const folders = openFolders({ contentDir, outDir, projectFolder, terminal });
  if (folders === null) return { built: false, problems: [], stages: [] };
  tidyBefore({ outDir: folders.outDir, projectFolder, terminal });
  const times = stageTimes(() => performance.now());
  const site = await readSite({ contentDir, terminal, today }, times);
  if (site.reports.length > enoughToFillMemory) collectSooner();
  if (!tellProblems(site, terminal)) {
    terminal.writeError(asItWas(outDir));
    return { built: false, problems: site.problems, stages: times.stages() };
  }
  terminal.write('Writing the pages.\n');
  try {
    await buildAside({ contentDir, site }, folders, times);
  } catch (error) {
    // Not the content's fault: say so shortly; the whole trail is for those who look for it.
    const what = diskTrouble(error) ?? (error instanceof Error ? error.message : String(error));
    const cure = /Cannot find (?:module|package)/.test(what) ? 'A package is missing: run npm ci.\n' : '';
    terminal.writeError(`The pages could not be built: ${what}\n${cure}${asItWas(outDir)}`);
    if (process.env['DEBUG'] !== undefined && error instanceof Error)
      terminal.writeError(`${error.stack ?? ''}\n`);
    return { built: false, problems: site.problems, stages: times.stages() };
  }
  tidyAfter(site, terminal);
  const many = site.reports.length > manyReports;
  for (const report of many ? [] : site.reports) {
    const state = isShown(report) ? `/reports/${report.source.slug}/` : 'draft, not published';
    terminal.write(`${report.source.slug}: ${report.session.shots.length} shots, ${state}\n`);
  }
  if (many) terminal.write(`${site.reports.length} reports: ${stagesInWords(times.stages())}\n`);
  terminal.write(`Built into ${outDir}\n`);
  return { built: true, problems: site.problems, stages: times.stages() };
}

function asItWas(outDir: string): string {
  return `Nothing was written${existsSync(outDir) ? `; ${outDir} is as it was` : ''}.\n`;
}

/** Reads and analyses everything; what is not in the cache is worked out beforehand where that is much. */
async function readSite(
  { contentDir, terminal, today }: Omit<Required<BuildRequest>, 'outDir'>,
  times: StageTimes,
): Promise<SiteContent> {
  const code = codeHash(projectFolder);
  if (code === null) return loadSite(contentDir, [], null, today);
  const reportFolder = join(cacheFolder(), 'reports');
  const cached = { cache: diskCache(reportFolder), code };
  const missing = await times.time('looking for changes', () => {
    const content = openContent(contentDir, [], cached);
    return content.slugs.filter((slug) => !content.isKnown(slug));
  });
  const shown = missing.length === 1 ? '1 report is' : `${missing.length} reports are`;
  if (missing.length > 0) terminal.write(`${shown} new or changed; working out what the shots say.\n`);
  if (missing.length > fewReports) {
    const tell = missing.length > manyReports ? progress(missing.length, terminal) : () => {};
    await times.time('analysis, charts and their rasters', () =>
      workOutReports({ contentDir, slugs: missing, reportFolder, code }, tell),
    );
  }
  return times.time('reading', () => loadSite(contentDir, [], cached, today));
}

/** Says how far the work is, ten times. */
function progress(all: number, terminal: Terminal): () => void {
  let done = 0;
  const step = Math.ceil(all / 10);
  return () => {
    done += 1;
    if (done % step === 0) terminal.write(`${done} of ${all} reports analysed\n`);
  };
}

async function buildAside(
  read: ReadContent,
  { outDir, cacheDir }: OpenFolders,
  times: StageTimes,
): Promise<void> {
  // Astro puts its bundle into a folder that all builds share unless the site is built inside the project.
  const aside = newWorkFolder(join(projectFolder, '.cache'));
  const markFile = join(cacheDir, 'building');
  const isOurs = markBuild(markFile, Date.now());
  // While another build is at work on the copies of pages, this one keeps its own.
  const copies = isOurs ? join(cacheDir, 'astro') : `${aside}-astro`;
  const copyList = join(cacheDir, 'pages.list');
  try {
    const known = isOurs
      ? await times.time('looking for changes', async () => checkPageCopies(copies, copyList))
      : new Map();
    prepareEnvironment({ projectFolder, cacheDir });
    const { build } = await import('astro');
    await times.time('pages', () =>
      build({
        ...siteConfig(contentGate(read)),
        configFile: false,
        root: projectFolder,
        outDir: aside,
        cacheDir: copies,
        // A page that fails is told below, without the trail that the framework prints of it.
        logLevel: process.env['DEBUG'] === undefined ? 'silent' : 'warn',
      }),
    );
    if (isOurs) recordPageCopies(copies, copyList, known);
    markSite(aside, process.umask());
    publishSite({ built: aside, outDir, projectFolder });
  } finally {
    removeWorkFolder(aside);
    if (isOurs) unmarkBuild(markFile);
    else removeWorkFolder(copies);
  }
}
