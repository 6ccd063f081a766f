import { spawnSync } from 'node:child_process';
import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readArguments } from '../../src/commands/arguments.ts';
import { keptByNpm } from '../../src/commands/keptByNpm.ts';
import { contentFolder, shop, twoHeadsCsv } from './contentFolder.ts';
import { listen } from './listen.ts';

const options = {
  'dry-run': { type: 'boolean' },
  yes: { type: 'boolean' },
  slug: { type: 'string' },
  contender: { type: 'string', multiple: true },
} as const;

const started = (config: Readonly<Record<string, string>>, event = 'plan') =>
  keptByNpm('plan', options, { npm_lifecycle_event: event, ...config });

describe('what npm hands on as npm_config_...', () => {
  test.each<readonly [string, Readonly<Record<string, string>>, readonly string[], readonly string[]]>([
    ['nothing', { npm_config_audit: '' }, [], []],
    ['a flag alone', { npm_config_dry_run: 'true' }, ['--dry-run'], []],
    ['a flag that npm sets back', { npm_config_dry_run: '' }, [], []],
    ['a value behind =', { npm_config_slug: 'three-heads' }, ['--slug=three-heads'], []],
    [
      'several values',
      { npm_config_contender: 'Alder 9°\n\nBirch' },
      ['--contender=Alder 9°', '--contender=Birch'],
      [],
    ],
    ['a value behind a blank', { npm_config_slug: 'true' }, [], ['--slug']],
    ['one of several behind a blank', { npm_config_contender: 'Alder\n\ntrue' }, [], ['--contender']],
    ['what npx sets for all that it starts', { npm_config_yes: 'true' }, [], []],
  ])('%s', (_what, config, flags, lost) => {
    expect(started(config)).toEqual({ flags, lost });
  });

  test('is not for us where npm started something else', () => {
    expect(started({ npm_config_dry_run: 'true' }, 'test')).toEqual({ flags: [], lost: [] });
  });
});

describe('arguments', () => {
  const readWith = (typed: readonly string[], config: Readonly<Record<string, string>>) => {
    const { terminal, said } = listen();
    const environment = { npm_lifecycle_event: 'plan', ...config };
    const read = readArguments({ typed, environment, terminal }, { name: 'plan', options, usage: 'so' });
    return { read, said: said() };
  };

  test('hold what npm kept, and what was typed goes before it', () => {
    const { read } = readWith(['--slug', 'typed', 'rest'], {
      npm_config_slug: 'kept',
      npm_config_dry_run: 'true',
    });
    expect(read).toMatchObject({ values: { slug: 'typed', 'dry-run': true }, positionals: ['rest'] });
  });

  const server = (typed: readonly string[], config: Readonly<Record<string, string>>) => {
    const { terminal, said } = listen();
    const environment = { npm_lifecycle_event: 'preview', ...config };
    const takes = {
      name: 'preview',
      options: { port: { type: 'string' } },
      names: false,
      usage: 'so',
    } as const;
    const read = readArguments({ typed, environment, terminal }, takes);
    return 'values' in read ? read.values.port : said();
  };

  test('are put together again where a flag and a value, each alone, were parted', () => {
    expect(server(['4400'], { npm_config_port: 'true' })).toBe('4400');
    expect(server([], { npm_config_port: '4400' })).toBe('4400');
    const refused = /^npm took --port for itself/;
    expect(server([], { npm_config_port: 'true' })).toMatch(refused);
    expect(server(['4400', '4401'], { npm_config_port: 'true' })).toMatch(refused);
    expect(server(['--port'], { npm_config_port: 'true' })).toMatch(refused);
  });

  test('are refused where a value is lost', () => {
    expect(readWith(['three-heads'], { npm_config_slug: 'true' })).toEqual({
      read: { exitCode: 1 },
      said: 'npm took --slug for itself: put -- behind npm run plan, before all that is meant for it. Nothing was done.\nUse: so\n',
    });
  });
});

describe('by npm itself', () => {
  const npm = (typed: readonly string[], contentDir: string) =>
    spawnSync('npm', ['run', ...typed], {
      encoding: 'utf8',
      env: { ...process.env, CONTENT_DIR: contentDir },
    });

  test('--dry-run without -- before it writes nothing', () => {
    const content = contentFolder({ 'shop.yaml': shop });
    const session = join(contentFolder({}), 'session.csv');
    writeFileSync(session, twoHeadsCsv);
    const { status, stdout, stderr } = npm(['draft', session, '--dry-run'], content);
    expect([status, readdirSync(content)], stderr).toEqual([0, ['shop.yaml']]);
    expect(stdout).toContain('Alder 6, Birch 6');
    const meant = npm(['draft', session], content);
    expect([meant.status, readdirSync(content).sort()]).toEqual([0, ['.schema', 'reports', 'shop.yaml']]);
  });

  test('--port without -- before it starts no server at another port', () => {
    const { status, stderr, stdout } = npm(['preview', '--port', '99999'], contentFolder({}));
    expect(status).toBe(1);
    expect(stdout).not.toContain('http://');
    // npm 12 refuses the flag itself.
    expect(stderr).toMatch(/--port 99999: a port is a whole number below 65536|Unknown cli flag/);
  });

  test('flags of plan without -- before them write nothing, and are told where to stand', () => {
    const content = contentFolder({ 'shop.yaml': shop });
    const { status, stderr } = npm(['plan', '--contender', 'Alder', '--contender', 'Birch'], content);
    expect([status, readdirSync(content)]).toEqual([1, ['shop.yaml']]);
    expect(stderr).toMatch(/npm took --contender for itself: put -- behind npm run plan|Unknown cli flag/);
  });
});
