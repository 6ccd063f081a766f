import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';

/** Runs everything that must hold, one step after another, and stops at the first that fails. */
const require = createRequire(import.meta.url);

const steps: readonly (readonly [script: string, ...args: string[]])[] = [
  [require.resolve('prettier/bin/prettier.cjs'), '--check', '--log-level', 'warn', '.'],
  [require.resolve('astro/bin/astro.mjs'), 'check', '--minimumSeverity', 'hint'],
  [require.resolve('vitest/vitest.mjs'), 'run', ...process.argv.slice(2)],
];

for (const step of steps) {
  const { status } = spawnSync(process.execPath, step, {
    stdio: 'inherit',
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', TZ: 'UTC' },
  });
  if (status !== 0) process.exit(status ?? 1);
}
