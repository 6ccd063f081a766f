import { execFile, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { describe, expect, test } from 'vitest';
import { dataFiles } from '../../src/kit/dataFiles.ts';
import { dataPackage } from '../../src/kit/dataPackage.ts';
import type { Report } from '../../src/kit/report.ts';
import { dataTools } from '../../src/site/dataTools.ts';
import { oddOnes, reports } from './content.ts';

interface Program {
  readonly command: string;
  readonly script: string;
  readonly installed: boolean;
  readonly needs: string;
}

const runs = (command: string, ...given: readonly string[]): boolean =>
  spawnSync(command, given, { stdio: 'ignore' }).status === 0;

const programs: readonly Program[] = [
  { command: 'Rscript', script: 'reproduce.R', installed: runs('Rscript', '--version'), needs: 'R' },
  {
    command: 'python3',
    script: 'reproduce.py',
    installed: runs('python3', '-c', 'import numpy, scipy.stats'),
    needs: 'Python with SciPy',
  },
];

/** What a program says in a folder with the data of a report, and how it ends. */
async function saidBy(
  { command, script }: Program,
  report: Report,
  change: (shots: string) => string = (shots) => shots,
): Promise<{ readonly said: string; readonly good: boolean }> {
  const folder = mkdtempSync(join(tmpdir(), 'reproduce-'));
  for (const { path, text } of Object.values(dataFiles(report, dataTools)))
    writeFileSync(join(folder, path), path === 'shots.csv' ? change(text) : text);
  writeFileSync(join(folder, 'datapackage.json'), dataPackage(report, dataTools));
  try {
    const { stdout } = await promisify(execFile)(command, [join(folder, script)]);
    return { said: stdout, good: true };
  } catch (error) {
    return { said: String(error), good: false };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** The shots with the first measured number of the first of them raised by one. */
const oneChanged = (shots: string): string =>
  shots.replace(/\d{2,}\.\d+/, (reading) => String(Number(reading) + 1));

describe.each(programs)('$script', (program) => {
  const unlessMissing = test.skipIf(!program.installed);
  const where = program.installed ? '' : ` (skipped: ${program.needs} is not installed here)`;

  unlessMissing.each([...reports, ...oddOnes].map((report) => [report.source.slug, report] as const))(
    `%s: gives every number of findings.json again to 1e-9${where}`,
    async (_slug, report) => {
      const { said, good } = await saidBy(program, report);
      const [, count = '0', largest = ''] = /\n(\d+) numbers, largest difference (\S+)\n$/.exec(said) ?? [];
      expect(said).toContain(`\n${report.findings.metrics[0]?.id ?? ''}: `);
      expect(Number(count)).toBeGreaterThan(200);
      expect(Number(largest)).toBeLessThan(1e-9);
      expect(good).toBe(true);
    },
    240_000,
  );

  unlessMissing(
    `ends with an error if one shot is another one${where}`,
    async () => {
      const [report] = reports;
      if (report === undefined) throw new Error('no report');
      const { said, good } = await saidBy(program, report, oneChanged);
      expect(good).toBe(false);
      expect(said).toContain('findings.json and shots.csv do not agree');
    },
    240_000,
  );
});

test('the programs are short, and name no package but NumPy and SciPy', () => {
  for (const [file, most] of [
    ['reproduce.R', 260],
    ['reproduce.py', 260],
  ] as const) {
    const text = readFileSync(join('src/kit/reproduce', file), 'utf8');
    expect(text.split('\n').length).toBeLessThan(most);
    expect(text).not.toMatch(/\b(library|require|requireNamespace)\(/);
    const imported = [...text.matchAll(/^(?:from|import) (\w+)/gm)].map(([, name]) => name);
    expect(
      imported.filter(
        (name) => !/^(csv|json|sys|collections|itertools|pathlib|numpy|scipy)$/.test(name ?? ''),
      ),
    ).toEqual([]);
  }
});
