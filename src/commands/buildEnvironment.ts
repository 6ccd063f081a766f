/** Variables that bundlers and test runners set for themselves; inherited, they would change what pages are built. */
const foreign = ['BASE_URL', 'DEV', 'PROD', 'MODE', 'SSR', 'SITE', 'ASSETS_PREFIX'];

/** Makes the environment of this process that of a production build; before the framework is loaded. */
export function prepareEnvironment(): void {
  for (const name of foreign) delete process.env[name];
  Object.assign(process.env, { NODE_ENV: 'production', ASTRO_TELEMETRY_DISABLED: '1' });
}
