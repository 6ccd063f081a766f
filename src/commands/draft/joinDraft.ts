import { join } from 'node:path';
import { visible, visibleJson } from '../../problems/visible.ts';
import { dryRunJson } from '../../intake/shots/outcome.ts';
import type { DraftOutcome, DraftRequest } from './draftRequest.ts';
import { printProblems, shownPath, understoodText } from './draftWords.ts';
import { realDisk } from '../writing/disk.ts';
import { readPlanned, type PlannedSession } from './joinPlan.ts';
import type { NewText, PlanAtHand } from './openPlans.ts';
import type { NamedBytes } from './readSession.ts';
import { takeOut } from './takeOut.ts';
import { writePlanned } from './writePlanned.ts';

/** Puts the files of a session into the draft of the test that was planned; what was answered there stays. */
export function joinDraft(
  { contentDir, paths, warmUps = 0, dryRun, json, terminal, disk = realDisk }: DraftRequest,
  planned: PlanAtHand,
  given: readonly NamedBytes[],
): DraftOutcome {
  const { slug } = planned.plan;
  const session = readPlanned(contentDir, planned, paths, given);
  const { files, understood, problems, mustBeMended, report } = session;
  const names = files.map(({ name }) => name);
  if (json) {
    const answers = session.shotFiles.map(dryRunJson);
    terminal.write(`${visibleJson(JSON.stringify(answers.length === 1 ? answers[0] : answers, null, 2))}\n`);
  } else {
    terminal.write(`${understoodText(names, understood)}\n`);
  }
  const stays = mustBeMended || dryRun;
  const placeOf = (name: string): string => {
    const path = paths[names.indexOf(name)];
    if (path === undefined) return name;
    return stays ? shownPath(path, contentDir) : `reports/${slug}/${name}`;
  };
  if (!json || !dryRun) printProblems(problems, placeOf, terminal);
  const refuse = (why: string): DraftOutcome => {
    terminal.writeError(`${why} Nothing was written.\n\n`);
    return { slug: null, status: 1 };
  };
  const [unsound] = planned.problems;
  if (unsound !== undefined) {
    printProblems(planned.problems, (name) => name, terminal);
    return refuse(`Not put into the planned test ${slug}: ${visible(unsound.file)} must be mended first.`);
  }
  if (warmUps > 0 && planned.newSheet === null)
    return refuse(
      `Warm-up swings cannot be put into ${planned.sheetName ?? 'an order sheet'} by itself: write a row for each there, with warm-up as contender.`,
    );
  if (mustBeMended) return refuse(`Not put into the planned test ${slug}: the file must be mended first.`);
  if (report === null)
    return refuse(
      `reports/${slug}/report.md cannot be filled in by itself: write session: ${names.join(', ')} there.`,
    );
  if (dryRun) {
    if (!json) terminal.write(`It belongs to the planned test ${slug}. Nothing was written.\n`);
    return { slug: null, status: 0 };
  }
  const place = join(contentDir, 'reports', slug);
  // The report last: without its line for the session, a command that was killed is done over.
  const texts: readonly NewText[] = [
    ...(planned.newSheet === null ? [] : [planned.newSheet]),
    { ...planned.report, text: report.text },
  ];
  const trouble = writePlanned(place, files, texts, disk);
  if (trouble !== null)
    return refuse(`${visible(trouble.changed)} in ${slug} was saved by somebody meanwhile: run it again.`);
  for (const [index, path] of paths.entries())
    takeOut(path, join(place, names[index] ?? ''), { contentDir, terminal, disk });
  if (!json) {
    terminal.write(
      [
        `This is the session of the planned test ${slug}. ${toldWords(session, planned)}`,
        ...texts.filter(({ encoding }) => encoding !== 'UTF-8').map(nowUtf8),
        `Put ${names.map(visible).join(', ')} into ${visible(place)}; filled in there: ${report.filled.join(', ')}.`,
        `Answer what stands empty in report.md; "npm run check -- ${slug}" tells what must still be answered.\n\n`,
      ].join('\n'),
    );
  }
  return { slug, status: 0 };
}

const nowUtf8 = ({ name, encoding }: NewText): string =>
  `${visible(name)} was saved as ${encoding} and is UTF-8 now, every letter as it was.`;

function toldWords({ toldBy, report }: PlannedSession, { sheetName }: PlanAtHand): string {
  switch (toldBy) {
    case 'sheet':
      return `What was hit with each shot is taken from ${sheetName ?? 'the order sheet'}.`;
    case 'files':
      return report?.sheetTakenOut === true
        ? `The file names what was hit, and ${sheetName ?? 'the order sheet'} lists other shots: it is not used.`
        : 'The file names what was hit.';
    case 'nobody':
      return sheetName === null
        ? 'Nothing tells yet what was hit with each shot.'
        : `What was hit is not known yet: correct ${sheetName} to the shots that were hit; a warm-up swing that the monitor counted is a row with warm-up as contender.`;
  }
}
