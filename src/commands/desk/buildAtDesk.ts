import { spawn } from 'node:child_process';
import type { Built } from '../../desk/deskWork.ts';
import { moduleFile } from '../ownCode.ts';

/** A process of its own, as the framework cannot serve and build in one. */
const command = moduleFile('commands/build.ts');

/** Builds the site as `npm run build` does; who asks while a build is at work gets the same one. */
export function buildAtDesk(contentDir: string, outDir: string): () => Promise<Built> {
  let running: Promise<Built> | null = null;
  return () => {
    running ??= build(contentDir, outDir).finally(() => {
      running = null;
    });
    return running;
  };
}

function build(contentDir: string, outDir: string): Promise<Built> {
  return new Promise((done) => {
    let said = '';
    const child = spawn(process.execPath, [command], {
      env: { ...process.env, CONTENT_DIR: contentDir, OUT_DIR: outDir, NO_COLOR: '1' },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    for (const stream of [child.stdout, child.stderr])
      stream.on('data', (part: Buffer) => {
        said += part.toString();
      });
    child.on('error', (error) => done({ built: false, said: `${said}${error.message}\n`, outDir }));
    child.on('close', (status) => done({ built: status === 0, said, outDir }));
  });
}
