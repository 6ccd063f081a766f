import type { SiteContent } from './siteContent.ts';

/**
 * What build commands of this process have read. The pages run from a bundle of their own; this one module they
 * share with the command, see `virtual:straightface/site`.
 */
const given = new Map<string, SiteContent>();
let count = 0;

/** Lays a site ready for the pages of one build; returns the name by which they ask for it. */
export function giveSite(site: SiteContent): string {
  count += 1;
  const name = `site-${count}`;
  given.set(name, site);
  return name;
}

/** @throws where no build has laid it ready */
export function givenSite(name: string): SiteContent {
  const site = given.get(name);
  if (site === undefined) throw new Error(`No build has read ${name}.`);
  return site;
}

export function takeSiteBack(name: string): void {
  given.delete(name);
}
