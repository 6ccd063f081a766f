/**
 * Time and most memory of sessions of very many shots: `check` for every number of rows, columns, contenders and
 * orders below, and one build from no cache. Run by hand, on a machine that does nothing else:
 *
 *   node tests/bench/large.ts check 16000 60000 199990
 *   node tests/bench/large.ts build 500 1000 2000 20000
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { writeLargeContent, type LargeDesign } from './largeContent.ts';

const designs: readonly Omit<LargeDesign, 'rows'>[] = [
  { columns: 'carry', contenders: 2, hitters: 1, order: 'rounds' },
  { columns: 'twelve', contenders: 2, hitters: 1, order: 'rounds' },
  { columns: 'twelve', contenders: 6, hitters: 1, order: 'rounds' },
  { columns: 'twelve', contenders: 3, hitters: 1, order: 'visits' },
  { columns: 'twelve', contenders: 3, hitters: 1, order: 'one-after-another' },
  { columns: 'twelve', contenders: 3, hitters: 3, order: 'rounds' },
  { columns: 'twelve', contenders: 3, hitters: 8, order: 'rounds' },
];

const [command = '', ...counts] = process.argv.slice(2);
const script = command === 'check' ? 'checkOnce.ts' : command === 'build' ? 'buildOnce.ts' : null;
if (script === null) throw new Error('Say "check" or "build", then numbers of rows.');

for (const rows of counts.map(Number)) {
  for (const design of command === 'check' ? designs : designs.slice(0, 2)) {
    const folder = mkdtempSync(join(tmpdir(), 'large-'));
    const content = join(folder, 'content');
    writeLargeContent(content, { ...design, rows }, 'All in one morning.');
    const { stdout, status } = spawnSync(process.execPath, [join('tests/bench', script)], {
      cwd: resolve('.'),
      encoding: 'utf8',
      env: {
        ...process.env,
        CONTENT_DIR: content,
        OUT_DIR: join(folder, 'out'),
        CACHE_DIR: join(folder, 'cache'),
        ASTRO_TELEMETRY_DISABLED: '1',
      },
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    const what = `${String(rows).padStart(7)} rows, ${design.columns}, ${design.contenders} contenders, ${design.hitters} hitters, ${design.order}`;
    if (status === 0) {
      const { all, processor, memory } = JSON.parse(stdout.trim().split('\n').at(-1) ?? '');
      console.log(
        `${what.padEnd(70)} ${(all / 1000).toFixed(1).padStart(6)} s, processor ${(processor / 1000).toFixed(1).padStart(6)} s, ${(memory / 1e6).toFixed(0).padStart(5)} MB`,
      );
    } else console.log(`${what.padEnd(70)} failed`);
    rmSync(folder, { recursive: true });
  }
}
