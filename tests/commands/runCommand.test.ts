import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { chmodSync, cpSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { shopCommands } from '../../src/commands/helpText.ts';
import { writeBenchContent } from '../bench/content.ts';
import { newFolder } from './builds.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from './contentFolder.ts';

const commands = ['build', 'check', 'draft', 'dev', 'migrate', 'plan', 'preview', 'record', 'start'];
const trace = /^\s+at .*:\d+:\d+/m;
const sound = {
  'shop.yaml': shop,
  'reports/one/report.md': twoHeads(),
  'reports/one/shots.csv': twoHeadsCsv,
};

interface Started {
  readonly cwd?: string;
  readonly project?: string;
  readonly environment?: Readonly<Record<string, string>>;
  readonly uid?: number;
}

function start(command: string, typed: readonly string[], started: Started = {}) {
  const { cwd = '.', project = resolve('.'), environment = {}, uid } = started;
  const { DEBUG: _, ...inherited } = process.env;
  return spawnSync(process.execPath, [join(project, 'src/commands', `${command}.ts`), ...typed], {
    cwd,
    encoding: 'utf8',
    env: { ...inherited, ...environment },
    ...(uid === undefined ? {} : { uid }),
  });
}

describe('without packages', () => {
  const project = mkdtempSync(join(tmpdir(), 'straightface-bare-'));
  cpSync('src', join(project, 'src'), { recursive: true });
  cpSync('package.json', join(project, 'package.json'));

  test.each(commands)('%s says which one is missing and what to do', (command) => {
    const { status, stderr } = start(command, [], { project, cwd: project });
    expect(status).toBe(1);
    expect(stderr).toMatch(
      /^A package is missing: Cannot find package '\S+' imported from .*\.\nRun npm ci in the folder of the project, then start the command again\.\nDEBUG=1 before/,
    );
    expect(stderr).not.toMatch(trace);
  });

  test('help helps', () => {
    expect(start('help', [], { project, cwd: project })).toMatchObject({ status: 0, stderr: '' });
  });

  test('DEBUG=1 shows the trail', () => {
    const { status, stderr } = start('check', [], { project, cwd: project, environment: { DEBUG: '1' } });
    expect(status).toBe(1);
    expect(stderr).toMatch(trace);
  });
});

describe('from another folder', () => {
  const elsewhere = (): string =>
    contentFolder(Object.fromEntries(Object.entries(sound).map(([path, text]) => [`content/${path}`, text])));

  test('check reads the content in there', () => {
    expect(start('check', [], { cwd: elsewhere() })).toMatchObject({
      status: 0,
      stdout: 'Checked 1 report: nothing wrong.\n',
      stderr: '',
    });
  });

  test('draft and plan write into it', () => {
    const cwd = elsewhere();
    writeFileSync(join(cwd, 'morning.csv'), twoHeadsCsv);
    expect(start('draft', ['morning.csv', '--dry-run'], { cwd })).toMatchObject({ status: 0, stderr: '' });
    const flags = ['--contender', 'Alder', '--contender', 'Birch', '--varied', 'head', '--club', 'driver'];
    const planned = start('plan', flags, { cwd });
    expect([planned.status, planned.stderr]).toEqual([0, '']);
    expect(planned.stdout).toContain('content/reports/alder-and-birch/');
  });
});

test('every command of a shop is one of these, or help', () => {
  expect(Object.keys(shopCommands).sort()).toEqual([...commands, 'help'].sort());
});

describe('what the system refuses is told in sentences', () => {
  test('content that is a file', () => {
    const file = join(contentFolder({ file: 'x' }), 'file');
    const sentences = {
      check: '1 error and 1 warning',
      draft: `${file} is a file, and content is kept in a folder. Nothing was written.`,
      record: `There is no folder ${file}. Nothing was written.`,
    };
    for (const [command, sentence] of Object.entries(sentences)) {
      const { status, stdout, stderr } = start(command, [], { environment: { CONTENT_DIR: file } });
      expect(status, command).toBe(1);
      expect(stdout + stderr).toContain(sentence);
      expect(stdout + stderr).not.toMatch(trace);
    }
  });

  // The one who may do everything is made one who may not.
  const other = process.getuid?.() === 0 ? { uid: 65_534 } : {};

  test('a ledger that may not be written', () => {
    const content = contentFolder(sound);
    for (const part of ['', 'reports', 'reports/one']) chmodSync(join(content, part), 0o555);
    const { status, stderr } = start('record', [], { environment: { CONTENT_DIR: content }, ...other });
    chmodSync(content, 0o755);
    expect([status, stderr]).toEqual([1, expect.stringContaining('there is no permission (EACCES)')]);
    expect(stderr).not.toMatch(trace);
  });
});

test('Ctrl-C ends a build with 130 and no further word', async () => {
  const content = mkdtempSync(join(tmpdir(), 'straightface-stopped-'));
  writeBenchContent(content, 12);
  const environment = {
    CONTENT_DIR: content,
    OUT_DIR: newFolder('site'),
    CACHE_DIR: newFolder('cache'),
  };
  // A shell tells by 128 and the number of the signal that a command was ended by one.
  const shell = spawn(
    'sh',
    ['-c', '"$0" src/commands/build.ts & echo "pid $!"; wait $!; echo "ended $?"', process.execPath],
    {
      env: { ...process.env, ...environment },
    },
  );
  let said = '';
  let stopped = false;
  shell.stderr.setEncoding('utf8').on('data', (text: string) => (said += text));
  shell.stdout.setEncoding('utf8').on('data', (text: string) => {
    said += text;
    const pid = /^pid (\d+)$/m.exec(said)?.[1];
    if (stopped || pid === undefined || !said.includes('working out what the shots say')) return;
    stopped = true;
    setTimeout(() => process.kill(Number(pid), 'SIGINT'), 500);
  });
  await once(shell, 'close');
  expect(said).toMatch(
    /^pid \d+\n12 reports are new or changed; working out what the shots say\.\nended 130\n$/,
  );
});
