import { renameSync } from 'node:fs';
import { join } from 'node:path';
import type { AstroIntegration } from 'astro';
import { sourceFile } from '../ownCode.ts';
import type { SiteAddress } from '../siteAddress.ts';
import { pagesConfig } from '../siteConfig.ts';
import { givenToPages, siteModule } from '../siteModule.ts';

export interface Compilation {
  readonly projectFolder: string;
  readonly address: SiteAddress;
  /** A new folder inside the project, from which packages are found. */
  readonly folder: string;
}

const entry = sourceFile('commands/rendering/pagesEntry.ts');

/**
 * Has the framework compile the pages and bundle their styles and scripts: into `code` what renders, its entry of the
 * shape of `pagesEntry.ts`, into `static` what every site has beside its pages. Nothing is rendered, so no content is
 * asked for.
 */
export async function compilePages({ projectFolder, address, folder }: Compilation): Promise<void> {
  const { build } = await import('astro');
  const config = pagesConfig([compilation(join(folder, 'static'), join(folder, 'code'))]);
  await build({
    ...config,
    ...address,
    vite: { ...config.vite, plugins: [siteModule(givenToPages), ownEntry] },
    configFile: false,
    root: projectFolder,
    outDir: join(folder, 'static'),
    cacheDir: join(folder, 'framework'),
    logLevel: process.env['DEBUG'] === undefined ? 'silent' : 'warn',
  });
}

const ownEntry = {
  name: 'pages-entry',
  configEnvironment: (environment: string) =>
    environment === 'prerender' ? { build: { rolldownOptions: { input: { entry } } } } : undefined,
};

/** Takes the code with which the framework would render, and would then delete. */
function compilation(outDir: string, code: string): AstroIntegration {
  return {
    name: 'compiled-pages',
    hooks: {
      'astro:config:done': ({ setAdapter }) =>
        setAdapter({
          name: 'compiled-pages',
          entrypointResolution: 'auto',
          supportedAstroFeatures: { staticOutput: 'stable', sharpImageService: 'stable' },
          adapterFeatures: { buildOutput: 'static' },
        }),
      'astro:build:start': ({ setPrerenderer }) =>
        setPrerenderer({
          name: 'compiled-pages',
          setup: async () => renameSync(join(outDir, '.prerender'), code),
          getStaticPaths: async () => [],
          render: () => Promise.reject(new Error('Nothing is rendered where pages are compiled.')),
        }),
    },
  };
}
