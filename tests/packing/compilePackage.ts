import { rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { rolldown } from 'rolldown';

/** Modules that Node starts by name, in a package: all that `moduleFile()` is asked for, and what npm links. */
const entries = [
  'commands/launch',
  'commands/straightface',
  'commands/build',
  'commands/reportWorker',
  'commands/rendering/compileProcess',
  'site/givenSite',
];

/**
 * Compiles the commands into `lib/`, since under `node_modules` Node reads no TypeScript: few files, which are sooner
 * read than a thousand. Packages stay outside; pages and styles are packed as they are, for the framework.
 */
export async function compilePackage(root: string): Promise<void> {
  removeCompiled(root);
  const bundle = await rolldown({
    cwd: root,
    input: Object.fromEntries(entries.map((entry) => [entry, join(root, 'src', `${entry}.ts`)])),
    platform: 'node',
    // Whatever the compiler itself adds is no dependency, and is compiled in.
    external: (id) => !/^\.{0,2}\//.test(id) && !id.startsWith('@oxc-project/runtime/'),
  });
  await bundle.write({
    dir: compiledIn(root),
    format: 'esm',
    entryFileNames: '[name].js',
    chunkFileNames: 'chunks/[name]-[hash].js',
  });
  await bundle.close();
}

/** A checkout runs its sources, and nothing that is compiled is to lie in it for longer than it is packed. */
export function removeCompiled(root: string): void {
  rmSync(compiledIn(root), { recursive: true, force: true });
}

const compiledIn = (root: string): string => join(root, 'lib');

if (import.meta.main) {
  const root = resolve(import.meta.dirname, '../..');
  if (process.argv.includes('--remove')) removeCompiled(root);
  else await compilePackage(root);
}
