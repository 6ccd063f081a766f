import { contentFolder, outFolder } from '../../site/folders.ts';
import { readArguments } from '../arguments.ts';
import type { Command } from '../command.ts';
import { localDate, localTime } from '../localDate.ts';
import { recordLedger } from '../recordLedger.ts';

/** Puts plans and published reports on record: `npm run record [-- --drop SLUG --reason "..."]`. */
export const command: Command = (call) => {
  const usage = 'npm run record [-- --drop NAME --reason "why"]';
  const read = readArguments(call, {
    name: 'record',
    options: { drop: { type: 'string' }, reason: { type: 'string' } },
    usage,
  });
  if ('exitCode' in read) return read.exitCode;
  const { drop: slug, reason = '' } = read.values;
  if (read.positionals.length > 0 || (slug === undefined) !== (reason.trim() === '')) {
    call.terminal.writeError(`A planned test is dropped by its name, with the reason. Use: ${usage}\n`);
    return 1;
  }
  const now = new Date();
  const recorded = recordLedger({
    contentDir: contentFolder(),
    outDir: outFolder(),
    today: localDate(now),
    time: localTime(now),
    terminal: call.terminal,
    ...(slug === undefined ? {} : { drop: { slug, reason: reason.trim() } }),
  });
  return recorded ? 0 : 1;
};
