import type { Problem } from '../problems/problem.ts';
import { shopFile } from '../site/sharedFiles.ts';

/** Said where what the shop answers for all reports cannot be used; empty where it can. */
export function shopNote(problems: readonly Problem[]): string {
  return problems.some(({ file, severity }) => file === shopFile && severity === 'error')
    ? `${shopFile} has an error, so its units and defaults are not used here: npm run check tells which.\n`
    : '';
}
