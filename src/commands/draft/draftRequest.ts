import type { Terminal } from '../terminal.ts';
import type { Disk } from '../writing/disk.ts';
import type { MaybePlanned } from './choosePlan.ts';

export interface DraftRequest {
  readonly contentDir: string;
  /** Paths of the files of one session. */
  readonly paths: readonly string[];
  /** The name of the report, where it is not to come from the files. */
  readonly slug: string | null;
  /** Whether another name is found where the one wanted is taken. */
  readonly otherSlug?: boolean;
  /** Whether they are no session of a planned test, however well they fit one. */
  readonly ofNoPlan?: boolean;
  /** Swings that the monitor counted before the first shot of a planned test. */
  readonly warmUps?: number;
  readonly dryRun: boolean;
  readonly json: boolean;
  readonly terminal: Terminal;
  readonly disk?: Disk;
}

export interface DraftOutcome {
  /** The slug of the draft that was written, or null. */
  readonly slug: string | null;
  /** The planned tests to which the files may belong, where that kept them from being used. */
  readonly unsure?: readonly MaybePlanned[];
  /** 0 where what was asked for was done. */
  readonly status: number;
}
