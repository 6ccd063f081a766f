import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { visible } from '../../problems/visible.ts';
import { openContentFolder } from '../../site/contentFiles.ts';
import { waitingFiles } from '../../site/sources.ts';
import type { Terminal } from '../terminal.ts';
import { draftFiles } from './draftFiles.ts';

export interface InboxRequest {
  readonly contentDir: string;
  /** Only these files of the inbox; all where it is absent. */
  readonly names?: readonly string[];
  readonly terminal: Terminal;
}

export interface InboxOutcome {
  /** Slugs of the drafts that were made. */
  readonly drafts: readonly string[];
  /** Names of the files that stay in the inbox. */
  readonly left: readonly string[];
}

/** Makes a draft report of every file in the inbox and takes it out of there; a file that cannot be used stays. */
export function draftInbox({ contentDir, names, terminal }: InboxRequest): InboxOutcome {
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
    });
    if (slug === null) left.push(name);
    else {
      drafts.push(slug);
      takeOut(path, join(contentDir, 'reports', slug), terminal);
    }
  }
  return { drafts, left };
}

/** Takes a file out of the inbox, but only once the draft's only session file holds the same bytes. */
function takeOut(path: string, folder: string, terminal: Terminal): void {
  const name = readdirSync(folder).find((each) => each !== 'report.md');
  try {
    if (name !== undefined && readFileSync(path).equals(readFileSync(join(folder, name)))) {
      rmSync(path);
      return;
    }
    terminal.writeError(`${visible(path)} has changed meanwhile and stays there.\n`);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    terminal.writeError(`${visible(path)} cannot be taken out of the inbox: ${why}\n`);
  }
}
