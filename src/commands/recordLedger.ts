import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { countProblems } from '../problems/countProblems.ts';
import type { Problem } from '../problems/problem.ts';
import { problemTable } from '../problems/table.ts';
import { emptyLedger } from '../intake/ledger.ts';
import { composedNames } from '../site/composedNames.ts';
import { openContentFolder } from '../site/contentFiles.ts';
import { dropPlan, ledgerFile, ledgerJson, ledgerOf } from '../site/ledger.ts';
import { makeReport } from '../site/makeReport.ts';
import { recordAll } from '../site/recordAll.ts';
import { readContent } from '../site/contentList.ts';
import type { Terminal } from './terminal.ts';

interface RecordRequest {
  readonly contentDir: string;
  /** The day of the record, ISO 8601. */
  readonly today: string;
  readonly terminal: Terminal;
  /** A planned test given up, with its reason; then nothing else is recorded. */
  readonly drop?: { readonly slug: string; readonly reason: string };
}

/**
 * Puts plans and published reports on record in `ledger.json`: the explicit act by which what was planned and said
 * can later be held against what is shown. False where something stands in the way; then nothing is written.
 */
export function recordLedger({ contentDir, today, terminal, drop }: RecordRequest): boolean {
  const folder = composedNames(openContentFolder(contentDir));
  const read = ledgerOf(folder);
  if (read.problems.length > 0) return refuse(read.problems, terminal);
  const ledger = read.ledger ?? emptyLedger;
  const file = join(contentDir, ledgerFile);
  if (drop !== undefined) {
    const dropped = dropPlan(ledger, { ...drop, date: today });
    if (dropped === null) {
      terminal.writeError(`${drop.slug} is not an open plan of the ledger, so it cannot be dropped.\n`);
      return false;
    }
    writeFileSync(file, ledgerJson(dropped));
    terminal.write(`${drop.slug}: dropped, ${drop.reason}\n`);
    return true;
  }
  const content = readContent(folder);
  const made = content.reports.map((written) => ({ written, ...makeReport(written, read.ledger) }));
  const { next, lines, refused } = recordAll(ledger, made, today);
  writeFileSync(file, ledgerJson(next));
  for (const line of lines) terminal.write(`${line}\n`);
  if (lines.length === 0) terminal.write('Nothing new to record.\n');
  return refused.length === 0 || refuse(refused, terminal);
}

function refuse(problems: readonly Problem[], terminal: Terminal): false {
  const { errors, warnings } = countProblems(problems);
  terminal.writeError(`${problemTable(problems, { colour: terminal.colour, width: terminal.width })}\n\n`);
  terminal.writeError(
    `Not recorded: ${errors + warnings} ${errors + warnings === 1 ? 'thing stands' : 'things stand'} in the way.\n`,
  );
  return false;
}
