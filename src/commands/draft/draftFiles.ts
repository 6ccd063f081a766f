import { existsSync, readFileSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import { creditsNothing } from '../../findings/orderCheck.ts';
import { fromFileName } from '../../intake/draft/fileName.ts';
import { freeSlug, shortSlug } from '../../intake/draft/slugOf.ts';
import { largestFile } from '../../intake/shots/decodeFile.ts';
import { dryRunJson } from '../../intake/shots/outcome.ts';
import type { ProblemKind } from '../../problems/kinds.ts';
import { visible, visibleJson } from '../../problems/visible.ts';
import { systemWords } from '../../problems/systemWords.ts';
import { openContentFolder, sha256 } from '../../site/contentFiles.ts';
import { readShared } from '../../site/sharedFiles.ts';
import { shopNote } from '../shopNote.ts';
import { withContentLock } from '../writing/contentLock.ts';
import { realDisk, type Disk } from '../writing/disk.ts';
import { notWritten } from '../writing/notWritten.ts';
import { choosePlan, type PlanChoice } from './choosePlan.ts';
import { printProblems, quoted, shownPath, understoodText, unsureText } from './draftWords.ts';
import { fileNames } from './fileNames.ts';
import { joinDraft } from './joinDraft.ts';
import { neutralNames } from './neutralNames.ts';
import { readSession, type NamedBytes } from './readSession.ts';
import type { DraftOutcome, DraftRequest } from './draftRequest.ts';
import { takeOut } from './takeOut.ts';
import { writeDraft } from './writeDraft.ts';

const failed: DraftOutcome = { slug: null, status: 1 };

/** Reads the files of a session, says what was understood, and writes a draft report of them; never overwrites. */
export function draftFiles(request: DraftRequest): DraftOutcome {
  const { contentDir, dryRun, terminal, disk = realDisk } = request;
  const work = (): DraftOutcome => readAndWrite({ ...request, disk });
  try {
    return dryRun ? work() : withContentLock(contentDir, disk, work);
  } catch (error) {
    terminal.writeError(
      `The draft cannot be written. ${notWritten(contentDir, error)} Nothing was written.\n`,
    );
    return failed;
  }
}

function readAndWrite(request: DraftRequest & { readonly disk: Disk }): DraftOutcome {
  const { contentDir, paths, dryRun, json, terminal, disk } = request;
  const found = paths.map(readBytes);
  const unread = found.flatMap((each) => ('why' in each ? [each.why] : []));
  if (unread.length > 0) {
    terminal.writeError(`${unread.join('\n')}\nNothing was written.\n`);
    return failed;
  }
  const givenNames = fileNames(paths.map((path) => basename(path)));
  const given = found.flatMap((each, index): NamedBytes[] =>
    'bytes' in each ? [{ name: givenNames[index] ?? '', bytes: each.bytes }] : [],
  );
  const choice: PlanChoice = request.ofNoPlan === true ? { kind: 'none' } : choosePlan(request, given);
  if (choice.kind === 'plan') return joinDraft(request, choice.planned, given);
  if ((request.warmUps ?? 0) > 0 && choice.kind === 'none') {
    terminal.writeError(
      '--warm-ups goes with the session of a test that was planned, and this is none. Nothing was written.\n',
    );
    return failed;
  }
  const asGiven = readSession(given);
  const { names, people } = neutralNames(givenNames, asGiven.shotFiles);
  const renamed = names.some((name, index) => name !== givenNames[index]);
  const files = given.map(({ bytes }, index) => ({ name: names[index] ?? '', bytes }));
  const done = request.otherSlug === true ? draftedBefore(contentDir, files, choice) : null;
  if (done !== null) {
    terminal.write(
      `reports/${done} has ${names.map(visible).join(', ')} with the same shots already, so no second draft is made.\n`,
    );
    for (const [index, path] of paths.entries())
      takeOut(path, join(contentDir, 'reports', done, names[index] ?? ''), { contentDir, terminal, disk });
    return { slug: done, status: 0 };
  }
  const read = renamed ? readSession(files) : asGiven;
  if (json) {
    const answers = read.shotFiles.map(dryRunJson);
    terminal.write(`${visibleJson(JSON.stringify(answers.length === 1 ? answers[0] : answers, null, 2))}\n`);
    if (dryRun) return { slug: null, status: 0 };
  } else {
    terminal.write(`${understoodText(names, read.understood)}\n`);
    if (renamed)
      terminal.write(
        `Names of files are published, and what may be the name of a person stood in one: it goes beside the report as ${names.map(visible).join(', ')}.\n\n`,
      );
  }
  const { openColumns } = read;
  // The draft lists everybody who hit, and one thing for each of several files: what the reader of a file alone must
  // ask is answered.
  const answered: readonly ProblemKind[] =
    files.length > 1 ? ['multiple-hitters', 'club-column-missing'] : ['multiple-hitters'];
  const { orders, contenders } = read.understood;
  const inARow = orders.length === 1 && orders[0]?.order.kind === 'one-after-another';
  const problems = [
    ...read.shotFiles.flatMap(({ problems: own }) => own).filter(({ kind }) => !answered.includes(kind)),
    ...(inARow
      ? creditsNothing(
          names[0] ?? '',
          contenders.map(({ shots }) => shots),
        )
      : []),
  ];
  const slug = slugFor(
    request,
    names.map((name) => fromFileName(name, people).slug),
  );
  const mustBeMended = openColumns === null;
  const before = (name: string): string => shownPath(paths[names.indexOf(name)] ?? name, contentDir);
  const after = (name: string): string => `reports/${slug}/${name}`;
  const stays = mustBeMended || dryRun || choice.kind === 'unsure';
  printProblems(problems, stays ? before : after, terminal);
  if (mustBeMended) {
    terminal.writeError('No draft: the file must be mended first. Nothing was written.\n\n');
    return failed;
  }
  if (choice.kind === 'unsure') {
    terminal.writeError(`${unsureText(choice.plans, paths, slug)}\nNothing was written.\n\n`);
    return { ...failed, unsure: choice.plans };
  }
  if (dryRun) {
    terminal.write('Nothing was written.\n');
    return { slug: null, status: 0 };
  }
  const { shared, problems: ofShop } = readShared(openContentFolder(contentDir));
  terminal.writeError(shopNote(ofShop));
  const { shop } = shared;
  const written = writeDraft(disk, { contentDir, slug, files, people, read: { ...read, openColumns }, shop });
  if (written === 'taken') {
    terminal.writeError(
      `There is a report named ${slug} already, and it is never overwritten. Give the draft another name: ` +
        `npm run draft -- ${paths.map(quoted).join(' ')} --slug ${freeSlug(slug, taken(contentDir))}\n` +
        'Nothing was written.\n',
    );
    return failed;
  }
  for (const [index, path] of paths.entries())
    takeOut(path, join(contentDir, 'reports', slug, names[index] ?? ''), { contentDir, terminal, disk });
  if (!json) {
    const file = join(contentDir, 'reports', slug, 'report.md');
    const units = openColumns.map(({ heading }) => visible(heading)).join(', ');
    terminal.write(
      `Wrote ${visible(file)}${units === '' ? '' : `\nIt asks for the units that the file does not state: ${units}.`}\nAnswer what stands empty there; "npm run check -- ${slug}" tells what must still be answered, and "npm run dev" shows the page meanwhile.\n\n`,
    );
  }
  return { slug, status: 0 };
}

type BytesOf = { readonly bytes: Uint8Array } | { readonly why: string };

function readBytes(path: string): BytesOf {
  const shown = visible(path);
  if (!existsSync(path)) return { why: `There is no file ${shown}.` };
  try {
    const found = statSync(path);
    if (!found.isFile()) return { why: `${shown} is not a file. Name the session file itself.` };
    // Looked at before it is read: a larger one may not fit into memory.
    if (found.size > largestFile)
      return {
        why: `${shown} is too large: ${(found.size / 1_000_000).toFixed(1)} MB, and at most ${largestFile / 1_000_000} MB are read. Split the session over several files.`,
      };
    return { bytes: readFileSync(path) };
  } catch (error) {
    return { why: `${shown} cannot be read: ${systemWords(error)}.` };
  }
}

/**
 * The report that has these very files already, as where a draft was killed before it took them out of the inbox; null
 * where none has.
 */
function draftedBefore(contentDir: string, files: readonly NamedBytes[], choice: PlanChoice): string | null {
  const folder = openContentFolder(contentDir);
  const open = choice.kind === 'unsure' ? choice.plans.map(({ slug }) => slug) : [];
  const holds = (slug: string): boolean =>
    !open.includes(slug) &&
    folder.size(`reports/${slug}/report.md`) !== null &&
    files.every(({ name, bytes }) => {
      const path = `reports/${slug}/${name}`;
      // The size first: reports may be many.
      return folder.size(path) === bytes.length && folder.hash(path) === sha256(bytes);
    });
  return folder.folders('reports').find(holds) ?? null;
}

const taken =
  (contentDir: string) =>
  (slug: string): boolean =>
    existsSync(join(contentDir, 'reports', slug));

function slugFor({ contentDir, slug, otherSlug = false }: DraftRequest, slugs: readonly string[]): string {
  const wanted = slug ?? (shortSlug(slugs.join('-')) || 'session');
  return otherSlug ? freeSlug(wanted, taken(contentDir)) : wanted;
}
