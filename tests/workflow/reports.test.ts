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
    expect(Object.values(workflow.jobs).map(({ permissions }) => permissions)).toEqual([
      { contents: 'write' },
      { contents: 'read' },
    ]);
  });

  test('uses actions of the host itself, each by the hash of its commit', () => {
    const used = steps.flatMap(({ uses }) => uses ?? []);
    expect(used.length).toBeGreaterThan(3);
    for (const action of used) expect(action).toMatch(/^actions\/[a-z-]+@[0-9a-f]{40}$/);
  });

  test('has no expression in a script, and no leave to push left behind by a checkout', () => {
    for (const { run } of steps) expect(run ?? '').not.toContain('${{');
    const checkouts = steps.filter(({ uses }) => uses?.startsWith('actions/checkout@'));
    expect(checkouts).toHaveLength(2);
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
  mkdirSync(temp);
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
  const run = (name: string): { readonly status: number | null; readonly log: string } => {
    // As the runner does: https://docs.github.com/actions, "jobs.<job_id>.steps[*].shell".
    const { status, stdout, stderr } = spawnSync('bash', ['-e', '-c', script(name)], {
      cwd: project,
      encoding: 'utf8',
      env: {
        ...process.env,
        GITHUB_OUTPUT: file('output'),
        GITHUB_STEP_SUMMARY: file('summary'),
        GITHUB_REF: 'refs/heads/main',
        RUNNER_TEMP: temp,
        TOKEN: 'secret-token',
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
  return { project, run, written, pushed };
}

const csv = 'Head,Carry (yd)\nAlder,231.5\nBirch,228.2\n';

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
      'content/inbox/typo.csv': csv.replace('228.2', '228.2.1'),
    });
    expect(at.run('Look into the inbox').status).toBe(0);
    expect(at.written('output')).toContain('waiting=6\n');
    expect(at.run('Make drafts')).toEqual({ status: 0, log: '' });
    expect(at.written('output')).toContain('status=1\n');
    const summary = at.written('summary').split('\n');
    expect(summary.filter((line) => line !== '' && !line.startsWith('    '))).toEqual(['## Drafts']);
    expect(summary.join('\n')).toContain('Still in the inbox: typo.csv');
    expect(at.run('Keep the drafts')).toEqual({ status: 0, log: '' });
    expect(readdirSync(at.project)).not.toContain('pwned');
    const kept = at.pushed();
    expect(kept.filter((path) => path.endsWith('report.md'))).toHaveLength(hostile.length);
    expect(kept.filter((path) => path.startsWith('content/inbox/'))).toEqual(['content/inbox/typo.csv']);
    expect(readFileSync(join(at.project, '.git/config'), 'utf8')).not.toContain('AUTHORIZATION');
    // Nothing new: nothing is pushed.
    expect(at.run('Keep the drafts')).toEqual({ status: 0, log: '' });
  });

  test('say in the summary where a branch takes no pushes', () => {
    const at = checkout({ 'content/inbox/a.csv': csv });
    writeFileSync(join(at.project, '../remote.git/hooks/pre-receive'), '#!/bin/sh\nexit 1\n', {
      mode: 0o755,
    });
    expect(at.run('Make drafts').status).toBe(0);
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
