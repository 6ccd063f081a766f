import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';

import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { build, foldersFor, hashes, type Folders, type Run } from './builds.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from './contentFolder.ts';

/** `astro build`, as a host's preset or somebody who knows the framework types it. */
function astroBuild({ content, out, cache }: Folders): Run {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [resolve('node_modules/astro/bin/astro.mjs'), 'build', '--silent'],
    {
      encoding: 'utf8',
      env: {
        PATH: process.env['PATH'],
        HOME: process.env['HOME'],
        CONTENT_DIR: content,
        OUT_DIR: out,
        CACHE_DIR: cache,
        ASTRO_TELEMETRY_DISABLED: '1',
        NO_COLOR: '1',
      },
    },
  );
  return { status, said: stdout + stderr };
}

describe("the framework's own build", () => {
  test('writes the same bytes as npm run build', () => {
    const content = contentFolder({
      'shop.yaml': `${shop}address: https://example.test/fittings/\n`,
      'reports/two-heads/report.md': twoHeads(),
      'reports/two-heads/shots.csv': twoHeadsCsv,
    });
    const [ours, theirs] = [foldersFor(content), foldersFor(content)];
    expect(build(ours)).toMatchObject({ status: 0 });
    const run = astroBuild(theirs);
    expect(run.status, run.said).toBe(0);
    expect(Object.keys(hashes(ours.out)).length).toBeGreaterThan(30);
    expect(hashes(theirs.out)).toEqual(hashes(ours.out));
  });

  test('is stopped by what stops npm run build, with the same table, and nothing is written', () => {
    const contradicted =
      'claims: [{say: Birch carries at least 60 yards farther than Alder., metric: carry, more: birch, than: alder, by_at_least: 60 yd}]';
    const content = contentFolder({
      'shop.yaml': shop,
      'reports/sound/report.md': twoHeads(),
      'reports/sound/shots.csv': twoHeadsCsv,
      'reports/contradicted/report.md': twoHeads((front) =>
        front.replace('interests:', `${contradicted}\ninterests:`),
      ),
      'reports/contradicted/shots.csv': twoHeadsCsv,
      'reports/broken/report.md': '---\ntitle: "Two heads\n---\n',
      'reports/broken/shots.csv': twoHeadsCsv,
      'reports/without-session/report.md': twoHeads(),
    });
    const [ours, theirs] = [foldersFor(content), foldersFor(content)];
    const [own, run] = [build(ours), astroBuild(theirs)];
    expect([own.status, run.status]).toEqual([1, 1]);
    for (const kind of ['claim-contradicted', 'yaml-syntax', 'session-file-missing'])
      expect(run.said).toContain(`(${kind})`);
    expect(tableIn(run.said)).toBe(tableIn(own.said));
    expect(run.said).toContain('Nothing was written.');
    expect(run.said).not.toMatch(/^\s+at .+:\d+/m);
    expect([existsSync(ours.out), existsSync(theirs.out)]).toEqual([false, false]);
  });

  test('goes nowhere that no build may write into', () => {
    const content = contentFolder({
      'shop.yaml': shop,
      'reports/two-heads/report.md': twoHeads(),
      'reports/two-heads/shots.csv': twoHeadsCsv,
      'photos/bay.txt': 'mine',
    });
    const run = astroBuild({ ...foldersFor(content), out: content });
    expect([run.status, run.said]).toEqual([1, expect.stringContaining('which is the content folder')]);
    expect(readFileSync(join(content, 'photos/bay.txt'), 'utf8')).toBe('mine');
  });
});

/** From the count of problems to the last cure. */
function tableIn(said: string): string {
  const start = said.search(/^\d+ (?:error|warning)/m);
  const end = said.lastIndexOf('  to do ');
  expect(start).toBeGreaterThanOrEqual(0);
  return said.slice(start, said.indexOf('\n\n', end));
}
