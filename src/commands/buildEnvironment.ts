/** Variables that bundlers and test runners set for themselves; inherited, they would change what pages are built. */
const foreign = ['BASE_URL', 'DEV', 'PROD', 'MODE', 'SSR', 'SITE', 'ASSETS_PREFIX'];

/** Astro would else tell its makers of each run, and ask a registry for newer versions of itself. */
export const asksNobody = { ASTRO_TELEMETRY_DISABLED: '1', ASTRO_DISABLE_UPDATE_CHECK: 'true' };

interface BuildPlaces {
  readonly projectFolder: string;
  readonly cacheDir: string;
}

/**
 * Makes this process one that builds for production in the project's folder, before the framework is loaded: it lays
 * its bundle into the working directory, and finds its packages from there.
 */
export function prepareEnvironment({ projectFolder, cacheDir }: BuildPlaces): void {
  for (const name of foreign) delete process.env[name];
  Object.assign(process.env, {
    NODE_ENV: 'production',
    ...asksNobody,
    // Named from the working directory of before.
    CACHE_DIR: cacheDir,
  });
  process.chdir(projectFolder);
}
