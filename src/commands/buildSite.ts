import { existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { countInWords, countProblems } from '../problems/countProblems.ts';
import type { Problem } from '../problems/problem.ts';
import { problemTable } from '../problems/table.ts';
import { loadSite, type SiteContent } from '../site/siteContent.ts';
import { isShown } from '../site/shown.ts';
import { inBuildEnvironment } from './buildEnvironment.ts';
import { recover, swap } from './swap.ts';
import type { Terminal } from './terminal.ts';

export interface BuildRequest {
  readonly contentDir: string;
  readonly outDir: string;
  readonly terminal: Terminal;
}

export interface BuildOutcome {
  readonly built: boolean;
  readonly problems: readonly Problem[];
}

const projectFolder = resolve(import.meta.dirname, '../..');

/**
 * The main job: checks everything and prints the table; with an error nothing is written. Else the site is built in
 * a folder aside and swapped in, so that `outDir` always holds a whole site.
 */
export async function buildSite({ contentDir, outDir, terminal }: BuildRequest): Promise<BuildOutcome> {
  recover(outDir);
  const site = loadSite(contentDir);
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
    return { built: false, problems: site.problems };
  }
  try {
    await buildAside(site, contentDir, outDir);
  } catch (error) {
    // Not the content's fault: say so shortly; the whole trail is for those who look for it.
    const what = error instanceof Error ? error.message : String(error);
    terminal.writeError(`The pages could not be built: ${what}\n${asItWas(outDir)}`);
    if (process.env['DEBUG'] !== undefined && error instanceof Error)
      terminal.writeError(`${error.stack ?? ''}\n`);
    return { built: false, problems: site.problems };
  }
  for (const report of site.reports) {
    const state = isShown(report) ? `/reports/${report.source.slug}/` : 'draft, not published';
    terminal.write(`${report.source.slug}: ${report.session.shots.length} shots, ${state}\n`);
  }
  terminal.write(`Built into ${outDir}\n`);
  return { built: true, problems: site.problems };
}

function asItWas(outDir: string): string {
  return `Nothing was written${existsSync(outDir) ? `; ${outDir} is as it was` : ''}.\n`;
}

async function buildAside(site: SiteContent, contentDir: string, outDir: string): Promise<void> {
  const cache = join(projectFolder, '.cache');
  mkdirSync(cache, { recursive: true });
  const aside = mkdtempSync(join(cache, 'new-'));
  try {
    await inBuildEnvironment(contentDir, async () => {
      const { build } = await import('astro');
      await build({
        root: projectFolder,
        outDir: aside,
        cacheDir: join(cache, 'astro'),
        logLevel: 'warn',
        ...(site.shop?.address == null ? {} : { site: site.shop.address.site, base: site.shop.address.base }),
      });
    });
    swap(aside, outDir);
  } finally {
    rmSync(aside, { recursive: true, force: true });
  }
}
