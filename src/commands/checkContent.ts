import { countInWords, countProblems } from '../problems/countProblems.ts';
import { problemsJson } from '../problems/problemsJson.ts';
import { problemTable } from '../problems/table.ts';
import { checkedSite } from '../site/checkedSite.ts';
import type { Terminal } from './terminal.ts';
import { waitingText } from './waitingText.ts';

interface CheckRequest {
  readonly contentDir: string;
  /** Slugs of the reports to look at; all of them where none is named. */
  readonly only: readonly string[];
  readonly json: boolean;
  /** Whether warnings that nobody answered count as errors do. */
  readonly strict?: boolean;
  /** ISO 8601; null where no clock is asked. */
  readonly today?: string | null;
  readonly terminal: Terminal;
}

/** Problems only, nothing built. Gives the exit status: 1 where there is an error, or a warning where these count too. */
export function checkContent(request: CheckRequest): number {
  const { contentDir, only, json, strict = false, terminal, today = null } = request;
  const { problems, reports, waiting } = checkedSite(contentDir, only, today);
  const count = countProblems(problems);
  if (json) {
    terminal.write(`${problemsJson(problems)}\n`);
  } else {
    const table = problemTable(problems, {
      colour: terminal.colour,
      width: terminal.width,
      howToSeeAll: 'npm run check -- --json prints them all.',
    });
    if (table !== '') terminal.write(`${table}\n\n`);
    terminal.write(waitingText(waiting));
    const found = count.errors + count.warnings === 0 ? 'nothing wrong' : countInWords(count);
    terminal.write(`Checked ${reports} ${reports === 1 ? 'report' : 'reports'}: ${found}.\n`);
  }
  return count.errors > 0 || (strict && count.warnings > 0) ? 1 : 0;
}
