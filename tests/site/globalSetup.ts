import { resolve } from 'node:path';
import type { TestProject } from 'vitest/node';
import { serveFolder, type StaticServer } from '../../src/commands/staticServer.ts';
import { manyReports } from '../kit/manyReports.ts';
import { oddBase, oddReports } from '../kit/oddReports.ts';
import { writeTriedContent } from '../specimen-pages/triedContent.ts';
import { builtSite } from './builtSite.ts';
import { builtUnder } from './kitFolder.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Folder of the site built from `content/`. */
    siteFolder: string;
    /** Where it is served. */
    siteAddress: string;
    /** Content that tries the pages, the site built from it with the page components' examples, and where it is served. */
    triedContent: string;
    triedFolder: string;
    triedAddress: string;
    /** A site with pairs and contenders that met in several reports, and where it is served. */
    pooledFolder: string;
    pooledAddress: string;
    /** Host's folder of the site of reports that try the kit, and where it is served. */
    oddRoot: string;
    oddAddress: string;
  }
}

/** Each with a cache of its own: they are built at the same time, and two builds do not share copies of pages. */
async function built(
  contentDir: string,
  outDir: string,
  more: Readonly<Record<string, string>> = {},
): Promise<StaticServer> {
  await builtSite(contentDir, outDir, { CACHE_DIR: `${outDir}-cache`, ...more });
  return serveFolder({ folder: outDir });
}

/** Builds the site of `content/`, and the one that tries the pages, once for all tests of built pages, and serves both. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const [siteFolder, triedContent, triedFolder, pooledFolder] = [
    'test-site',
    'tried-content',
    'tried-site',
    'pooled-site',
  ].map((name) => resolve('.cache', name)) as [string, string, string, string];
  writeTriedContent(triedContent);
  const pooledContent = manyReports('name: Shop & Sons\naddress: https://golf.example/\n');
  const [site, tried, pooled, [oddRoot, odd]] = await Promise.all([
    built(resolve('content'), siteFolder),
    built(triedContent, triedFolder, { SPECIMENS: '1' }),
    built(pooledContent, pooledFolder),
    // In a folder of its host, as its shop has it.
    builtUnder(oddReports(), oddBase, 'odd').then(
      async (root) => [root, await serveFolder({ folder: root })] as const,
    ),
  ]);
  project.provide('siteFolder', siteFolder);
  project.provide('siteAddress', site.origin);
  project.provide('triedContent', triedContent);
  project.provide('triedFolder', triedFolder);
  project.provide('triedAddress', tried.origin);
  project.provide('pooledFolder', pooledFolder);
  project.provide('pooledAddress', pooled.origin);
  project.provide('oddRoot', oddRoot);
  project.provide('oddAddress', odd.origin);
  return async () => void (await Promise.all([site, tried, pooled, odd].map((server) => server.close())));
}
