import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { asksNobody } from '../../src/commands/buildEnvironment.ts';

/** Whether Astro would ask for newer versions of itself, as its own code decides on a machine that is no build server. */
function asks(environment: Readonly<Record<string, string>>): string {
  const script = `
    import { shouldCheckForUpdates } from ${JSON.stringify(resolve('node_modules/astro/dist/core/dev/update-check.js'))};
    const preferences = { get: async (name) => name === 'checkUpdates.enabled' ? true : 0 };
    console.log(await shouldCheckForUpdates(preferences));`;
  const { stdout } = spawnSync(process.execPath, ['--input-type=module', '-e', script], {
    encoding: 'utf8',
    env: { PATH: process.env['PATH'], ...environment },
  });
  return stdout.trim();
}

test('Astro asks nobody for newer versions of itself, as it would do', () => {
  expect(asks({})).toBe('true');
  expect(asks(asksNobody)).toBe('false');
});

test('a build is set so before Astro is loaded', () => {
  const script = `
    import { prepareEnvironment } from ${JSON.stringify(resolve('src/commands/buildEnvironment.ts'))};
    prepareEnvironment({ projectFolder: '.', cacheDir: '.cache' });
    console.log(JSON.stringify(process.env));`;
  const { stdout } = spawnSync(process.execPath, ['--input-type=module', '-e', script], {
    encoding: 'utf8',
    env: { PATH: process.env['PATH'], SITE: 'of somebody else' },
  });
  const environment: unknown = JSON.parse(stdout);
  expect(environment).toMatchObject({ ...asksNobody, NODE_ENV: 'production' });
  expect(environment).not.toHaveProperty('SITE');
});
