import { statSync } from 'node:fs';
import { visible } from '../../problems/visible.ts';
import { slugOf } from '../../intake/draft/slugOf.ts';
import { openContentFolder } from '../../site/contentFiles.ts';
import { notForInbox } from '../../site/inboxProblems.ts';
import { withContentLock } from '../writing/contentLock.ts';
import { realDisk } from '../writing/disk.ts';
import { notWritten } from '../writing/notWritten.ts';
import { hasLeftovers } from '../writing/ownNames.ts';
import { draftFiles } from './draftFiles.ts';
import type { DraftRequest } from './draftRequest.ts';
import { draftInbox } from './draftInbox.ts';

interface DraftTyped extends Omit<DraftRequest, 'warmUps'> {
  /** As typed: how many warm-up swings the monitor counted before the first shot of a planned test. */
  readonly warmUps?: string;
}

/** Drafts a report of the files named; without any, of each file in the inbox. Gives the exit status. */
export function draftCommand({ warmUps = '0', ...request }: DraftTyped): number {
  const { contentDir, paths, slug, dryRun, json, terminal, disk } = request;
  if (!/^\d{1,2}$/.test(warmUps)) {
    terminal.writeError(`--warm-ups ${warmUps}: a whole number up to 99. Nothing was written.\n`);
    return 1;
  }
  if (slug !== null && slugOf(slug) !== slug) {
    terminal.writeError(
      `--slug ${slug}: use small letters, digits and single hyphens, 40 characters at most` +
        `${slugOf(slug) === '' ? '' : `, such as ${slugOf(slug)}`}. Nothing was written.\n`,
    );
    return 1;
  }
  if (paths.length > 0) return draftFiles({ ...request, warmUps: Number(warmUps) }).status;
  if (slug !== null || dryRun || json || warmUps !== '0') {
    terminal.writeError(
      '--slug, --warm-ups, --dry-run and --json go with the name of a file. Nothing was written.\n',
    );
    return 1;
  }
  if (statSync(contentDir, { throwIfNoEntry: false })?.isDirectory() === false) {
    terminal.writeError(
      `${visible(contentDir)} is a file, and content is kept in a folder. Nothing was written.\n`,
    );
    return 1;
  }
  tidyAfterKills(request);
  const { drafts, left } = draftInbox({ contentDir, terminal, ...(disk === undefined ? {} : { disk }) });
  const strangers = notForInbox(openContentFolder(contentDir));
  for (const { file, found, cure } of strangers)
    terminal.writeError(`${visible(file)} is ${found ?? 'no CSV'}, and was left there. ${cure}\n`);
  if (drafts.length + left.length === 0) {
    terminal.write(
      `No CSV file waits in ${contentDir}/inbox. Put one there, or name one: npm run draft -- FILE.csv\n`,
    );
  }
  if (left.length > 0) terminal.writeError(`Still in the inbox: ${left.map(visible).join(', ')}\n`);
  return left.length > 0 ? 1 : 0;
}

/** What a killed command has left is tidied even where nothing waits. */
function tidyAfterKills({ contentDir, terminal, disk = realDisk }: DraftTyped): void {
  if (!hasLeftovers(contentDir)) return;
  try {
    withContentLock(contentDir, disk, () => undefined);
  } catch (error) {
    terminal.writeError(`${notWritten(contentDir, error)}\n`);
  }
}
