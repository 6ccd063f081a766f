/** Variables that bundlers and test runners set for themselves; inherited, they would change what pages are built. */
const foreign = ['BASE_URL', 'DEV', 'PROD', 'MODE', 'SSR', 'SITE', 'ASSETS_PREFIX'];

/** Astro would else tell its makers of each run, and ask a registry for newer versions of itself. */
export const asksNobody = { ASTRO_TELEMETRY_DISABLED: '1', ASTRO_DISABLE_UPDATE_CHECK: 'true' };

/** Runs `work` with the environment of a production build of one content folder, and puts the old one back. */
export async function inBuildEnvironment<Result>(
  contentDir: string,
  work: () => Promise<Result>,
): Promise<Result> {
  const before = { ...process.env };
  for (const name of foreign) delete process.env[name];
  Object.assign(process.env, {
    NODE_ENV: 'production',
    ...asksNobody,
    // The pages run inside the bundle and are handed the folder in no other way.
    CONTENT_DIR: contentDir,
  });
  try {
    return await work();
  } finally {
    for (const name of Object.keys(process.env)) if (!(name in before)) delete process.env[name];
    Object.assign(process.env, before);
  }
}
