import { execFileSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, readdirSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

/** An empty folder into which the program was packed and installed. */
export interface Installed {
  readonly folder: string;
  /** The package as npm unpacks it. */
  readonly program: string;
  /** What npm links for `straightface`. */
  readonly command: string;
}

/**
 * Packs this checkout as `npm pack` does and unpacks it as `npm install` would, without asking anybody: its dependencies
 * are those of the checkout, beside it.
 */
export function installPacked(): Installed {
  const root = mkdtempSync(join(tmpdir(), 'straightface-packed-'));
  execFileSync('npm', ['pack', '--silent', '--pack-destination', root], { encoding: 'utf8' });
  const [packed = ''] = readdirSync(root);
  const folder = join(root, 'shop');
  const packages = join(folder, 'node_modules');
  const program = join(packages, 'straightface');
  mkdirSync(join(packages, '.bin'), { recursive: true });
  mkdirSync(program);
  execFileSync('tar', ['xzf', join(root, packed), '-C', program, '--strip-components=1']);
  for (const name of readdirSync('node_modules'))
    if (!name.startsWith('.')) symlinkSync(resolve('node_modules', name), join(packages, name));
  // As npm writes it down: by this, results of other versions of libraries are not believed.
  symlinkSync(resolve('node_modules/.package-lock.json'), join(packages, '.package-lock.json'));
  const command = join(packages, '.bin/straightface');
  chmodSync(join(program, 'lib/commands/launch.js'), 0o755);
  symlinkSync('../straightface/lib/commands/launch.js', command);
  return { folder, program, command };
}
