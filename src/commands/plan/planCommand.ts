import { join } from 'node:path';
import type { Problem } from '../../problems/problem.ts';
import { problemTable } from '../../problems/table.ts';
import { visible } from '../../problems/visible.ts';
import { decidePlan, type Decided } from '../../planning/decidePlan.ts';
import { sayFact, type PlanFact } from '../../planning/planFact.ts';
import { orderFile, sheetFile, type PlanClock } from '../../planning/plannedFiles.ts';
import type { PlanRefusal } from '../../planning/planRecorded.ts';
import { planSurroundings, type PlanSurroundings } from '../../planning/planSurroundings.ts';
import { cautions } from '../../planning/planWords.ts';
import { composedNames } from '../../site/composedNames.ts';
import { openContentFolder } from '../../site/contentFiles.ts';
import { ledgerFile, ledgerOf } from '../../site/ledger.ts';
import { shopNote } from '../shopNote.ts';
import type { Terminal } from '../terminal.ts';
import { withContentLock } from '../writing/contentLock.ts';
import { realDisk, type Disk } from '../writing/disk.ts';
import { notWritten } from '../writing/notWritten.ts';
import { answersFrom } from './answers.ts';
import { AnswersEnded, type Asker } from './asker.ts';
import { planUsage, type PlanOptions } from './planOptions.ts';
import { recordPlan } from './recordPlan.ts';

interface PlanRequest extends PlanClock {
  readonly contentDir: string;
  readonly options: PlanOptions;
  /** Null where nobody can be asked. */
  readonly asker: Asker | null;
  readonly terminal: Terminal;
  readonly disk?: Disk;
}

/**
 * Plans a test before anything is hit: says what it can and cannot find, then writes the order, a sheet to hit by, a
 * draft report and an entry in the ledger. Never overwrites. Gives the exit status.
 */
export async function planCommand(request: PlanRequest): Promise<number> {
  const { contentDir, options, asker, terminal } = request;
  const { problems } = ledgerOf(composedNames(openContentFolder(contentDir)));
  if (problems.some(({ severity }) => severity === 'error')) return refuseLedger(terminal, problems);
  const surroundings = planSurroundings(contentDir);
  terminal.writeError(shopNote(surroundings.problems));
  const { ask, troubles } = answersFrom(options.yes === true ? null : asker, terminal);
  try {
    const decided = await decidePlan(options, ask, {
      ...surroundings,
      tell: (fact) => terminal.write(factLines(fact)),
    });
    if (decided === null) return refuse(terminal, [...troubles(), `\nUse: ${planUsage}`]);
    const work = (): number => write(request, decided, surroundings);
    return options['dry-run'] === true ? work() : withContentLock(contentDir, request.disk ?? realDisk, work);
  } catch (error) {
    if (error instanceof AnswersEnded) return refuse(terminal, ['\nNo plan.']);
    return refuse(terminal, [`The plan cannot be written. ${notWritten(contentDir, error)}`]);
  }
}

/** What follows from the answers so far, set off from the questions before and after it. */
function factLines(fact: PlanFact): string {
  const { sentences, rows } = sayFact(fact);
  const lines = [...sentences, ...rows.map(({ label, text }) => `  ${label.padEnd(12)} ${text}`)];
  const before = fact.kind === 'spread' ? '\n' : '';
  const after = fact.kind === 'needed' || fact.kind === 'chosen' ? '\n' : '';
  return `${before}${lines.join('\n')}\n${after}`;
}

function write(
  { contentDir, options, today, time, terminal, disk = realDisk }: PlanRequest,
  decided: Decided,
  { shop }: PlanSurroundings,
): number {
  const dryRun = options['dry-run'] === true;
  const clock = { today, time };
  const recorded = recordPlan({ contentDir, answers: options, decided, shop, clock, disk, dryRun });
  if ('kind' in recorded) return refusePlan(terminal, recorded);
  if (dryRun) {
    terminal.write(`${cautions.join('\n')}\nNothing was written.\n`);
    return 0;
  }
  const place = visible(join(contentDir, 'reports', recorded.slug));
  terminal.write(
    [
      `Wrote ${place}/`,
      `  ${sheetFile}   open it and print it, A4 or Letter`,
      `  ${orderFile}            the order by shot number; correct it where hitting went another way`,
      `  report.md            the draft, its plan filled in`,
      `Put on record in ${ledgerFile}. "Planned in advance" is printed only if the session is on a later day than today, ${today}, or the times in its file say that the first shot came after ${time}.`,
      'Commit these files now: a plan that nobody could see beforehand is only stated.',
      '',
      ...cautions,
      '',
      `After hitting: npm run draft -- FILE.csv puts the session file into this draft, or leave the file in ${visible(join(contentDir, 'inbox'))}.`,
      '',
    ].join('\n'),
  );
  return 0;
}

function refusePlan(terminal: Terminal, refusal: PlanRefusal): 1 {
  switch (refusal.kind) {
    case 'name-unusable':
      return refuse(terminal, [
        `--slug ${refusal.name}: use small letters, digits and single hyphens, 40 characters at most.`,
      ]);
    case 'name-taken':
      return refuse(terminal, [
        `There is a report named ${refusal.name} already, and it is never overwritten. Use another name: --slug ${refusal.free}`,
      ]);
    case 'no-order':
      return refuse(terminal, ['No order fits these counts: change --shots or --order.']);
    case 'no-plan':
      return refuse(terminal, ['These answers cannot be written as a plan.']);
    case 'ledger-unreadable':
      return refuseLedger(terminal, refusal.problems);
  }
}

function refuseLedger(terminal: Terminal, problems: readonly Problem[]): 1 {
  terminal.writeError(`${problemTable(problems, { colour: terminal.colour, width: terminal.width })}\n`);
  return refuse(terminal, ['The plan could not be put on record.']);
}

function refuse(terminal: Terminal, why: readonly string[]): 1 {
  terminal.writeError(`${why.map(visibleLines).join('\n')}\nNothing was written.\n`);
  return 1;
}

const visibleLines = (text: string): string => text.split('\n').map(visible).join('\n');
