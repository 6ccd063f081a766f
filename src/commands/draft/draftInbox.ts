import { join } from 'node:path';
import { openContentFolder } from '../../site/contentFiles.ts';
import { waitingFiles } from '../../site/contentList.ts';
import type { Terminal } from '../terminal.ts';
import { realDisk, type Disk } from '../writing/disk.ts';
import { draftFiles } from './draftFiles.ts';

interface InboxRequest {
  readonly contentDir: string;
  /** Only these files of the inbox; all where it is absent. */
  readonly names?: readonly string[];
  readonly terminal: Terminal;
  readonly disk?: Disk;
}

interface InboxOutcome {
  /** Slugs of the drafts that were made. */
  readonly drafts: readonly string[];
  /** Names of the files that stay in the inbox. */
  readonly left: readonly string[];
}

/** Makes a draft report of every file in the inbox and takes it out of there; a file that cannot be used stays. */
export function draftInbox({ contentDir, names, terminal, disk = realDisk }: InboxRequest): InboxOutcome {
  const waiting = waitingFiles(openContentFolder(contentDir));
  const drafts: string[] = [];
  const left: string[] = [];
  for (const name of waiting.filter((each) => names === undefined || names.includes(each))) {
    const path = join(contentDir, 'inbox', name);
    const { slug } = draftFiles({
      contentDir,
      paths: [path],
      slug: null,
      otherSlug: true,
      dryRun: false,
      json: false,
      terminal,
      disk,
    });
    if (slug === null) left.push(name);
    else drafts.push(slug);
  }
  return { drafts, left };
}
