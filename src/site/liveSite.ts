import { codeHash } from './codeHash.ts';
import { devCacheFolder } from './folders.ts';
import type { Cached } from './openContent.ts';
import { diskCache } from './reportCache.ts';
import { loadSite, type SiteContent } from './siteContent.ts';
import { surroundingsOf } from './surroundings.ts';

/** Where content that is edited while it is looked at lies, and the code that reads it; absolute. */
export interface LivePlaces {
  readonly contentDir: string;
  readonly projectFolder: string;
}

let loaded: SiteContent | null = null;

/** The content as it lies on the disk; one page asks several times, and only its first question reads it anew. */
export function liveSite(
  { contentDir, projectFolder }: LivePlaces,
  { fresh }: { readonly fresh: boolean },
): SiteContent {
  if (loaded === null || fresh) {
    const site = loadSite(contentDir, [], cachedForDev(projectFolder));
    // Drafts have pages there, and those of contenders count them.
    loaded = { ...site, others: surroundingsOf(site.reports, site.reports) };
  }
  return loaded;
}

/**
 * Reports that `dev` has worked out before. They lie apart from those of builds: while the code changes under a running
 * server nobody can be sure which of it was at work.
 */
function cachedForDev(projectFolder: string): Cached | null {
  const code = codeHash(projectFolder);
  return code === null ? null : { cache: diskCache(devCacheFolder()), code };
}
