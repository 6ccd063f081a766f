import { execFileSync, spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { z } from 'zod';

const step = z.object({
  name: z.string().optional(),
  uses: z.string().optional(),
  if: z.string().optional(),
  run: z.string().optional(),
  with: z.record(z.string(), z.unknown()).optional(),
  env: z.record(z.string(), z.string()).optional(),
});
const workflow = z
  .object({
    permissions: z.record(z.string(), z.string()),
    jobs: z.record(
      z.string(),
      z.object({
        'timeout-minutes': z.number(),
        permissions: z.record(z.string(), z.string()),
        steps: z.array(step),
      }),
    ),
  })
  .parse(parse(readFileSync('.github/workflows/reports.yml', 'utf8')));
const steps = Object.values(workflow.jobs).flatMap((job) => job.steps);

// After GitHub's "Security hardening for GitHub Actions": least permissions, full-length commit SHA, no expression in scripts.
describe('the workflow', () => {
  test('may write the repository in one job only, and nothing else anywhere', () => {
    expect(workflow.permissions).toEqual({});
    expect(Object.entries(workflow.jobs).map(([name, { permissions }]) => [name, permissions])).toEqual([
      ['draft', { contents: 'read' }],
      ['keep', { contents: 'write' }],
      ['build', { contents: 'read' }],
    ]);
  });

  test('runs nothing but git and the host where it may write, and gives its token to one step there', () => {
    const { keep, ...others } = workflow.jobs;
    if (keep === undefined) throw new Error('no job that keeps the drafts');
    const scripts = keep.steps.flatMap(({ run }) => run ?? []);
    expect(scripts).toHaveLength(1);
    expect(scripts[0]).not.toMatch(/\b(npm|npx|node|make)\b|\.\/|\bsrc\b/);
    expect(keep.steps.filter(({ env }) => env !== undefined)).toHaveLength(1);
    for (const { steps } of Object.values(others))
      for (const { env } of steps) expect(JSON.stringify(env ?? {})).not.toMatch(/token|secrets/i);
  });

  test('uses actions of the host itself, each by the hash of its commit', () => {
    const used = steps.flatMap(({ uses }) => uses ?? []);
    expect(used.length).toBeGreaterThan(3);
    for (const action of used) expect(action).toMatch(/^actions\/[a-z-]+@[0-9a-f]{40}$/);
  });

  test('has no expression in a script, and no leave to push left behind by a checkout', () => {
    for (const { run } of steps) expect(run ?? '').not.toContain('${{');
    const checkouts = steps.filter(({ uses }) => uses?.startsWith('actions/checkout@'));
    expect(checkouts).toHaveLength(3);
    for (const checkout of checkouts) expect(checkout.with?.['persist-credentials']).toBe(false);
  });
});

const hasGit = spawnSync('git', ['--version']).status === 0;
const script = (name: string): string => steps.find((each) => each.name === name)?.run ?? '';

/** A checkout of a repository with the project and a content folder, beside the repository that it is pushed to. */
function checkout(files: Readonly<Record<string, string>>) {
  const root = mkdtempSync(join(tmpdir(), 'straightface-workflow-'));
  const [project, remote, temp] = ['project', 'remote.git', 'temp'].map((name) => join(root, name)) as [
    string,
    string,
    string,
  ];
  mkdirSync(project);
  const home = join(root, 'home');
  mkdirSync(temp);
  mkdirSync(home);
  for (const name of ['src', 'package.json', 'tsconfig.json'])
    cpSync(resolve(name), join(project, name), { recursive: true });
  symlinkSync(resolve('node_modules'), join(project, 'node_modules'));
  writeFileSync(join(project, '.gitignore'), 'node_modules\n');
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(join(project, path, '..'), { recursive: true });
    writeFileSync(join(project, path), text);
  }
  const git = (...words: string[]): string => execFileSync('git', words, { cwd: project, encoding: 'utf8' });
  git('init', '--quiet', '--initial-branch', 'main');
  git('add', '--all');
  git('-c', 'user.name=A', '-c', 'user.email=a@example.test', 'commit', '--quiet', '--message', 'Content');
  execFileSync('git', ['init', '--quiet', '--bare', '--initial-branch', 'main', remote]);
  git('remote', 'add', 'origin', remote);
  git('push', '--quiet', 'origin', 'main');
  const file = (name: string): string => join(temp, name);
  let clones = 0;
  /** As a job of its own has it: another machine, which has the artifact and nothing else of the one before. */
  const freshCheckout = (): string => {
    const fresh = join(root, `fresh-${++clones}`);
    execFileSync('git', ['clone', '--quiet', '--branch', 'main', remote, fresh]);
    return fresh;
  };
  const run = (name: string): { readonly status: number | null; readonly log: string } => {
    const keeps = name === 'Keep the drafts';
    // As the runner does: https://docs.github.com/actions, "jobs.<job_id>.steps[*].shell".
    const { status, stdout, stderr } = spawnSync('bash', ['-e', '-c', script(name)], {
      cwd: keeps ? freshCheckout() : project,
      encoding: 'utf8',
      env: {
        ...process.env,
        HOME: keeps ? root : home,
        GITHUB_OUTPUT: file('output'),
        GITHUB_STEP_SUMMARY: file('summary'),
        GITHUB_REF: 'refs/heads/main',
        RUNNER_TEMP: temp,
        ...(keeps ? { TOKEN: 'secret-token' } : {}),
      },
    });
    return { status, log: stdout + stderr };
  };
  const written = (name: string): string => (existsSync(file(name)) ? readFileSync(file(name), 'utf8') : '');
  const pushed = (): readonly string[] =>
    execFileSync('git', ['ls-tree', '-r', '-z', '--name-only', 'main'], {
      cwd: remote,
      encoding: 'utf8',
    }).split('\0');
  return { project, home, run, written, pushed };
}

const csv = 'Head,Carry (yd)\nAlder,231.5\nBirch,228.2\n';
/** Nobody can tell where its first name ends. */
const unclosed = csv.replace('Alder', '"Alder');

describe.skipIf(!hasGit)('its scripts', () => {
  test('make drafts of what was uploaded, whatever its name, push them, and say what could not be used', () => {
    const hostile = [
      '$(touch pwned).csv',
      '`touch pwned`.csv',
      '-n.csv',
      "'; touch pwned; '.csv",
      '::error::x.csv',
    ];
    const at = checkout({
      'content/shop.yaml': 'name: Example Golf Workshop\n',
      ...Object.fromEntries(
        hostile.map((name, index) => [`content/inbox/${name}`, csv.replace('231', `23${index}`)]),
      ),
      'content/inbox/typo.csv': unclosed,
    });
    expect(at.run('Look into the inbox').status).toBe(0);
    expect(at.written('output')).toContain('waiting=6\n');
    expect(at.run('Make drafts')).toEqual({ status: 0, log: '' });
    expect(at.written('output')).toContain('status=1\n');
    const summary = at.written('summary').split('\n');
    expect(summary.filter((line) => line !== '' && !line.startsWith('    '))).toEqual(['## Drafts']);
    expect(summary.join('\n')).toContain('Still in the inbox: typo.csv');
    expect(at.run('Collect the drafts')).toEqual({ status: 0, log: '' });
    expect(at.written('output')).toContain('drafts=yes\n');
    expect(at.run('Keep the drafts')).toEqual({ status: 0, log: '' });
    expect(readdirSync(at.project)).not.toContain('pwned');
    const kept = at.pushed();
    expect(kept.filter((path) => path.endsWith('report.md'))).toHaveLength(hostile.length);
    expect(kept.filter((path) => path.startsWith('content/inbox/'))).toEqual(['content/inbox/typo.csv']);
  });

  test('collect nothing where no draft was made', () => {
    const at = checkout({ 'content/inbox/typo.csv': unclosed });
    expect(at.run('Make drafts').status).toBe(0);
    expect(at.run('Collect the drafts').status).toBe(0);
    expect(at.written('output')).not.toContain('drafts=');
  });

  test('let nothing that a script of a package left behind see the token, or change more than content', () => {
    const at = checkout({ 'content/shop.yaml': 'name: x\n', 'content/inbox/a.csv': csv });
    const seen = join(at.home, 'seen');
    const spy = join(at.home, 'spy');
    writeFileSync(spy, `#!/bin/sh\necho "ran $TOKEN." >> '${seen}'\ncat > /dev/null\n`, { mode: 0o755 });
    for (const hook of [
      'post-commit',
      'pre-commit',
      'pre-push',
      'post-rewrite',
      'post-checkout',
      'post-index-change',
    ])
      symlinkSync(spy, join(at.project, '.git/hooks', hook));
    const settings = `[core]\n\tfsmonitor = ${spy}\n\tsshCommand = ${spy}\n[credential]\n\thelper = ${spy}\n[alias]\n\tpush = !${spy}\n[diff]\n\texternal = ${spy}\n[filter "x"]\n\tclean = ${spy}\n[url "/nowhere"]\n\tpushInsteadOf = /\n`;
    writeFileSync(join(at.project, '.git/config'), settings, { flag: 'a' });
    writeFileSync(join(at.home, '.gitconfig'), settings);
    expect(at.run('Make drafts').status).toBe(0);
    mkdirSync(join(at.project, '.github/workflows'), { recursive: true });
    writeFileSync(join(at.project, '.github/workflows/more.yml'), 'on: push\n');
    expect(at.run('Collect the drafts').status).toBe(0);
    // They do run where there is no token to be had.
    expect(readFileSync(seen, 'utf8')).toMatch(/^(ran \.\n)+$/);
    const patch = join(at.home, '../temp/drafts.patch');
    writeFileSync(
      patch,
      'diff --git a/.github/workflows/more.yml b/.github/workflows/more.yml\nnew file mode 100644\n--- /dev/null\n+++ b/.github/workflows/more.yml\n@@ -0,0 +1 @@\n+on: push\n',
      { flag: 'a' },
    );
    expect(at.run('Keep the drafts')).toEqual({ status: 0, log: '' });
    expect(readFileSync(seen, 'utf8')).not.toContain('secret');
    expect(at.pushed()).toContain('content/reports/a/report.md');
    expect(at.pushed().filter((path) => path.startsWith('.github'))).toEqual([]);
  });

  test('say in the summary where content was changed meanwhile', () => {
    const at = checkout({ 'content/inbox/a.csv': csv });
    expect(at.run('Make drafts').status).toBe(0);
    expect(at.run('Collect the drafts').status).toBe(0);
    expect(at.run('Keep the drafts').status).toBe(0);
    expect(at.run('Keep the drafts').status).toBe(1);
    expect(at.written('summary')).toContain('content/ was changed meanwhile');
  });

  test('say in the summary where a branch takes no pushes', () => {
    const at = checkout({ 'content/inbox/a.csv': csv });
    writeFileSync(join(at.project, '../remote.git/hooks/pre-receive'), '#!/bin/sh\nexit 1\n', {
      mode: 0o755,
    });
    expect(at.run('Make drafts').status).toBe(0);
    expect(at.run('Collect the drafts').status).toBe(0);
    expect(at.run('Keep the drafts').status).toBe(1);
    expect(at.written('summary')).toContain('The drafts could not be kept');
    expect(at.pushed()).toContain('content/inbox/a.csv');
  });

  test('put the table of problems into the summary, and stop nothing there', () => {
    const at = checkout({
      'content/shop.yaml': 'name: x\n',
      'content/reports/a/report.md': '---\ntitle: "<b>x"\n---\n',
    });
    expect(at.run('Check')).toEqual({ status: 0, log: '' });
    expect(at.written('summary')).toContain('    reports/a/report.md');
    expect(at.written('summary')).toMatch(/ {4}Checked 1 report: \d+ errors/);
  });
});
