import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'astro';

/**
 * Astro with nothing to do but to write the files of `SITE` once more, through one endpoint: the floor under any site
 * of so many files; `CONCURRENCY` of them beside one another, by Astro's default 1. Prints milliseconds. Started by
 * `site.ts`.
 */
const site = process.env['SITE'] ?? '';
const root = join(process.cwd(), '.cache', 'bench-astro');
rmSync(root, { recursive: true, force: true });
mkdirSync(join(root, 'src/pages'), { recursive: true });
writeFileSync(
  join(root, 'src/pages/[...path].ts'),
  `import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
const site = ${JSON.stringify(site)};
export const getStaticPaths = () => readdirSync(site, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => ({ params: { path: relative(site, join(entry.parentPath, entry.name)) } }));
export const GET = ({ params }) => new Response(new Uint8Array(readFileSync(join(site, params.path))));
`,
);
const start = performance.now();
await build({
  root,
  outDir: join(root, 'out'),
  logLevel: 'warn',
  build: { concurrency: Number(process.env['CONCURRENCY'] ?? 1) },
});
const all = performance.now() - start;
const { user, system } = process.cpuUsage();
const { maxRSS } = process.resourceUsage();
console.log(JSON.stringify({ all, processor: (user + system) / 1000, memory: maxRSS * 1024 }));
rmSync(root, { recursive: true, force: true });
