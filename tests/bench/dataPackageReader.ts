/**
 * Reads the data package of every report of a built site with the published reader for Node, which casts every cell of
 * every table by its schema:
 *
 *   npm install --no-save datapackage@1.1.10
 *   node tests/bench/dataPackageReader.ts dist
 *
 * It is no dependency: it knows version 1 of the standard (which version 2 extends), and no longer gets new versions of
 * what it stands on.
 */
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

interface Reader {
  readonly Package: {
    load(path: string): Promise<{
      readonly valid: boolean;
      readonly errors: readonly Error[];
      readonly resources: readonly {
        readonly name: string;
        readonly tabular: boolean;
        read(): Promise<readonly unknown[]>;
      }[];
    }>;
  };
}

const [, , site = 'dist'] = process.argv;
const name = 'datapackage';
const { default: reader } = (await import(name)) as { readonly default: Reader };
const reports = join(site, 'reports');
const files = readdirSync(reports)
  .map((slug) => join(reports, slug, 'datapackage.json'))
  .filter((file) => existsSync(file));
let wrong = files.length === 0 ? 1 : 0;
for (const file of files) {
  const { valid, errors, resources } = await reader.Package.load(file);
  if (!valid) wrong += 1;
  const rows = [];
  for (const resource of resources.filter(({ tabular }) => tabular)) {
    try {
      rows.push(`${resource.name} ${(await resource.read()).length}`);
    } catch (error) {
      wrong += 1;
      rows.push(`${resource.name}: ${String(error)}`);
    }
  }
  console.log([file, valid ? 'valid' : 'not valid', ...errors.map(String), ...rows].join('\n  '));
}
process.exitCode = wrong === 0 ? 0 : 1;
