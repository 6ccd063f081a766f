import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';
import { createGzip } from 'node:zlib';

export interface Host {
  /** Scheme, host and port. */
  readonly origin: string;
  readonly close: () => void;
}

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
};

/** What is small already is sent as it is. */
const zippedTypes: ReadonlySet<string> = new Set(['.html', '.css', '.js', '.json', '.svg']);

/** Serves a folder as a plain static host does: texts by gzip at its usual level, connections kept. */
export async function zippedHost(folder: string): Promise<Host> {
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://host').pathname);
    const asked = join(folder, path);
    const file = existsSync(asked) && statSync(asked).isDirectory() ? join(asked, 'index.html') : asked;
    if (!existsSync(file)) {
      response.writeHead(404).end();
      return;
    }
    const type = types[extname(file)] ?? 'application/octet-stream';
    const bytes = createReadStream(file);
    if (zippedTypes.has(extname(file))) {
      response.writeHead(200, { 'content-type': type, 'content-encoding': 'gzip' });
      bytes.pipe(createGzip()).pipe(response);
    } else {
      response.writeHead(200, { 'content-type': type, 'content-length': statSync(file).size });
      bytes.pipe(response);
    }
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  const bound = server.address();
  if (bound === null || typeof bound === 'string') throw new Error('The host has no port.');
  return {
    origin: `http://127.0.0.1:${bound.port}`,
    close: () => {
      server.close();
      server.closeAllConnections();
    },
  };
}
