import type { UnsureFit } from '../intake/plan/planFit.ts';
import type { PlanAnswers } from '../planning/planAnswers.ts';
import type { PlanRecorded } from '../planning/planRecorded.ts';

/** A file that was dropped on the desk. */
export interface DroppedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Where session files belong: to the plan that they fit, to one that was named, or to none. */
export interface Placing {
  readonly plan:
    | { readonly kind: 'as-they-fit' }
    | { readonly kind: 'named'; readonly slug: string }
    | { readonly kind: 'none' };
  /** Swings that the monitor counted before the first shot of a planned test. */
  readonly warmUps: number;
}

/** A planned test to which files may belong, and what keeps that from being sure. */
export interface MaybePlanned extends Omit<UnsureFit, 'kind'> {
  readonly slug: string;
}

/** What became of session files; `said` is what the command said of it. */
export interface Drafted {
  /** The report that they are in; null where they are in none. */
  readonly slug: string | null;
  /** Whether that is one of a test that was planned. */
  readonly joinsPlan: boolean;
  /** The planned tests to which they may belong, where that kept them from being used. */
  readonly unsure: readonly MaybePlanned[];
  readonly said: string;
}

/** Whether a text was written. */
export type Saved =
  | { readonly kind: 'written' }
  /** Somebody else has written there since; nothing was written. */
  | { readonly kind: 'changed' }
  /** The disk refuses; nothing was written. */
  | { readonly kind: 'refused'; readonly why: string };

export interface Built {
  readonly built: boolean;
  readonly said: string;
  readonly outDir: string;
}

/** A report that is to stand at another address. */
export interface Renaming {
  readonly slug: string;
  /** The name of its folder by then: small letters, digits and hyphens. */
  readonly to: string;
  /** Its file by then. */
  readonly text: string;
  /** SHA-256 of its file as it was when the text was made of it. */
  readonly seen: string;
}

/** What was put on record; `said` is what the command said of it. */
export interface OnRecord {
  readonly recorded: boolean;
  readonly said: string;
}

/** What the desk asks of the commands, which pass it in. */
export interface DeskWork {
  /**
   * Puts a text in the place of a file of the content folder, whole or not at all.
   *
   * @param file path from the content folder
   * @param seen SHA-256 of the file as it was when the text was made of it; null where there was none
   */
  readonly save: (file: string, text: string, seen: string | null) => Saved;
  /** Gives the folder of a report another name that none has, whole or not at all. */
  readonly rename: (renaming: Renaming) => Saved;
  /** Drafts a report of the files of one session, or puts them into that of their plan. */
  readonly draft: (files: readonly DroppedFile[], placing: Placing) => Drafted;
  /** The same of files that wait in the inbox, which are then taken out of it. */
  readonly draftWaiting: (names: readonly string[], placing: Placing) => Drafted;
  /** Puts a plan on record, and writes its folder. */
  readonly plan: (answers: PlanAnswers) => Promise<PlanRecorded>;
  readonly build: () => Promise<Built>;
  /** Puts plans and published reports on record, and keeps the versions that corrections replace. */
  readonly record: () => OnRecord;
  /** Serves the built site on this machine and gives the address of its first page; null where none has been built. */
  readonly preview: () => Promise<string | null>;
  /** The day where the shop is, ISO 8601. */
  readonly today: () => string;
}
