import { randomBytes } from 'node:crypto';
import type { IncomingMessage } from 'node:http';
import { getRequestListener } from '@hono/node-server';
import type { AstroIntegration } from 'astro';
import { deskApp } from '../../desk/deskApp.ts';
import { deskKeys, type DeskKeys } from '../../desk/deskKeys.ts';
import { deskPlaces } from '../../desk/deskPlaces.ts';
import type { DeskWork } from '../../desk/deskWork.ts';
import { liveSite } from '../../site/liveSite.ts';

interface DeskRequest {
  readonly contentDir: string;
  readonly projectFolder: string;
  readonly work: DeskWork;
  /** Told when somebody came to the desk without a key. */
  readonly uninvited: () => void;
}

/** The desk, and what its address needs. */
interface Desk {
  readonly integration: AstroIntegration;
  /** Where it opens, with the word that lets a visitor in. @param origin where the site is served */
  readonly address: (origin: string) => string;
}

/** The desk beside the pages that `dev` shows, so that they can stand in a frame of it. */
export function desk({ contentDir, projectFolder, work, uninvited }: DeskRequest): Desk {
  const keys: DeskKeys = deskKeys(() => randomBytes(24).toString('base64url'));
  let base = '/';
  const integration: AstroIntegration = {
    name: 'desk',
    hooks: {
      'astro:config:done': ({ config }) => {
        base = config.base;
      },
      'astro:server:setup': ({ server }) => {
        const app = deskApp({
          contentDir,
          base,
          keys,
          work,
          site: () => liveSite({ contentDir, projectFolder }, { fresh: true }),
          uninvited,
        });
        const answer = getRequestListener(app.fetch, { overrideGlobalObjects: false });
        server.middlewares.use((request, response, next) => {
          if (!isLoopback(request) || !isOfDesk(request, base)) return next();
          void answer(request, response);
        });
      },
    },
  };
  return {
    integration,
    address: (origin) =>
      `${new URL(deskPlaces(base).front, origin).href}?token=${encodeURIComponent(keys.invitation())}`,
  };
}

/** Whether a request comes from this very machine, whatever the server listens to. */
const isLoopback = ({ socket }: IncomingMessage): boolean =>
  /^(?:::1|(?:::ffff:)?127(?:\.\d+){3})$/.test(socket.remoteAddress ?? '');

/** The address without the base below which the site lies; the framework takes it off before or after us. */
function isOfDesk(request: IncomingMessage, base: string): boolean {
  const root = base.replace(/\/$/, '');
  const url = request.url ?? '';
  const own = root !== '' && url.startsWith(`${root}/`) ? url.slice(root.length) : url;
  if (!/^\/desk(?:[/?]|$)/.test(own)) return false;
  request.url = own;
  return true;
}
