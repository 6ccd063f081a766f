import { AsyncLocalStorage } from 'node:async_hooks';
import type { SiteContent } from './siteContent.ts';

/** What pages of a build are made of, and the folder that it was read from. */
export interface GivenSite {
  readonly contentDir: string;
  readonly site: SiteContent;
}

/*
 * The pages run from a bundle of their own; this one module they share with the commands, see
 * `virtual:straightface/site`.
 */
const within = new AsyncLocalStorage<GivenSite>();
let laid: GivenSite | null = null;

/** Lets pages be rendered of this content, whatever else is rendered at the same time. */
export function withSite<Rendered>(given: GivenSite, render: () => Promise<Rendered>): Promise<Rendered> {
  return within.run(given, render);
}

/** Lays a site ready for the one build of the framework's own command; null takes it back. */
export function laySite(given: GivenSite | null): void {
  laid = given;
}

/** @throws where no build has given any */
export function givenSite(): GivenSite {
  const given = within.getStore() ?? laid;
  if (given === null) throw new Error('No build has read the content.');
  return given;
}
