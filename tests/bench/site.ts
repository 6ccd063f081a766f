/**
 * Times of whole builds of N invented reports (four contenders, twelve shots each, all charts and the kit), beside bare
 * Astro writing the same bytes. Run by hand, on a machine that does nothing else:
 *
 *   node tests/bench/site.ts 10 100 1000
 *
 * Cold: nothing compiled, worked out or built before. Unchanged: once more. Changed: one report has other shots.
 * Pictures there: all is worked out anew but rasters, so cold less this is their price. Stages run one after the other;
 * pages are rendered by as many threads as there are processors.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { benchShots, writeBenchContent } from './content.ts';

interface Measured {
  readonly all: number;
  /** Time of all processors together: it does not mind what else the machine does. */
  readonly processor: number;
  readonly memory: number;
  readonly stages?: readonly (readonly [stage: string, milliseconds: number])[];
}

const seconds = (time: number): string => `${(time / 1000).toFixed(1)} s`;

function run(script: string, environment: Readonly<Record<string, string>>): Measured {
  // As `npm run build` starts it.
  const said = execFileSync(process.execPath, ['--max-semi-space-size=8', join('tests/bench', script)], {
    cwd: resolve('.'),
    encoding: 'utf8',
    env: { ...process.env, ...environment, ASTRO_TELEMETRY_DISABLED: '1' },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  return JSON.parse(said.trim().split('\n').at(-1) ?? '');
}

function print(name: string, { all, processor, memory, stages = [] }: Measured): void {
  const share = (time: number): string => `${seconds(time)} (${((100 * time) / all).toFixed(0)} %)`;
  const parts = stages.map(([stage, time]) => `${stage} ${share(time)}`).join(', ');
  console.log(
    `  ${name.padEnd(18)} ${seconds(all).padStart(8)} processor ${seconds(processor).padStart(8)} ${(memory / 1e9).toFixed(2)} GB   ${parts}`,
  );
}

for (const count of process.argv.slice(2).map(Number)) {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  const content = join(folder, 'content');
  const out = join(folder, 'out');
  const cache = join(folder, 'cache');
  writeBenchContent(content, count);
  rmSync('.cache/pages', { recursive: true, force: true });
  const build = (): Measured => run('buildOnce.ts', { CONTENT_DIR: content, OUT_DIR: out, CACHE_DIR: cache });
  console.log(`${count} reports`);
  const cold = build();
  print('cold', cold);
  const files = readdirSync(out, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  const bytes = files.reduce((sum, entry) => sum + statSync(join(entry.parentPath, entry.name)).size, 0);
  print('unchanged', build());
  writeFileSync(join(content, 'reports/four-heads-0001/shots.csv'), benchShots('another morning'));
  const changed = build();
  print('one changed', changed);
  for (const kept of ['reports', 'sites']) rmSync(join(cache, kept), { recursive: true });
  const drawn = build();
  print('pictures there', drawn);
  const bare = run('bareAstro.ts', { SITE: out });
  print('bare Astro', bare);
  const beside = run('bareAstro.ts', { SITE: out, CONCURRENCY: '16' });
  print('bare, 16 at a time', beside);
  const percent = (part: Measured, of: Measured): string => `${((100 * part.all) / of.all).toFixed(0)} %`;
  const each = (time: number): string => `${(time / count).toFixed(0)} ms`;
  console.log(`  ${files.length} files, ${(bytes / 1e6 / count).toFixed(2)} MB a report`);
  console.log(`  a report, cold: ${each(cold.all)}, processor ${each(cold.processor)}`);
  console.log(`  one changed: ${percent(changed, cold)} of cold`);
  const times = (of: Measured): string => (drawn.all / of.all).toFixed(1);
  console.log(`  all but rasters: ${times(bare)} x bare Astro, ${times(beside)} x with 16 at a time as here`);
  rmSync(folder, { recursive: true });
}
