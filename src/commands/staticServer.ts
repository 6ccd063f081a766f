import { existsSync, realpathSync, statSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { join, relative, sep } from 'node:path';
import serveFile from 'serve-handler';
import { systemWords } from '../problems/systemWords.ts';
import { ownAddress } from '../site/ownAddress.ts';

export interface StaticServer {
  /** Scheme, host and port, such as `http://127.0.0.1:4321`. */
  readonly origin: string;
  readonly close: () => Promise<void>;
}

interface Served {
  readonly folder: string;
  /** Where the folder stands on its host, such as `/tests/`, in plain letters; `/` if left out. */
  readonly base?: string;
  /** The first of the ports to try; any if left out. */
  readonly port?: number;
  /** How many ports are tried; one if left out. */
  readonly tries?: number;
  /** Answers by this machine's own names only: under any other one a page elsewhere could be asking. */
  readonly ownNamesOnly?: boolean;
}

const host = '127.0.0.1';

/** Serves a folder as a plain static host would, on this machine only. */
export async function serveFolder({
  folder,
  base = '/',
  port = 0,
  tries = 1,
  ownNamesOnly = false,
}: Served): Promise<StaticServer> {
  const server = createServer((request, response) => {
    const real = realFolder(folder);
    if (ownNamesOnly && ownAddress(request.headers.host ?? '') === null)
      response
        .writeHead(403, { 'content-type': 'text/plain' })
        .end('This site answers under localhost and 127.0.0.1 only.\n');
    else if (real === null)
      response.writeHead(404, { 'content-type': 'text/plain' }).end('There is no site here.\n');
    else void answer({ folder: real, base }, request, response);
  });
  const listening = await listen(server, port, tries);
  return {
    origin: `http://${host}:${listening}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        // Browsers keep connections open, and a closing server would wait for them.
        server.closeAllConnections();
      }),
  };
}

/** The folder itself, which a build replaces while it is served; null while there is none. */
function realFolder(folder: string): string | null {
  try {
    return realpathSync(folder);
  } catch (error) {
    systemWords(error);
    return null;
  }
}

/**
 * Says which file it is; the library sends it. By itself it knows no base path, moves `report.html` to `report`, and
 * follows folders that are links.
 */
async function answer(
  { folder, base }: { readonly folder: string; readonly base: string },
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { allow: 'GET, HEAD' }).end();
    return;
  }
  const path = pathOf(request.url ?? '/');
  if (path === '/' && base !== '/') {
    response.writeHead(302, { location: encodeURI(base) }).end();
    return;
  }
  const file = path?.startsWith(base) === true ? fileAt(folder, path.slice(base.length)) : null;
  if (file === 'folder') {
    response.writeHead(301, { location: `${encodeURI(path ?? '')}/` }).end();
    return;
  }
  if (file === null) {
    response.statusCode = path === null ? 400 : 404;
    // The page that says so is whole, whatever part of another was asked for.
    delete request.headers.range;
  }
  const named = relative(folder, file ?? join(folder, '404.html'));
  request.url = `/${named.split(sep).map(encodeURIComponent).join('/')}`;
  await serveFile(request, response, {
    public: folder,
    cleanUrls: false,
    directoryListing: false,
    headers: [
      { source: '**', headers: [{ key: 'Cache-Control', value: 'no-store' }] },
      {
        source: '**/*.xml',
        headers: [{ key: 'Content-Type', value: 'application/xml; charset=utf-8' }],
      },
    ],
  });
}

/** The path that was asked for; null where it cannot be read. */
function pathOf(url: string): string | null {
  try {
    const path = decodeURIComponent(new URL(url, `http://${host}`).pathname);
    return path.includes('\0') ? null : path;
  } catch {
    return null;
  }
}

/** The file for a path below the folder; `folder` where its slash is missing, null where there is none. */
function fileAt(folder: string, path: string): string | 'folder' | null {
  const asked = join(folder, path);
  if (!existsSync(asked)) return null;
  const real = realpathSync(asked);
  if (real !== folder && !real.startsWith(`${folder}${sep}`)) return null;
  if (statSync(real).isFile()) return path.endsWith('/') ? null : real;
  const index = join(real, 'index.html');
  if (!existsSync(index)) return null;
  return path === '' || path.endsWith('/') ? index : 'folder';
}

async function listen(server: Server, first: number, tries: number): Promise<number> {
  for (let port = first; ; port++) {
    try {
      await new Promise<void>((resolve, reject) => {
        server.once('error', reject);
        server.listen(port, host, () => {
          server.removeListener('error', reject);
          resolve();
        });
      });
      const bound = server.address();
      return typeof bound === 'object' && bound !== null ? bound.port : port;
    } catch (error) {
      const busy = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
      if (!busy || port + 1 >= first + tries) throw error;
    }
  }
}
