import { diskTrouble } from '../site/diskTrouble.ts';
import { ReportsFailed } from './reportsFailed.ts';

/** Why pages could not be built, in lines: of several reports a line for each. */
export function pagesFailure(error: unknown): string {
  const lines =
    error instanceof ReportsFailed
      ? error.failed.map(({ slug, error: own }) => `${slug}: ${wordsOf(own)}`)
      : [wordsOf(error)];
  const cure = lines.some((line) => /Cannot find (?:module|package)/.test(line))
    ? ['A package is missing: run npm ci.']
    : [];
  return [...lines, ...cure].map((line) => `${line}\n`).join('');
}

function wordsOf(error: unknown): string {
  return diskTrouble(error) ?? (error instanceof Error ? error.message : String(error));
}
