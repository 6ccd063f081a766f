import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import {
  copyFileSync,
  cpSync,
  existsSync,
  linkSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { fewReports } from '../../src/commands/reportWorkers.ts';
import { version } from '../../src/site/version.ts';
import { barePackages } from '../packing/bareImports.ts';
import { installPacked, type Installed } from '../packing/installPacked.ts';
import { build, foldersFor, hashes, newFolder } from './builds.ts';
import { twoHeads, twoHeadsCsv } from './contentFolder.ts';
import { freePort } from './devServer.ts';

let shop: Installed;

/** A Node at another place than the packaged one, as one of the machine's own. */
let otherNode = '';

beforeAll(() => {
  shop = installPacked();
  otherNode = join(mkdtempSync(join(tmpdir(), 'straightface-node-')), 'node');
  try {
    linkSync(process.execPath, otherNode);
  } catch {
    // On another disk.
    copyFileSync(process.execPath, otherNode);
  }
});

/** As from a shell in the folder of the shop, with that Node and no variable of ours. */
const started = (more: Readonly<Record<string, string>> = {}): { cwd: string; env: NodeJS.ProcessEnv } => ({
  cwd: shop.folder,
  env: { PATH: process.env['PATH'] ?? '', HOME: process.env['HOME'] ?? '', NO_COLOR: '1', ...more },
});

function straightface(...typed: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(otherNode, [shop.command, ...typed], {
    ...started(),
    encoding: 'utf8',
  });
  return { status, said: stdout + stderr };
}

const read = (path: string): string => readFileSync(join(shop.folder, path), 'utf8');
const manifest: {
  readonly dependencies: Readonly<Record<string, string>>;
  readonly optionalDependencies: Readonly<Record<string, string>>;
} = JSON.parse(readFileSync('package.json', 'utf8'));

describe('the package', () => {
  test('holds no test, no example, no content but its reference, and no TypeScript for Node', () => {
    expect(readdirSync(shop.program).sort()).toEqual(
      ['.github', 'CHANGELOG.md', 'LICENSE', 'README.md', 'content', 'lib', 'package.json', 'public', 'src']
        .concat('tsconfig.json')
        .sort(),
    );
    expect(readdirSync(join(shop.program, 'content'))).toEqual(['README.md']);
    const components = readdirSync(join(shop.program, 'src/components'));
    expect(components).toContain('Answer.astro');
    expect(components.filter((name) => /example/.test(name))).toEqual([]);
    const compiled = readdirSync(join(shop.program, 'lib'), { recursive: true, encoding: 'utf8' });
    expect(compiled.filter((path) => /\.\w+$/.test(path) && !path.endsWith('.js'))).toEqual([]);
  });

  test('leaves nothing compiled in the checkout', () => {
    expect(existsSync('lib')).toBe(false);
  });

  test('holds every module that Node is to start by its name', () => {
    const asked = readdirSync('src', { recursive: true, encoding: 'utf8' })
      .filter((path) => path.endsWith('.ts'))
      .flatMap((path) => [...readFileSync(join('src', path), 'utf8').matchAll(/moduleFile\('([^']+)'\)/g)])
      .map(([, path = '']) => path.replace(/\.ts$/, '.js'));
    expect(asked.length).toBeGreaterThan(2);
    expect(asked.filter((path) => !existsSync(join(shop.program, 'lib', path)))).toEqual([]);
  });

  test.each(['lib', 'src'])('names every package that %s imports among its dependencies', (folder) => {
    const imported = barePackages(join(shop.program, folder));
    expect(imported.size).toBeGreaterThan(15);
    expect([...imported].filter(([name]) => !(name in manifest.dependencies))).toEqual([]);
  });
});

describe('straightface', () => {
  test('runs with whichever Node reads it', () => {
    expect(straightface('--version')).toEqual({ status: 0, said: `${version}\n` });
    expect(straightface('hlep').status).toBe(1);
  });

  test('runs the command with the Node that comes along, where there is one', () => {
    writeFileSync(join(shop.folder, 'node.cjs'), 'process.stderr.write(process.execPath + "\\n")');
    const run = spawnSync(otherNode, [shop.command, '--version'], {
      ...started({ NODE_OPTIONS: `--require ${join(shop.folder, 'node.cjs')}` }),
      encoding: 'utf8',
    });
    const packaged = resolve('node_modules/node/bin/node');
    expect(run.stderr.trim().split('\n')).toEqual(existsSync(packaged) ? [otherNode, packaged] : [otherNode]);
  });

  test('says what to do where none came along and the own one is too old', () => {
    const alone = newFolder('straightface');
    cpSync(shop.program, alone, { recursive: true });
    const old = "data:text/javascript,Object.defineProperty(process.versions,'node',{value:'20.11.1'})";
    const { status, stderr } = spawnSync(
      otherNode,
      ['--import', old, join(alone, 'lib/commands/launch.js'), 'check'],
      { ...started(), encoding: 'utf8' },
    );
    expect([status, stderr]).toEqual([
      1,
      'Straightface needs Node 22.18 or newer, and this is 20.11.1. The Node that comes with it is not installed: allow its script (allowScripts in package.json) and run npm ci, or install Node 24.\n',
    ]);
  });

  test('without its packages says which one is missing', () => {
    const alone = newFolder('straightface');
    cpSync(shop.program, alone, { recursive: true });
    const launch = join(alone, 'lib/commands/launch.js');
    const { status, stderr } = spawnSync(otherNode, [launch, 'check'], { ...started(), encoding: 'utf8' });
    expect(status).toBe(1);
    expect(stderr).toMatch(/^A package is missing: Cannot find package '\S+' imported from .*\.\nRun npm ci/);
  });
});

describe('a shop that begins with it', () => {
  const session = resolve('tests/fixtures/csv/semicolon-comma-decimal.csv');
  const content = (): string => join(shop.folder, 'content');

  test('writes its folder, is told what to fill in, and drafts a session', () => {
    expect(straightface('init', '.')).toMatchObject({ status: 0 });
    expect(straightface('check').said).toContain('shop.yaml:7:1  name');
    writeFileSync(
      join(content(), 'shop.yaml'),
      read('content/shop.yaml').replace('\nname:\n', '\nname: Example Golf Workshop\n'),
    );
    expect(straightface('draft', session, '--slug', 'first')).toMatchObject({ status: 0 });
    expect(readFileSync(join(content(), 'reports/first', 'semicolon-comma-decimal.csv'))).toEqual(
      readFileSync(session),
    );
    expect(straightface('check', 'first').said).toContain('Checked 1 report: ');
    expect(straightface('migrate')).toMatchObject({ status: 0 });
  });

  test('builds what this checkout builds, byte for byte, by workers too', () => {
    // With so many, workers do it.
    for (let count = 1; count <= fewReports + 1; count += 1) {
      const report = join(content(), `reports/heads-${count}`);
      mkdirSync(report);
      writeFileSync(join(report, 'shots.csv'), twoHeadsCsv);
      writeFileSync(
        join(report, 'report.md'),
        twoHeads((front) => front.replace('Two heads', `Two heads, test ${count}`)),
      );
    }
    const built = straightface('build');
    expect(built.status, built.said).toBe(0);
    expect(built.said).toContain('6 reports are new or changed');
    const here = foldersFor(content());
    const run = build(here);
    expect(run.status, run.said).toBe(0);
    expect(Object.keys(hashes(here.out)).length).toBeGreaterThan(100);
    expect(hashes(join(shop.folder, 'dist'))).toEqual(hashes(here.out));
    expect(straightface('build').said).toContain('Nothing has changed since the last build.');
  });

  test('edits it live, and a signal to the command ends all that it started', async () => {
    const port = await freePort();
    const server = spawn(otherNode, [shop.command, 'dev', '--port', String(port)], started());
    let said = '';
    for (const stream of [server.stdout, server.stderr])
      stream.on('data', (part: Buffer) => (said += part.toString()));
    while (!said.includes('become drafts') && server.exitCode === null)
      await new Promise((done) => setTimeout(done, 100));
    const origin = `http://localhost:${port}`;
    const ended = once(server, 'exit');
    try {
      const page = await (await fetch(`${origin}/reports/heads-1/`)).text();
      const fonts = [...page.matchAll(/href="([^"]+\.woff2)"/g)].map(([, path = '']) => path);
      expect(fonts.length, said).toBeGreaterThan(1);
      for (const path of fonts) expect([path, (await fetch(origin + path)).status]).toEqual([path, 200]);
      expect((await fetch(`${origin}/desk/`)).status).toBe(403);
    } finally {
      server.kill('SIGTERM');
    }
    expect(await ended).toEqual([0, null]);
    await expect(fetch(origin)).rejects.toThrow();
  });

  test('finds nothing in its folder but what it wrote and what is kept', () => {
    const names = readdirSync(shop.folder).filter((name) => !['node_modules', 'node.cjs'].includes(name));
    expect(names.sort()).toEqual(
      ['.cache', '.github', '.gitignore', 'README.md', 'content', 'dist', 'package.json'].sort(),
    );
  });
});
