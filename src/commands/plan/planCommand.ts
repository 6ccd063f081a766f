import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { contenderIds } from '../../intake/draft/contenderIds.ts';
import { draftReport } from '../../intake/draft/draftReport.ts';
import { freeSlug, shortSlug, slugOf } from '../../intake/draft/slugOf.ts';
import { understand } from '../../intake/draft/understood.ts';
import { orderSheetCsv } from '../../intake/plan/orderSheetCsv.ts';
import { plannedAnswers } from '../../intake/plan/plannedAnswers.ts';
import { plannedOrder, turnsInWords } from '../../intake/plan/plannedOrder.ts';
import { hittingSheet } from '../../kit/hittingSheet.ts';
import type { Problem } from '../../problems/problem.ts';
import { problemTable } from '../../problems/table.ts';
import { visible } from '../../problems/visible.ts';
import { listed } from '../../prose/words.ts';
import { composedNames } from '../../site/composedNames.ts';
import { openContentFolder } from '../../site/contentFiles.ts';
import { ledgerFile, ledgerOf, planHash } from '../../site/ledger.ts';
import { readContent } from '../../site/contentList.ts';
import { metrics } from '../../trade/metrics.ts';
import { shopNote } from '../shopNote.ts';
import type { Terminal } from '../terminal.ts';
import { usualGap } from '../usualGap.ts';
import { answersFrom } from './answers.ts';
import { AnswersEnded, type Asker } from './asker.ts';
import { decide, type Decided } from './decide.ts';
import { pastSessions } from './pastSessions.ts';
import { planUsage, type PlanOptions } from './planOptions.ts';
import { cautions } from './planWords.ts';
import { withContentLock } from '../writing/contentLock.ts';
import { realDisk, type Disk } from '../writing/disk.ts';
import { notWritten } from '../writing/notWritten.ts';
import { writePlan } from './writePlan.ts';

export interface PlanRequest {
  readonly contentDir: string;
  readonly options: PlanOptions;
  /** Null where nobody can be asked. */
  readonly asker: Asker | null;
  /** The day where the shop is, ISO. */
  readonly today: string;
  /** Hour and minute there, "14:05". */
  readonly time: string;
  readonly terminal: Terminal;
  readonly disk?: Disk;
}

const orderFile = 'order.csv';
const sheetFile = 'hitting-sheet.html';

/**
 * Plans a test before anything is hit: says what it can and cannot find, then writes the order, a sheet to hit by, a
 * draft report and an entry in the ledger. Never overwrites. Gives the exit status.
 */
export async function planCommand(request: PlanRequest): Promise<number> {
  const { contentDir, options, asker, terminal } = request;
  const folder = composedNames(openContentFolder(contentDir));
  const { problems } = ledgerOf(folder);
  if (problems.some(({ severity }) => severity === 'error')) return refuseLedger(terminal, problems);
  const content = readContent(folder);
  terminal.writeError(shopNote(content.problems));
  const answers = answersFrom(options.yes === true ? null : asker, terminal);
  try {
    const decided = await decide(options, answers, {
      shop: content.shop,
      past: pastSessions(content.reports),
      terminal,
    });
    if (decided === null) return refuse(terminal, [...answers.troubles(), `\nUse: ${planUsage}`]);
    const work = (): number => write(request, decided, content.shop);
    return options['dry-run'] === true ? work() : withContentLock(contentDir, request.disk ?? realDisk, work);
  } catch (error) {
    if (error instanceof AnswersEnded) return refuse(terminal, ['\nNo plan.']);
    return refuse(terminal, [`The plan cannot be written. ${notWritten(contentDir, error)}`]);
  }
}

function write(
  { contentDir, options, today, time, terminal, disk = realDisk }: PlanRequest,
  decided: Decided,
  shop: ReturnType<typeof readContent>['shop'],
): number {
  const { labels, varied, metric, matters, role, turns, shotsEach, expectation } = decided;
  const title = options.title ?? listed(labels);
  const isTaken = (name: string): boolean => existsSync(join(contentDir, 'reports', name));
  const wanted = options.slug ?? (shortSlug(title) || 'plan');
  if (slugOf(wanted) !== wanted)
    return refuse(terminal, [
      `--slug ${wanted}: use small letters, digits and single hyphens, 40 characters at most.`,
    ]);
  const slug = options.slug ?? freeSlug(wanted, isTaken);
  const seed = options.seed ?? `${slug}-${today}`;
  const ids = contenderIds(labels);
  const order = plannedOrder({ contenders: ids, shotsEach, turns, seed });
  if (order === null) return refuse(terminal, ['No order fits these counts: change --shots or --order.']);
  const labelOf = (id: string): string => labels[ids.indexOf(id)] ?? id;
  const plan = {
    date: today,
    shotsEach,
    order: turnsInWords(turns),
    seed,
    exclusionRule:
      options['exclusion-rule'] ??
      'only a reading that failed or an outside event, written down at once; never because of where the ball went',
    stoppingRule: options['stopping-rule'] ?? `after ${shotsEach} shots with each`,
    expectation,
    warmUp:
      options['warm-up'] ??
      'ten full swings or more with a club outside the test, until the last five club speeds show no trend',
  };
  const report = draftReport({
    slug,
    title,
    dateInName: null,
    varied,
    session: [],
    understood: {
      ...understand([]),
      contenders: labels.map((name) => ({ name, spellings: [name], shots: 0 })),
    },
    openColumns: [],
    usualGap: (own) => usualGap(own, shop?.defaults.units ?? 'yards'),
    shop,
    planned: {
      plan,
      question: options.question ?? null,
      primary: metric,
      matters: matters.typed,
      orderSheet: orderFile,
      hitterRole: role,
    },
  });
  const bound = plannedAnswers(`reports/${slug}/report.md`, report);
  const hash = bound === null ? null : planHash(bound);
  if (hash === null) return refuse(terminal, ['These answers cannot be written as a plan.']);
  if (options['dry-run'] === true) {
    terminal.write(`${cautions.join('\n')}\nNothing was written.\n`);
    return 0;
  }
  const files = {
    'report.md': report,
    [orderFile]: orderSheetCsv(order, labelOf),
    [sheetFile]: hittingSheet({
      ...plan,
      title,
      varied,
      metric: metrics[metric].name,
      matters: matters.typed,
      turns: plan.order,
      order: order.map(({ shot, round, contender }) => ({ shot, round, label: labelOf(contender) })),
    }),
  };
  const written = writePlan(contentDir, { slug, date: today, time, hash }, files, disk);
  if (written === 'taken') {
    return refuse(terminal, [
      `There is a report named ${slug} already, and it is never overwritten. Use another name: --slug ${freeSlug(slug, isTaken)}`,
    ]);
  }
  if (written !== 'written') return refuseLedger(terminal, written.ledgerProblems);
  const place = visible(join(contentDir, 'reports', slug));
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

function refuseLedger(terminal: Terminal, problems: readonly Problem[]): 1 {
  terminal.writeError(`${problemTable(problems, { colour: terminal.colour, width: terminal.width })}\n`);
  return refuse(terminal, ['The plan could not be put on record.']);
}

function refuse(terminal: Terminal, why: readonly string[]): 1 {
  terminal.writeError(`${why.map(visibleLines).join('\n')}\nNothing was written.\n`);
  return 1;
}

const visibleLines = (text: string): string => text.split('\n').map(visible).join('\n');
