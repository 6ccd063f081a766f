import { contentFolder } from '../../site/folders.ts';
import { readArguments } from '../arguments.ts';
import type { Command } from '../command.ts';
import { localDate, localTime } from '../localDate.ts';
import { terminalAsker } from '../plan/asker.ts';
import { planCommand } from '../plan/planCommand.ts';
import { planFlags, planUsage } from '../plan/planOptions.ts';

/** `npm run plan`: by flags, or asking at the terminal for whatever they leave open. */
export const command: Command = async (call) => {
  const read = readArguments(call, { name: 'plan', options: planFlags, usage: planUsage });
  if ('exitCode' in read) return read.exitCode;
  if (read.positionals.length > 0) {
    call.terminal.writeError(`Not understood: ${read.positionals.join(' ')}\nUse: ${planUsage}\n`);
    return 1;
  }
  const asker = terminalAsker();
  const now = new Date();
  const status = await planCommand({
    contentDir: contentFolder(),
    options: read.values,
    asker,
    today: localDate(now),
    time: localTime(now),
    terminal: call.terminal,
  });
  asker?.close();
  return status;
};
