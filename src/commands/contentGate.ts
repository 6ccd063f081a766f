import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { AstroIntegration } from 'astro';
import { openContentFolder } from '../site/contentFiles.ts';
import { contentFolder, outFolder } from '../site/folders.ts';
import { laySite } from '../site/givenSite.ts';
import { readShared } from '../site/sharedFiles.ts';
import { loadSite, type SiteContent } from '../site/siteContent.ts';
import { markSite } from '../site/siteMark.ts';
import { localDate } from './localDate.ts';
import { openFolders } from './openFolders.ts';
import { publishSite, type Publication } from './publishSite.ts';
import { addressOf } from './siteAddress.ts';
import { givenToPages, readByPages, siteModule } from './siteModule.ts';
import { tellProblems } from './tellProblems.ts';
import { processTerminal } from './terminal.ts';
import { newWorkFolder, removeWorkFolder } from './workFolders.ts';

/** The integration, and what it lets through. */
export interface ContentGate {
  readonly integration: AstroIntegration;
  /** The content that is built. @throws before it was read, as in `dev` */
  readonly site: () => SiteContent;
}

/**
 * The way of the content into the framework's own commands. A build reads and checks everything first: with an error the
 * table of problems is printed, the framework stops with status 1, and nothing is written. In `dev` each page reads what
 * it shows.
 */
export function contentGate(): ContentGate {
  const contentDir = contentFolder();
  let built: SiteContent | null = null;
  let publish = (): void => undefined;
  const integration: AstroIntegration = {
    name: 'content-gate',
    hooks: {
      'astro:config:setup': ({ command, config, updateConfig }) => {
        if (command === 'dev') {
          const { shop } = readShared(openContentFolder(contentDir)).shared;
          const code = readByPages({ contentDir, projectFolder: fileURLToPath(config.root) });
          updateConfig({ ...addressOf(shop), vite: { plugins: [siteModule(code)] } });
        }
        if (command !== 'build') return;
        const site = checkedContent(contentDir);
        built = site;
        laySite({ contentDir, site });
        const publication = publicationOf(config, contentDir);
        updateConfig({
          ...addressOf(site.shop),
          vite: { plugins: [siteModule(givenToPages)] },
          outDir: pathToFileURL(`${publication.built}/`),
        });
        publish = () => {
          laySite(null);
          markSite(publication.built, process.umask());
          publishSite(publication);
          removeWorkFolder(publication.built);
        };
      },
      'astro:build:done': () => publish(),
    },
  };
  return {
    integration,
    site: () => {
      if (built === null) throw new Error('The content was not read yet.');
      return built;
    },
  };
}

/** The content folder read and told as `npm run build` does. @throws where it may not be published */
function checkedContent(contentDir: string): SiteContent {
  const site = loadSite(contentDir, [], null, localDate(new Date()));
  if (!tellProblems(site, processTerminal()))
    throw refusal('The content has errors, see above. Nothing was written.');
  return site;
}

interface Config {
  readonly root: URL;
  readonly outDir: URL;
}

/**
 * The framework empties the folder that it builds into: it gets one aside, and what it built goes where `npm run build`
 * would put it, or where its own option says. @throws where that is none that a build may write into
 */
function publicationOf({ root, outDir }: Config, contentDir: string): Publication {
  const projectFolder = fileURLToPath(root);
  const named = fileURLToPath(outDir);
  const isDefault = named === fileURLToPath(new URL('./dist/', root));
  const folders = openFolders({
    contentDir,
    outDir: isDefault ? outFolder() : named,
    projectFolder,
    terminal: processTerminal(),
  });
  if (folders === null) throw refusal('There is no folder for the site, see above.');
  return { built: newWorkFolder(join(projectFolder, '.cache')), outDir: folders.outDir, projectFolder };
}

/** The framework prints the stack of whatever stops it, and this is no fault of the program. */
function refusal(sentence: string): Error {
  const error = new Error(sentence);
  error.stack = '';
  return error;
}
