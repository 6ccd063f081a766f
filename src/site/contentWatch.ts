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
        server.watcher.add(folder);
        server.watcher.on('all', (_event, path) => {
          if (!path.startsWith(`${folder}${sep}`)) return;
          for (const environment of Object.values(server.environments))
            environment.moduleGraph.invalidateAll();
          server.environments.client.hot.send({ type: 'full-reload' });
        });
      },
    },
  };
}
