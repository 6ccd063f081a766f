import { statSync } from 'node:fs';
import { join } from 'node:path';
import { countProblems } from '../problems/countProblems.ts';
import type { Problem } from '../problems/problem.ts';
import { problemTable } from '../problems/table.ts';
import { composedNames } from '../site/composedNames.ts';
import { visible } from '../problems/visible.ts';
import { emptyLedger, type Ledger } from '../intake/ledger.ts';
import { openContentFolder } from '../site/contentFiles.ts';
import { dropFrom, ledgerFile, ledgerJson, ledgerOf } from '../site/ledger.ts';
import { makeReport } from '../site/makeReport.ts';
import { recordAll } from '../site/recordAll.ts';
import { readContent } from '../site/contentList.ts';
import type { Terminal } from './terminal.ts';
import { fillPublished } from './fillPublished.ts';
import { keepVersions } from './keepVersions.ts';
import { withContentLock } from './writing/contentLock.ts';
import { realDisk, type Disk } from './writing/disk.ts';
import { notWritten } from './writing/notWritten.ts';
import { prepareReplacement } from './writing/wholeFile.ts';

interface RecordRequest {
  readonly contentDir: string;
  /** The day of the record, ISO 8601. */
  readonly today: string;
  /** Hour and minute where the shop is, "14:05"; plans are then on record with it. */
  readonly time?: string;
  readonly terminal: Terminal;
  /** The built site, from which versions are kept that a correction replaces. */
  readonly outDir?: string;
  /** A planned test given up, with its reason; then nothing else is recorded. */
  readonly drop?: { readonly slug: string; readonly reason: string };
  readonly disk?: Disk;
}

/** What is to be written, and what then to say; null where nothing may be written, which has been told. */
interface NextLedger {
  readonly next: Ledger;
  readonly lines: readonly string[];
  readonly refused: readonly Problem[];
  /** Keeps versions that corrections have replaced, and tells of it. */
  readonly keep: () => readonly string[];
  /** Reports into which the day of publication is written. */
  readonly undated: readonly string[];
}

/**
 * Puts plans and published reports on record in `ledger.json`: the explicit act by which what was planned and said
 * can later be held against what is shown. False where something stands in the way; then nothing is written.
 */
export function recordLedger(request: RecordRequest): boolean {
  const { contentDir, terminal, disk = realDisk } = request;
  if (statSync(contentDir, { throwIfNoEntry: false })?.isDirectory() !== true) {
    terminal.writeError(`There is no folder ${visible(contentDir)}. Nothing was written.\n`);
    return false;
  }
  const before = soundLedger(contentDir, terminal);
  if (before === null) return false;
  const nextOf = request.drop === undefined ? recording(request, before) : dropping(request, request.drop);
  try {
    return withContentLock(contentDir, disk, () => {
      // Another command may have written it since.
      const ledger = soundLedger(contentDir, terminal);
      const recorded = ledger === null ? null : nextOf(ledger);
      if (recorded === null) return false;
      // First, as the ledger then says that there is nothing left to keep.
      const kept = recorded.keep();
      write(contentDir, recorded.next, disk);
      const filled = fillPublished(openContentFolder(contentDir), recorded.undated, {
        today: request.today,
        disk,
      });
      const lines = [...recorded.lines, ...filled, ...kept];
      for (const line of lines.length > 0 ? lines : ['Nothing new to record.']) terminal.write(`${line}\n`);
      return recorded.refused.length === 0 || refuse(recorded.refused, terminal);
    });
  } catch (error) {
    terminal.writeError(`Not recorded. ${notWritten(contentDir, error)} The ledger is as it was.\n`);
    return false;
  }
}

/** The ledger as it is now; null, told, where it cannot be read. */
function soundLedger(contentDir: string, terminal: Terminal): Ledger | null {
  const { ledger, problems } = ledgerOf(openContentFolder(contentDir));
  if (problems.some(({ severity }) => severity === 'error')) {
    refuse(problems, terminal);
    return null;
  }
  return ledger ?? emptyLedger;
}

/** Reports are worked out against the ledger of before, and again where it says something else of them by now. */
function recording(
  { contentDir, today, time, outDir, disk = realDisk }: RecordRequest,
  before: Ledger,
): (ledger: Ledger) => NextLedger | null {
  const content = readContent(composedNames(openContentFolder(contentDir)));
  const made = content.reports.map((written) => ({ written, ...makeReport(written, before) }));
  return (ledger) => {
    const recorded = recordAll(
      ledger,
      made.map((own) =>
        entriesOf(own.written.slug, ledger) === entriesOf(own.written.slug, before)
          ? own
          : { written: own.written, ...makeReport(own.written, ledger) },
      ),
      { today, ...(time === undefined ? {} : { time }) },
    );
    const sources = made.flatMap(({ report }) => (report === null ? [] : [report.source]));
    const keep = (): readonly string[] =>
      outDir === undefined ? [] : keepVersions(sources, ledger, { contentDir, outDir, disk });
    return { ...recorded, keep };
  };
}

const entriesOf = (slug: string, { plans, reports }: Ledger): string =>
  JSON.stringify([plans, reports].map((entries) => entries.filter((entry) => entry.slug === slug)));

function dropping(
  { contentDir, today, terminal }: RecordRequest,
  { slug, reason }: { readonly slug: string; readonly reason: string },
): (ledger: Ledger) => NextLedger | null {
  const folders = openContentFolder(contentDir).folders('reports');
  return (ledger) => {
    const next = dropFrom(ledger, { slug, reason, date: today }, folders);
    if (next !== null)
      return { next, lines: [`${slug}: dropped, ${reason}`], refused: [], keep: () => [], undated: [] };
    terminal.writeError(
      `${slug} is neither an open plan of the ledger nor a published report whose folder is gone, so it cannot be dropped.\n`,
    );
    return null;
  };
}

function write(contentDir: string, ledger: Ledger, disk: Disk): void {
  const file = join(contentDir, ledgerFile);
  const prepared = prepareReplacement(disk, file, ledgerJson(ledger));
  try {
    prepared.put();
  } finally {
    prepared.discard();
  }
}

function refuse(problems: readonly Problem[], terminal: Terminal): false {
  const { errors, warnings } = countProblems(problems);
  terminal.writeError(`${problemTable(problems, { colour: terminal.colour, width: terminal.width })}\n\n`);
  terminal.writeError(
    `Not recorded: ${errors + warnings} ${errors + warnings === 1 ? 'thing stands' : 'things stand'} in the way.\n`,
  );
  return false;
}
