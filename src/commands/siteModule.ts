import { pathToFileURL } from 'node:url';
import type { AstroUserConfig } from 'astro';
import type { LivePlaces } from '../site/liveSite.ts';
import { moduleFile, sourceFile } from './ownCode.ts';

type Plugin = NonNullable<NonNullable<AstroUserConfig['vite']>['plugins']>[number];

const name = 'virtual:straightface/site';
const resolved = `\0${name}`;
const sharedName = 'virtual:straightface/given';
const givenFile = pathToFileURL(moduleFile('site/givenSite.ts'));
const liveFile = sourceFile('site/liveSite.ts');

/** Code for the pages of a build: all is read already, and whoever renders them gives it. */
export const givenToPages = `import { givenSite } from ${JSON.stringify(sharedName)};
export const siteContent = () => givenSite().site;
export const contentDir = () => givenSite().contentDir;`;

/** Code for pages that read the content folder themselves, so that each shows it as it is. */
export const readByPages = (places: LivePlaces): string =>
  `import { liveSite } from ${JSON.stringify(liveFile)};
export const siteContent = (of) => liveSite(${JSON.stringify(places)}, of);
export const contentDir = () => ${JSON.stringify(places.contentDir)};`;

/** The module by which pages get at the content: see `src/site/virtualSite.d.ts`. */
export function siteModule(code: string): Plugin {
  return {
    name: 'site-content',
    enforce: 'pre',
    resolveId: (id: string) => {
      if (id === name) return resolved;
      // One copy for the command and the pages, loaded by Node: a bundled one would know nothing of what was given.
      return id === sharedName ? { id: givenFile.href, external: 'absolute' as const } : null;
    },
    load: (id: string) => (id === resolved ? code : null),
  };
}
