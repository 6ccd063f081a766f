import { parseArgs } from 'node:util';
import { countInWords, countProblems } from '../problems/countProblems.ts';
import { problemsJson } from '../problems/problemsJson.ts';
import { problemTable } from '../problems/table.ts';
import { contentFolder } from '../site/folders.ts';
import { loadSite } from '../site/siteContent.ts';
import { processTerminal } from './terminal.ts';

/** Problems only, nothing built: `npm run check [-- slug...] [--json]`. */
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { json: { type: 'boolean', default: false } },
});
const terminal = processTerminal();
const { problems, reports, blocked } = loadSite(contentFolder(), positionals);
const count = countProblems(problems);
if (values.json) {
  terminal.write(`${problemsJson(problems)}\n`);
} else {
  const table = problemTable(problems, {
    colour: terminal.colour,
    width: terminal.width,
    howToSeeAll: 'npm run check -- --json prints them all.',
  });
  if (table !== '') terminal.write(`${table}\n\n`);
  terminal.write(`Checked ${reports.length + blocked.length} reports: ${countInWords(count)} wrong.\n`);
}
process.exitCode = count.errors > 0 ? 1 : 0;
