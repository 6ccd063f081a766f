import type { AstroIntegration } from 'astro';
import { contentFolder } from './folders.ts';

/** Live reload in `dev` for a content folder that may lie outside the project. */
export function contentWatch(): AstroIntegration {
  return {
    name: 'content-watch',
    hooks: {
      'astro:server:setup': ({ server }) => {
        const folder = contentFolder();
        server.watcher.add(folder);
        server.watcher.on('all', (_event, path) => {
          if (!path.startsWith(folder)) return;
          for (const environment of Object.values(server.environments))
            environment.moduleGraph.invalidateAll();
          server.environments.client.hot.send({ type: 'full-reload' });
        });
      },
    },
  };
}
