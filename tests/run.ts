import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/** Runs everything that must hold, one step after another, and stops at the first that fails. */
const require = createRequire(import.meta.url);

/** The script behind a package's command; not every package lets it be resolved by name. */
const script = (name: string, path: string): string =>
  join(dirname(require.resolve(`${name}/package.json`)), path);

const steps: readonly (readonly [script: string, ...args: string[]])[] = [
  [script('prettier', 'bin/prettier.cjs'), '--check', '--log-level', 'warn', '.'],
  [script('astro', 'bin/astro.mjs'), 'check', '--minimumSeverity', 'warning'],
  [script('vitest', 'vitest.mjs'), 'run', ...process.argv.slice(2)],
];

for (const step of steps) {
  const { status } = spawnSync(process.execPath, step, {
    stdio: 'inherit',
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', TZ: 'UTC' },
  });
  if (status !== 0) process.exit(status ?? 1);
}
