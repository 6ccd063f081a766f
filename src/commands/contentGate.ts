import { fileURLToPath, pathToFileURL } from 'node:url';
import type { AstroIntegration } from 'astro';
import { openContentFolder } from '../site/contentFiles.ts';
import { contentFolder, outFolder } from '../site/folders.ts';
import { giveSite, takeSiteBack } from '../site/givenSite.ts';
import { readShared } from '../site/sharedFiles.ts';
import { loadSite, type SiteContent } from '../site/siteContent.ts';
import { givenToPages, readByPages, siteModule } from './siteModule.ts';
import { tellProblems } from './tellProblems.ts';
import { processTerminal } from './terminal.ts';

/**
 * The way of the content into the framework, whichever command starts it. A build reads and checks everything first:
 * with an error the table of problems is printed, the framework stops with status 1, and nothing is written. In `dev`
 * each page reads what it shows.
 *
 * @param read what a command of ours has read and told already; then nothing is read again
 */
export function contentGate(read: SiteContent | null = null): AstroIntegration {
  let given: string | null = null;
  return {
    name: 'content-gate',
    hooks: {
      'astro:config:setup': ({ command, config, updateConfig }) => {
        if (command === 'dev') {
          const { shop } = readShared(openContentFolder(contentFolder())).shared;
          updateConfig({ ...addressOf(shop), vite: { plugins: [siteModule(readByPages)] } });
        }
        if (command !== 'build') return;
        const site = read ?? checkedContent();
        given = giveSite(site);
        updateConfig({
          ...addressOf(site.shop),
          ...(namesOutFolder(config) ? {} : { outDir: pathToFileURL(`${outFolder()}/`) }),
          vite: { plugins: [siteModule(givenToPages(given))] },
        });
      },
      'astro:build:done': () => {
        if (given !== null) takeSiteBack(given);
      },
    },
  };
}

type Shop = SiteContent['shop'];

const addressOf = (shop: Shop): { site?: string; base?: string } =>
  shop?.address == null ? {} : { site: shop.address.site, base: shop.address.base };

/** Whether the framework was told where to build: its own default is no answer of anybody. */
function namesOutFolder({ outDir, root }: { readonly outDir: URL; readonly root: URL }): boolean {
  return fileURLToPath(outDir) !== fileURLToPath(new URL('./dist/', root));
}

/** The content folder read and told as `npm run build` does. @throws where it may not be published */
function checkedContent(): SiteContent {
  const site = loadSite(contentFolder());
  if (tellProblems(site, processTerminal())) return site;
  const refusal = new Error('The content has errors, see above. Nothing was written.');
  // The framework prints the stack of whatever stops it, and this is no fault of the program.
  refusal.stack = '';
  throw refusal;
}
