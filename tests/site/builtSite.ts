import { spawn } from 'node:child_process';
import { resolve } from 'node:path';

/** Builds a content folder as `npm run build` does, in a process of its own. @throws with all it said where it fails */
export function builtSite(
  contentDir: string,
  outDir: string,
  more: Readonly<Record<string, string>> = {},
): Promise<void> {
  return new Promise((done, fail) => {
    const said: string[] = [];
    const command = spawn(process.execPath, ['src/commands/build.ts'], {
      cwd: resolve('.'),
      env: { ...process.env, NO_COLOR: '1', CONTENT_DIR: contentDir, OUT_DIR: outDir, ...more },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    for (const stream of [command.stdout, command.stderr])
      stream.on('data', (part: Buffer) => said.push(part.toString()));
    command.once('error', fail);
    command.once('exit', (status) =>
      status === 0 ? done() : fail(new Error(`The site of ${contentDir} does not build:\n${said.join('')}`)),
    );
  });
}
