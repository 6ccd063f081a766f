import { codeHash } from './codeHash.ts';
import { contentFolder, devCacheFolder } from './folders.ts';
import type { Cached } from './openContent.ts';
import { diskCache } from './reportCache.ts';
import { loadSite, type SiteContent } from './siteContent.ts';

let loaded: SiteContent | null = null;

/** The content as it lies on the disk; one page asks several times, and only its first question reads it anew. */
export function siteContent({ fresh }: { readonly fresh: boolean }): SiteContent {
  if (loaded === null || fresh) loaded = loadSite(contentFolder(), [], cachedForDev());
  return loaded;
}

/**
 * Reports that `dev` has worked out before. They lie apart from those of builds: while the code changes under a running
 * server nobody can be sure which of it was at work.
 */
function cachedForDev(): Cached | null {
  const code = codeHash(process.cwd());
  return code === null ? null : { cache: diskCache(devCacheFolder()), code };
}
