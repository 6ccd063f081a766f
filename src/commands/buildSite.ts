import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Shop } from '../intake/authored/shop.ts';
import type { Problem } from '../problems/problem.ts';
import { codeHashes } from '../site/codeHash.ts';
import { openContent } from '../site/openContent.ts';
import { diskCache } from '../site/reportCache.ts';
import { isShown } from '../site/shown.ts';
import { loadSite, type SiteContent } from '../site/siteContent.ts';
import { buildAside } from './buildAside.ts';
import { prepareEnvironment } from './buildEnvironment.ts';
import { collectSooner } from './collectSooner.ts';
import { openFolders } from './openFolders.ts';
import { programFolder as projectFolder } from './ownCode.ts';
import { pagesFailure } from './pagesFailure.ts';
import { pagesCompiler } from './rendering/pagesCompiler.ts';
import { fewReports, reportWorkers, type ReportWorkers } from './reportWorkers.ts';
import { addressOf } from './siteAddress.ts';
import { stagesInWords, stageTimes, type StageTime, type StageTimes } from './stageTimes.ts';
import { manyReports, tellingProgress } from './tellingProgress.ts';
import { tellProblems } from './tellProblems.ts';
import type { Terminal } from './terminal.ts';
import { tidyAfter, tidyBefore } from './tidy.ts';

interface BuildRequest {
  readonly contentDir: string;
  readonly outDir: string;
  readonly terminal: Terminal;
  /** ISO 8601; null where no clock is asked. */
  readonly today?: string | null;
}

interface BuildOutcome {
  readonly built: boolean;
  readonly problems: readonly Problem[];
  readonly stages: readonly StageTime[];
}

/** From so many on, memory counts for more than a quarter of the time of the pages. */
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
  const read = { contentDir: resolve(contentDir), terminal, today };
  prepareEnvironment({ projectFolder, cacheDir: folders.cacheDir });
  const hashes = codeHashes(projectFolder);
  const code = hashes.reports;
  const reportFolder = join(folders.cacheDir, 'reports');
  const compiler = pagesCompiler();
  const workers = code === null ? null : reportWorkers({ contentDir: read.contentDir, reportFolder, code });
  try {
    const compileFor = (shop: Shop | null): void => {
      if (hashes.pages !== null)
        void compiler.pages({ projectFolder, address: addressOf(shop), code: hashes.pages });
    };
    const site = await readSite(read, { code, reportFolder, workers, compileFor }, times);
    if (site.reports.length > enoughToFillMemory) collectSooner();
    if (!tellProblems(site, terminal)) {
      terminal.writeError(asItWas(outDir));
      return { built: false, problems: site.problems, stages: times.stages() };
    }
    try {
      await buildAside(
        { contentDir: read.contentDir, projectFolder, site, hashes, workers, compiler, terminal },
        folders,
        times,
      );
    } catch (error) {
      tellFailure(error, outDir, terminal);
      return { built: false, problems: site.problems, stages: times.stages() };
    }
    tidyAfter(site, terminal);
    tellSite(site, times, terminal);
    terminal.write(`Built into ${outDir}\n`);
    return { built: true, problems: site.problems, stages: times.stages() };
  } finally {
    await Promise.all([workers?.close(), compiler.close()]);
  }
}

function tellSite(site: SiteContent, times: StageTimes, terminal: Terminal): void {
  const many = site.reports.length > manyReports;
  for (const report of many ? [] : site.reports) {
    const state = isShown(report) ? `/reports/${report.source.slug}/` : 'draft, not published';
    terminal.write(`${report.source.slug}: ${report.session.shots.length} shots, ${state}\n`);
  }
  if (many) terminal.write(`${site.reports.length} reports: ${stagesInWords(times.stages())}\n`);
}

/** Not the content's fault: it is said shortly; the whole trail is for those who look for it. */
function tellFailure(error: unknown, outDir: string, terminal: Terminal): void {
  terminal.writeError(`The pages could not be built: ${pagesFailure(error)}${asItWas(outDir)}`);
  if (process.env['DEBUG'] !== undefined && error instanceof Error)
    terminal.writeError(`${error.stack ?? ''}\n`);
}

function asItWas(outDir: string): string {
  return `Nothing was written${existsSync(outDir) ? `; ${outDir} is as it was` : ''}.\n`;
}

interface Kept {
  readonly code: string | null;
  readonly reportFolder: string;
  readonly workers: ReportWorkers | null;
  /** Begins to compile the pages of this shop's site. */
  readonly compileFor: (shop: Shop | null) => void;
}

/** Reads and analyses everything; what is not in the cache is worked out beforehand where that is much. */
async function readSite(
  { contentDir, terminal, today }: Omit<Required<BuildRequest>, 'outDir'>,
  { code, reportFolder, workers, compileFor }: Kept,
  times: StageTimes,
): Promise<SiteContent> {
  if (code === null || workers === null) return loadSite(contentDir, [], null, today);
  const cached = { cache: diskCache(reportFolder), code };
  const { missing, shop } = await times.time('looking for changes', () => {
    const content = openContent(contentDir, [], cached);
    return {
      missing: content.slugs.filter((slug) => !content.isKnown(slug)),
      shop: content.shared.shop,
    };
  });
  const shown = missing.length === 1 ? '1 report is' : `${missing.length} reports are`;
  if (missing.length > 0) terminal.write(`${shown} new or changed; working out what the shots say.\n`);
  // Of what is as it was no page may be needed.
  if (missing.length > 0) compileFor(shop);
  if (missing.length > fewReports) {
    const tasks = missing.map((slug) => ({ slug, pages: null }));
    await times.time('analysis and charts', () =>
      tellingProgress({ doing: 'Analysis', items: 'reports', all: tasks.length, terminal }, (step) =>
        workers.run(tasks, step),
      ),
    );
  }
  return times.time('reading', () => loadSite(contentDir, [], cached, today));
}
