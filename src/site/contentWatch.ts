import { sep } from 'node:path';
import type { AstroIntegration } from 'astro';
import { contentFolder } from './folders.ts';

/**
 * What `dev` has beyond a build: live reload for a content folder that may lie outside the project, and a page for
 * each report that cannot be shown yet.
 */
export function contentWatch(): AstroIntegration {
  return {
    name: 'content-watch',
    hooks: {
      'astro:config:setup': ({ command, injectRoute }) => {
        if (command !== 'dev') return;
        injectRoute({
          pattern: '/reports/[blocked]',
          entrypoint: './src/pages/reports/_blocked.astro',
          prerender: true,
        });
      },
      'astro:server:setup': ({ server }) => {
        const folder = contentFolder();
        const forget = (): void => {
          for (const [name, { hot }] of Object.entries(server.environments))
            if (name !== 'client') hot.send(contentChanged, {});
        };
        // A browser can ask before the disk has told that a file was changed.
        server.middlewares.use(({ url = '' }, _response, next) => {
          if (isPage(url)) forget();
          next();
        });
        server.watcher.add(folder);
        server.watcher.on('all', (_event, path) => {
          if (!path.startsWith(`${folder}${sep}`)) return;
          forget();
          server.environments.client.hot.send({ type: 'full-reload' });
        });
      },
    },
  };
}

/** On this event the framework forgets which reports there are and what they say, and asks for it anew. */
const contentChanged = 'astro:content-changed';

/** An address without the ending of a file. */
const isPage = (url: string): boolean => !/\.\w+(?:[?#].*)?$/s.test(url) && !url.startsWith('/@');
