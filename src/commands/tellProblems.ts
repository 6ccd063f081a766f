import { countInWords, countProblems } from '../problems/countProblems.ts';
import { problemTable } from '../problems/table.ts';
import type { SiteContent } from '../site/siteContent.ts';
import type { Terminal } from './terminal.ts';
import { waitingText } from './waitingText.ts';

/**
 * Prints what is wrong with a site before it is built, what waits in the inbox, and which drafts are not finished.
 * Says whether it may be published: an unfinished draft keeps nothing else back.
 */
export function tellProblems(site: SiteContent, terminal: Terminal): boolean {
  const unfinished = site.blocked.filter((report) => report.unfinished);
  const waiting = new Set(unfinished.flatMap(({ problems }) => problems));
  const problems = site.problems.filter((problem) => !waiting.has(problem));
  const table = problemTable(problems, {
    colour: terminal.colour,
    width: terminal.width,
    howToSeeAll: 'npm run check -- --json prints them all.',
  });
  if (table !== '') terminal.writeError(`${table}\n\n`);
  terminal.writeError(waitingText(site.waiting));
  for (const { slug, problems: open } of unfinished) {
    const count = countInWords(countProblems(open));
    terminal.writeError(
      `${slug}: a draft with answers still to be given (${count}); see npm run check -- ${slug}\n`,
    );
  }
  return countProblems(problems).errors === 0;
}
