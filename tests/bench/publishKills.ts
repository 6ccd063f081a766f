/**
 * Sites killed while they replace one another: is what stands there whole, is nothing of others lost, does the next
 * build put it right? Run by hand, with how many kills:
 *
 *   node tests/bench/publishKills.ts 100
 *
 * Every other time a file of somebody lies in the folder, so that files are replaced one by one.
 */
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { publishSite } from '../../src/commands/publishSite.ts';
import { tidyBeside } from '../../src/commands/siteLeftovers.ts';
import { filesBelow, markSite } from '../../src/site/siteMark.ts';
import { seededRandom } from '../../src/stats/random.ts';

const files = 400;

function writeSite(folder: string, version: number): void {
  for (let index = 0; index < files; index += 1) {
    const file = join(
      folder,
      `reports/r${index % 100}/${version % 2}-${index % 3 === 0 ? 'only' : 'all'}-${index}.html`,
    );
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, `${version} `.repeat(500));
  }
  writeFileSync(join(folder, 'index.html'), `${version} `.repeat(500));
  markSite(folder, 0o022);
}

/** Versions of the whole files that lie in a site; null for a file that is not whole. */
function versionsIn(folder: string): ReadonlySet<number | null> {
  return new Set(
    filesBelow(folder)
      .filter((path) => path.endsWith('.html') && !path.startsWith('.'))
      .map((path) => {
        const text = readFileSync(join(folder, path), 'utf8');
        const version = Number(text.split(' ')[0]);
        return text === `${version} `.repeat(500) ? version : null;
      }),
  );
}

const [, , count = '100', built, outDir] = process.argv;
if (built !== undefined && outDir !== undefined) {
  tidyBeside(outDir, dirname(outDir));
  console.log('ready');
  publishSite({ built, outDir, projectFolder: dirname(outDir) });
} else {
  const root = mkdtempSync(join(tmpdir(), 'publish-kills-'));
  const random = seededRandom('publish kills');
  const seen = { killed: 0, ended: 0, whole: 0, aside: 0, mixed: 0, torn: 0, right: 0, kept: 0 };
  for (let index = 0; index < Number(count); index += 1) {
    const own = join(root, String(index));
    const site = join(own, 'site');
    for (const [name, version] of [
      ['first', 1],
      ['second', 2],
      ['third', 3],
    ] as const) {
      mkdirSync(join(own, name), { recursive: true });
      writeSite(join(own, name), version);
    }
    publishSite({ built: join(own, 'first'), outDir: site, projectFolder: own });
    const isShared = index % 2 === 1;
    if (isShared) writeFileSync(join(site, 'reports/r1/notes.txt'), 'kept');
    const running = spawn(
      process.execPath,
      [fileURLToPath(import.meta.url), count, join(own, 'second'), site],
      {
        stdio: ['ignore', 'pipe', 'inherit'],
      },
    );
    const ended = new Promise<string | null>((done) => running.on('exit', (_status, how) => done(how)));
    await new Promise((ready) => running.stdout.once('data', ready));
    await setTimeout(random.uniform() * (isShared ? 200 : 60));
    running.kill('SIGKILL');
    if ((await ended) === 'SIGKILL') seen.killed += 1;
    else seen.ended += 1;
    if (!existsSync(site)) seen.aside += 1;
    else {
      const versions = versionsIn(site);
      if (versions.has(null)) seen.torn += 1;
      else if (versions.size === 1) seen.whole += 1;
      else seen.mixed += 1;
    }
    tidyBeside(site, own);
    publishSite({ built: join(own, 'third'), outDir: site, projectFolder: own });
    const beside = readdirSync(own).filter((name) => name.startsWith('.site'));
    const own3 = [...versionsIn(site)];
    if (
      own3.length === 1 &&
      own3[0] === 3 &&
      beside.length === 0 &&
      filesBelow(site).length === files + 1 + (isShared ? 1 : 0)
    )
      seen.right += 1;
    if (!isShared || readFileSync(join(site, 'reports/r1/notes.txt'), 'utf8') === 'kept') seen.kept += 1;
    if (index % 10 === 9) console.log(index + 1, JSON.stringify(seen));
  }
}
