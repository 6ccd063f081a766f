import { spawn } from 'node:child_process';
import { createServer } from 'node:net';
import { resolve } from 'node:path';
import type { Folders } from './builds.ts';

/** `npm run dev` as a process of its own. */
export interface DevServer {
  /** All that it has said so far. */
  readonly said: () => string;
  readonly origin: string;
  readonly stop: () => Promise<void>;
}

/** A port that nobody listens to. */
export function freePort(): Promise<number> {
  return new Promise((done) => {
    const probe = createServer().listen(0, () => {
      const address = probe.address();
      probe.close(() => done(typeof address === 'object' && address !== null ? address.port : 0));
    });
  });
}

/** Starts it and waits, three minutes at most, until it serves. */
export async function startDev({ content, out, cache }: Folders): Promise<DevServer> {
  const port = await freePort();
  const { PATH = '', HOME = '' } = process.env;
  let said = '';
  const server = spawn(process.execPath, ['src/commands/dev.ts', '--port', String(port)], {
    cwd: resolve('.'),
    env: { PATH, HOME, CONTENT_DIR: content, OUT_DIR: out, CACHE_DIR: cache, NO_COLOR: '1' },
  });
  for (const stream of [server.stdout, server.stderr])
    stream.on('data', (part: Buffer) => {
      said += part.toString();
    });
  for (let tries = 0; tries < 900 && !said.includes('become drafts'); tries += 1)
    await new Promise((done) => setTimeout(done, 200));
  if (!said.includes('become drafts')) throw new Error(`It does not serve. It said:\n${said}`);
  return {
    said: () => said,
    origin: `http://localhost:${port}`,
    stop: async () => {
      const gone = new Promise((done) => server.once('exit', done));
      server.kill();
      await gone;
    },
  };
}
