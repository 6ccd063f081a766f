import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { siteBase } from '../previewSite.ts';
import { serveFolder, type StaticServer } from '../staticServer.ts';

/** A server of the built site, and the path below which its pages were built. */
interface Serving {
  readonly base: string;
  readonly server: Promise<StaticServer>;
}

/**
 * Serves the built site as a host would, on a port of its own: its pages name one another by paths from the top. It is
 * started when it is first asked for, and anew where the shop's address leads elsewhere by now.
 */
export function previewAtDesk(contentDir: string, outDir: string): () => Promise<string | null> {
  let serving: Serving | null = null;
  return async () => {
    if (!existsSync(join(outDir, 'index.html'))) return null;
    const base = siteBase(contentDir);
    if (serving !== null && serving.base !== base) {
      const { close } = await serving.server;
      await close();
      serving = null;
    }
    serving ??= { base, server: serveFolder({ folder: outDir, base, ownNamesOnly: true }) };
    const { origin } = await serving.server;
    return `${origin}${encodeURI(base)}`;
  };
}
