import { existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { countInWords, countProblems } from '../problems/countProblems.ts';
import type { Problem } from '../problems/problem.ts';
import { problemTable } from '../problems/table.ts';
import { codeHash } from '../site/codeHash.ts';
import { cacheFolder } from '../site/folders.ts';
import { whileGiven } from '../site/givenSite.ts';
import { openContent } from '../site/openContent.ts';
import { diskCache, pruneCache } from '../site/reportCache.ts';
import { loadSite, type SiteContent } from '../site/siteContent.ts';
import { isShown } from '../site/shown.ts';
import { inBuildEnvironment } from './buildEnvironment.ts';
import { markBuild, unmarkBuild } from './buildMark.ts';
import { collectSooner } from './collectSooner.ts';
import { stagesInWords, stageTimes, type StageTime, type StageTimes } from './stageTimes.ts';
import { recover, swap } from './swap.ts';
import { fewReports, workOutReports } from './workOutReports.ts';
import type { Terminal } from './terminal.ts';

export interface BuildRequest {
  readonly contentDir: string;
  readonly outDir: string;
  readonly terminal: Terminal;
}

export interface BuildOutcome {
  readonly built: boolean;
  readonly problems: readonly Problem[];
  readonly stages: readonly StageTime[];
}

const projectFolder = resolve(import.meta.dirname, '../..');

const day = 24 * 60 * 60 * 1000;

/**
 * What no build has used is deleted from the caches once it is so old, milliseconds. Rasters stay longer: a page that
 * is copied does not ask for its pictures, and they outlive changes of the code.
 */
const keptFor = { reports: 7 * day, rasters: 90 * day };

/** From so many on, the command says how far it is instead of naming each. */
const manyReports = 20;

/** From so many on, memory counts for more than the last tenth of time. */
const enoughToFillMemory = 200;

/**
 * The main job: checks everything and prints the table; with an error nothing is written. Else the site is built in
 * a folder aside and swapped in, so that `outDir` always holds a whole site.
 */
export async function buildSite({ contentDir, outDir, terminal }: BuildRequest): Promise<BuildOutcome> {
  recover(outDir);
  const times = stageTimes(() => performance.now());
  const site = await readSite(contentDir, terminal, times);
  if (site.reports.length > enoughToFillMemory) collectSooner();
  const unfinished = site.blocked.filter((report) => report.unfinished);
  const waiting = new Set(unfinished.flatMap(({ problems }) => problems));
  const problems = site.problems.filter((problem) => !waiting.has(problem));
  const table = problemTable(problems, {
    colour: terminal.colour,
    width: terminal.width,
    howToSeeAll: 'npm run check -- --json prints them all.',
  });
  if (table !== '') terminal.writeError(`${table}\n\n`);
  if (site.waiting.length > 0) {
    terminal.writeError(
      `Waiting in inbox/: ${site.waiting.join(', ')}. "npm run draft" makes draft reports of them.\n`,
    );
  }
  for (const { slug, problems: open } of unfinished) {
    const count = countInWords(countProblems(open));
    terminal.writeError(
      `${slug}: a draft with answers still to be given (${count}); see npm run check -- ${slug}\n`,
    );
  }
  if (countProblems(problems).errors > 0) {
    terminal.writeError(asItWas(outDir));
    return { built: false, problems: site.problems, stages: times.stages() };
  }
  terminal.write('Writing the pages.\n');
  try {
    await buildAside(site, contentDir, outDir, times);
  } catch (error) {
    // Not the content's fault: say so shortly; the whole trail is for those who look for it.
    const what = error instanceof Error ? error.message : String(error);
    const cure = /Cannot find (?:module|package)/.test(what) ? 'A package is missing: run npm ci.\n' : '';
    terminal.writeError(`The pages could not be built: ${what}\n${cure}${asItWas(outDir)}`);
    if (process.env['DEBUG'] !== undefined && error instanceof Error)
      terminal.writeError(`${error.stack ?? ''}\n`);
    return { built: false, problems: site.problems, stages: times.stages() };
  }
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
async function readSite(contentDir: string, terminal: Terminal, times: StageTimes): Promise<SiteContent> {
  const code = codeHash(projectFolder);
  if (code === null) return loadSite(contentDir);
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
  return times.time('reading', () => loadSite(contentDir, [], cached));
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
  site: SiteContent,
  contentDir: string,
  outDir: string,
  times: StageTimes,
): Promise<void> {
  // Astro puts its bundle into a folder that all builds share unless the site is built inside the project.
  const inside = join(projectFolder, '.cache');
  mkdirSync(inside, { recursive: true });
  const aside = mkdtempSync(join(inside, 'new-'));
  const markFile = join(cacheFolder(), 'building');
  const found = markBuild(markFile, Date.now());
  // While another build is at work on the copies of pages, this one keeps its own.
  const cacheDir = found === 'in-use' ? `${aside}-astro` : join(cacheFolder(), 'astro');
  try {
    await inBuildEnvironment(contentDir, async () => {
      const { build } = await import('astro');
      await times.time('pages', () =>
        whileGiven(contentDir, site, () =>
          build({
            root: projectFolder,
            outDir: aside,
            cacheDir,
            force: found === 'left-behind',
            logLevel: 'warn',
            ...(site.shop?.address == null
              ? {}
              : { site: site.shop.address.site, base: decodeURI(site.shop.address.base) }),
          }),
        ),
      );
    });
    swap(aside, outDir);
    if (found !== 'in-use') unmarkBuild(markFile);
    const keys = new Set(site.reports.flatMap(({ key }) => key ?? []));
    pruneCache(join(cacheFolder(), 'reports'), keys, new Date(Date.now() - keptFor.reports));
    pruneCache(join(cacheFolder(), 'rasters'), new Set(), new Date(Date.now() - keptFor.rasters));
  } finally {
    rmSync(aside, { recursive: true, force: true });
    if (found === 'in-use') rmSync(cacheDir, { recursive: true, force: true });
  }
}
