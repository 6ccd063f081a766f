/**
 * Processor time of the figures of reports, words and both drawings of each, in the shop's units and in the others.
 * Reports are read and analysed before, which is not counted. Run by hand, on invented reports or those of a folder:
 *
 *   node tests/bench/charts.ts [content]
 *
 * The last line tells whether two runs drew the same: it is a hash of all that was made.
 */
import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { makeFigures } from '../../src/charts/makeFigures.ts';
import type { Figure } from '../../src/charts/figure.ts';
import { composedNames } from '../../src/site/composedNames.ts';
import { openContentFolder } from '../../src/site/contentFiles.ts';
import { listContent } from '../../src/site/contentList.ts';
import { examineReport, type Examined } from '../../src/site/examineReport.ts';
import { inOtherUnits } from '../../src/site/toldTwice.ts';
import { readWritten } from '../../src/site/writtenReport.ts';
import { writeBenchContent } from './content.ts';

function examinedReports(root: string): readonly Examined[] {
  const folder = composedNames(openContentFolder(root));
  const { slugs, shared } = listContent(folder, []);
  return slugs.flatMap((slug) => examineReport(readWritten(folder, slug, shared)).examined ?? []);
}

function inventedReports(): readonly Examined[] {
  const root = mkdtempSync(join(tmpdir(), 'bench-charts-'));
  try {
    writeBenchContent(root, 10);
    return examinedReports(root);
  } finally {
    rmSync(root, { recursive: true });
  }
}

const [, , content] = process.argv;
const reports = content === undefined ? inventedReports() : examinedReports(resolve(content));
const made = createHash('sha256');

interface Timed {
  readonly figures: number;
  readonly ms: number;
}

function timed(draw: () => readonly Figure[]): Timed {
  // Processor time: the machine may have other work to do.
  const start = process.cpuUsage();
  const figures = draw();
  const { user, system } = process.cpuUsage(start);
  made.update(JSON.stringify(figures));
  return { figures: figures.filter(({ kind }) => kind === 'drawn').length, ms: (user + system) / 1000 };
}

const print = (ms: number | undefined): string => `${(ms ?? Number.NaN).toFixed(1)} ms`;

function tell(words: string, times: readonly Timed[]): void {
  const figures = times.reduce((sum, one) => sum + one.figures, 0);
  const ms = times.reduce((sum, one) => sum + one.ms, 0);
  const middle = times.map((one) => one.ms).toSorted((x, y) => x - y)[Math.floor(times.length / 2)];
  console.log(`${words}: median of a report ${print(middle)}, a figure ${print(ms / figures)}`);
}

for (const round of ['first', 'second', 'third']) {
  const own: Timed[] = [];
  const other: Timed[] = [];
  for (const { telling, session, source } of reports) {
    own.push(timed(() => makeFigures(telling, session, source.front)));
    other.push(timed(() => makeFigures(inOtherUnits(telling), session, source.front)));
  }
  if (round === 'first') console.log(`the very first report: ${print(own[0]?.ms)}`);
  tell(`${round} round, the shop's units`, own);
  tell(`${round} round, the other units`, other);
}
console.log(`made: ${made.digest('hex')}`);
