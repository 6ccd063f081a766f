import { resolve } from 'node:path';
import type { TestProject } from 'vitest/node';
import { buildSite } from '../../src/commands/buildSite.ts';
import { serveFolder } from './staticServer.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Folder of the site built from `content/`. */
    siteFolder: string;
    /** Where it is served. */
    siteAddress: string;
  }
}

/** Builds the site of `content/` once for all tests of built pages, and serves it. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const outDir = resolve('.cache/test-site');
  const said: string[] = [];
  const write = (text: string): void => void said.push(text);
  const outcome = await buildSite({
    contentDir: resolve('content'),
    outDir,
    terminal: { write, writeError: write, colour: false, width: 110 },
  });
  if (!outcome.built) throw new Error(`The site of content/ does not build:\n${said.join('')}`);
  const server = await serveFolder(outDir);
  project.provide('siteFolder', outDir);
  project.provide('siteAddress', server.address);
  return server.close;
}
