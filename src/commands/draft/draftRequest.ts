import type { Terminal } from '../terminal.ts';
import type { Disk } from '../writing/disk.ts';

export interface DraftRequest {
  readonly contentDir: string;
  /** Paths of the files of one session. */
  readonly paths: readonly string[];
  /** The name of the report, where it is not to come from the files. */
  readonly slug: string | null;
  /** Whether another name is found where the one wanted is taken. */
  readonly otherSlug?: boolean;
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
  /** 0 where what was asked for was done. */
  readonly status: number;
}
