import { join } from 'node:path';
import { hashOf } from '../site/cacheKey.ts';
import type { CodeHashes } from '../site/codeHash.ts';
import type { GivenSite } from '../site/givenSite.ts';
import type { SiteContent } from '../site/siteContent.ts';
import { markSite } from '../site/siteMark.ts';
import { markBuild, unmarkBuild } from './buildMark.ts';
import type { OpenFolders } from './openFolders.ts';
import { publishSite } from './publishSite.ts';
import { pagesKey } from './rendering/compiledPages.ts';
import type { PagesCompiler } from './rendering/pagesCompiler.ts';
import { isUnchanged, planSite, type PlannedReport } from './rendering/planSite.ts';
import { renderReport, type Rendering } from './rendering/renderReport.ts';
import { renderSite } from './rendering/renderSite.ts';
import { readRecord, writeRecord, type SiteParts } from './rendering/siteRecord.ts';
import type { WrittenPage } from './rendering/writePages.ts';
import { fewReports, type Done, type ReportWorkers } from './reportWorkers.ts';
import { addressOf } from './siteAddress.ts';
import type { StageTimes } from './stageTimes.ts';
import { tellingProgress } from './tellingProgress.ts';
import type { Terminal } from './terminal.ts';
import { newWorkFolder, removeWorkFolder } from './workFolders.ts';

/** A content folder that was read and may be published. */
interface ReadSite {
  readonly contentDir: string;
  readonly projectFolder: string;
  readonly site: SiteContent;
  readonly hashes: CodeHashes;
  readonly workers: ReportWorkers | null;
  readonly compiler: PagesCompiler;
  readonly terminal: Terminal;
}

/** Builds the site in a folder aside and puts it in place; one that would be as it was before is left alone. */
export async function buildAside(read: ReadSite, folders: OpenFolders, times: StageTimes): Promise<void> {
  const { outDir, cacheDir } = folders;
  const { projectFolder } = read;
  const aside = newWorkFolder(join(projectFolder, '.cache'));
  const markFile = join(cacheDir, 'building');
  // While another build is at work with this cache, what it says of the site of before cannot be relied on.
  const isOurs = markBuild(markFile, Date.now());
  try {
    const record = isOurs ? recordFile(folders) : null;
    const parts = await buildInto(aside, read, { outDir, record }, times);
    if (parts === null) return;
    await times.time('publishing', async () => {
      markSite(aside, process.umask());
      publishSite({ built: aside, outDir, projectFolder });
      if (record !== null) writeRecord(record, outDir, parts);
    });
  } finally {
    removeWorkFolder(aside);
    if (isOurs) unmarkBuild(markFile);
  }
}

/** One for each folder, and for what others may do with its files. */
function recordFile({ outDir, cacheDir }: OpenFolders): string {
  return join(cacheDir, 'sites', `${hashOf([outDir, process.umask()])}.json`);
}

interface Before {
  readonly outDir: string;
  /** What the last build wrote down of it; null where that is not to be relied on. */
  readonly record: string | null;
}

/** Builds the site in a folder aside; null where the site of before is what it would be. */
async function buildInto(
  folder: string,
  { contentDir, projectFolder, site, hashes, workers, compiler, terminal }: ReadSite,
  { outDir, record }: Before,
  times: StageTimes,
): Promise<SiteParts | null> {
  if (hashes.pages === null) throw new Error(`${projectFolder} lacks folders of the program.`);
  const address = addressOf(site.shop);
  const toCompile = { projectFolder, address, code: hashes.pages };
  const key = pagesKey(toCompile);
  const plan = planSite(site, key);
  const before = await times.time('looking for changes', () =>
    record === null ? new Map() : readRecord(record, outDir),
  );
  if (isUnchanged(plan, before)) {
    terminal.write('Nothing has changed since the last build.\n');
    return null;
  }
  const { entry, staticFolder } = await times.time('compiling pages', () => compiler.pages(toCompile));
  const origin = address.site ?? null;
  const rendering: Rendering = {
    entry,
    origin,
    target: { folder, origin: origin ?? 'http://localhost', base: withSlash(address.base ?? '/') },
  };
  const given = { contentDir, site };
  const renderReports = (reports: readonly PlannedReport[]): Promise<Done> => {
    if (workers === null || reports.length <= fewReports) return renderHere(reports, given, rendering);
    const tasks = reports.map(({ report, others }) => ({
      slug: report.source.slug,
      pages: { rendering, others, key: report.key },
    }));
    return tellingProgress(
      { doing: 'Pages and pictures', items: 'reports', all: tasks.length, terminal },
      (step) => workers.run(tasks, step),
    );
  };
  terminal.write('Writing the pages.\n');
  return times.time('pages', () =>
    renderSite({ given, plan, pagesKey: key, staticFolder, rendering, before, outDir, renderReports }),
  );
}

async function renderHere(
  reports: readonly PlannedReport[],
  { contentDir, site }: GivenSite,
  rendering: Rendering,
): Promise<Done> {
  const done = new Map<string, readonly WrittenPage[]>();
  for (const { report, others } of reports)
    done.set(
      report.source.slug,
      await renderReport(report, { contentDir, site: { ...site, others } }, rendering),
    );
  return done;
}

const withSlash = (base: string): string => (base.endsWith('/') ? base : `${base}/`);
