import { shopCommands } from '../helpText.ts';

/**
 * The `package.json` of a shop: one dependency, and its commands under the names by which every message calls them.
 *
 * @param wanted the version of the dependency, or where it comes from, as npm takes it
 */
export function shopPackage(name: string, wanted: string): string {
  const manifest = {
    name,
    private: true,
    scripts: shopScripts,
    dependencies: { straightface: wanted },
    // npm asks which packages may run a script when they are installed: this one fetches the Node that runs everything.
    allowScripts: { node: true, esbuild: false },
  };
  return `${JSON.stringify(manifest, null, 2)}\n`;
}

export const shopScripts: Readonly<Record<string, string>> = Object.fromEntries(
  Object.keys(shopCommands).map((command) => [command, `straightface ${command}`]),
);

/** As npm takes it for a name: small letters, digits and hyphens. */
export function packageName(folder: string): string {
  const plain = folder
    .toLowerCase()
    .normalize('NFD')
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '');
  return plain === '' || plain === 'straightface' ? 'reports' : plain.slice(0, 200);
}
