import type { SiteContent } from './siteContent.ts';

interface Given {
  readonly root: string;
  readonly site: SiteContent;
}

declare global {
  /**
   * The pages run from a bundle with its own copies of these modules; what the build command has read and analysed
   * reaches them through the one object that both share.
   */
  var straightfaceSite: Given | undefined;
}

/** Runs `work` while pages of that content folder find the site already read. */
export async function whileGiven<Result>(
  root: string,
  site: SiteContent,
  work: () => Promise<Result>,
): Promise<Result> {
  globalThis.straightfaceSite = { root, site };
  try {
    return await work();
  } finally {
    globalThis.straightfaceSite = undefined;
  }
}

/** The site that the build command has read of this folder; null outside of a build. */
export function givenSite(root: string): SiteContent | null {
  const given = globalThis.straightfaceSite;
  return given?.root === root ? given.site : null;
}
