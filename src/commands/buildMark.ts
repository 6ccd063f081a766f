import { existsSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { isRunning } from './isRunning.ts';

/** What an earlier mark says of the copies of pages that Astro keeps. */
export type MarkFound =
  /** The last build ended well. */
  | 'none'
  /** A build was killed or failed half way: copies and their list may not belong together. */
  | 'left-behind'
  /** Another build is at work on them. */
  | 'in-use';

/** No build takes longer, milliseconds: a number of a process may have gone to another one since. */
const longest = 60 * 60 * 1000;

/**
 * Marks that a build is at work, and says what mark was there before. Astro trusts its copies of pages by a list that
 * it writes last: killed in between, it would take the wrong page for the right one.
 */
export function markBuild(file: string, now: number): MarkFound {
  const found = markIn(file, now);
  if (found === 'in-use') return found;
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, String(process.pid));
  return found;
}

/** Says that all went well. */
export function unmarkBuild(file: string): void {
  rmSync(file, { force: true });
}

function markIn(file: string, now: number): MarkFound {
  if (!existsSync(file)) return 'none';
  const builder = Number(readFileSync(file, 'utf8'));
  const young = now - statSync(file).mtimeMs < longest;
  return young && builder !== process.pid && isRunning(builder) ? 'in-use' : 'left-behind';
}
