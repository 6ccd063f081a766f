import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { openContentFolder } from '../site/contentFiles.ts';
import { readShared } from '../site/sharedFiles.ts';
import { serveFolder } from './staticServer.ts';
import type { Terminal } from './terminal.ts';

interface PreviewRequest {
  readonly contentDir: string;
  readonly outDir: string;
  /** Null: the usual one, or the next that is free; 0: any. */
  readonly port: number | null;
  readonly terminal: Terminal;
}

export interface Preview {
  /** Of the first page. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

const usualPort = 4321;

/** The path below which the pages of a site are built, in plain letters: that of the shop's address. */
export const siteBase = (contentDir: string): string =>
  decodeURI(readShared(openContentFolder(contentDir)).shared.shop?.address?.base ?? '/');

/** Serves the built site as a plain static host would; null, which is then said, where none has been built. */
export async function previewSite({
  contentDir,
  outDir,
  port,
  terminal,
}: PreviewRequest): Promise<Preview | null> {
  if (!existsSync(join(outDir, 'index.html'))) {
    terminal.writeError(`There is no site in ${outDir}. Build it first: npm run build\n`);
    return null;
  }
  // The pages were built for the place that the shop states.
  const base = siteBase(contentDir);
  const { origin, close } = await serveFolder({
    folder: outDir,
    base,
    port: port ?? usualPort,
    tries: port === null ? 21 : 1,
  });
  const address = `${origin}${encodeURI(base)}`;
  terminal.write(`${outDir} is served at ${address}\nStop it with Ctrl-C.\n`);
  return { address, close };
}
