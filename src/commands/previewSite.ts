import { createReadStream, existsSync, realpathSync, statSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { extname, join, sep } from 'node:path';
import { openContentFolder } from '../site/contentFiles.ts';
import { readShared } from '../site/sharedFiles.ts';
import type { Terminal } from './terminal.ts';

export interface PreviewRequest {
  readonly contentDir: string;
  readonly outDir: string;
  /** Null: the usual one, or the next that is free; 0: any. */
  readonly port: number | null;
  readonly terminal: Terminal;
}

export interface Preview {
  /** Of the first page. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

const usualPort = 4321;
const host = '127.0.0.1';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.xml': 'application/xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
};

/** Serves the built site as a plain static host would; null, which is then said, where none has been built. */
export async function previewSite({
  contentDir,
  outDir,
  port,
  terminal,
}: PreviewRequest): Promise<Preview | null> {
  if (!existsSync(join(outDir, 'index.html'))) {
    terminal.writeError(`There is no site in ${outDir}. Build it first: npm run build\n`);
    return null;
  }
  // The pages were built for the place that the shop states.
  const base = decodeURI(readShared(openContentFolder(contentDir)).shared.shop?.address?.base ?? '/');
  const server = createServer((request, response) =>
    answer({ outDir: realpathSync(outDir), base }, request, response),
  );
  const listening = await listen(server, port);
  const address = `http://${host}:${listening}${encodeURI(base)}`;
  terminal.write(`${outDir} is served at ${address}\nStop it with Ctrl-C.\n`);
  return {
    address,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        // Browsers keep connections open, and a closing server would wait for them.
        server.closeAllConnections();
      }),
  };
}

interface Served {
  readonly outDir: string;
  readonly base: string;
}

function answer({ outDir, base }: Served, request: IncomingMessage, response: ServerResponse): void {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { allow: 'GET, HEAD' }).end();
    return;
  }
  const path = pathOf(request.url ?? '/');
  if (path === '/' && base !== '/') {
    response.writeHead(302, { location: encodeURI(base) }).end();
    return;
  }
  const found = path?.startsWith(base) === true ? fileAt(outDir, path.slice(base.length)) : null;
  if (found === 'folder') {
    response.writeHead(301, { location: `${encodeURI(path ?? '')}/` }).end();
    return;
  }
  const missing = join(outDir, '404.html');
  const file = found ?? (existsSync(missing) ? missing : null);
  const status = path === null ? 400 : found === null ? 404 : 200;
  response.writeHead(status, {
    'content-type': types[extname(file ?? '.txt')] ?? 'application/octet-stream',
    'cache-control': 'no-store',
  });
  if (file === null || request.method === 'HEAD') response.end();
  else createReadStream(file).pipe(response);
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
function fileAt(outDir: string, path: string): string | 'folder' | null {
  const asked = join(outDir, path);
  if (asked !== outDir && !asked.startsWith(`${outDir}${sep}`)) return null;
  if (!existsSync(asked)) return null;
  const real = realpathSync(asked);
  if (real !== outDir && !real.startsWith(`${outDir}${sep}`)) return null;
  if (statSync(asked).isFile()) return path.endsWith('/') ? null : asked;
  if (!existsSync(join(asked, 'index.html'))) return null;
  return path === '' || path.endsWith('/') ? join(asked, 'index.html') : 'folder';
}

async function listen(server: Server, wanted: number | null): Promise<number> {
  for (let port = wanted ?? usualPort; ; port++) {
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
      if (!busy || wanted !== null || port >= usualPort + 20) throw error;
    }
  }
}
