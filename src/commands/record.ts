import { contentFolder } from '../site/folders.ts';
import { readArguments } from './arguments.ts';
import { localDate } from './localDate.ts';
import { recordLedger } from './recordLedger.ts';
import { processTerminal } from './terminal.ts';

/** Puts plans and published reports on record: `npm run record [-- --drop SLUG --reason "..."]`. */
const terminal = processTerminal();
const usage = 'npm run record [-- --drop NAME --reason "why"]';
const read = readArguments(
  process.argv.slice(2),
  { drop: { type: 'string' }, reason: { type: 'string' } },
  usage,
  terminal,
);
if ('exitCode' in read) process.exitCode = read.exitCode;
else {
  const { drop: slug, reason = '' } = read.values;
  if (read.positionals.length > 0 || (slug === undefined) !== (reason.trim() === '')) {
    terminal.writeError(`A planned test is dropped by its name, with the reason. Use: ${usage}\n`);
    process.exitCode = 1;
  } else {
    const recorded = recordLedger({
      contentDir: contentFolder(),
      today: localDate(new Date()),
      terminal,
      ...(slug === undefined ? {} : { drop: { slug, reason: reason.trim() } }),
    });
    process.exitCode = recorded ? 0 : 1;
  }
}
