import { contentFolder } from '../site/folders.ts';
import { readArguments } from './arguments.ts';
import { localDate } from './localDate.ts';
import { terminalAsker } from './plan/asker.ts';
import { planCommand } from './plan/planCommand.ts';
import { planFlags, planUsage } from './plan/planOptions.ts';
import { processTerminal } from './terminal.ts';

/** `npm run plan`: by flags, or asking at the terminal for whatever they leave open. */
const terminal = processTerminal();
const read = readArguments(process.argv.slice(2), planFlags, planUsage, terminal);
if ('exitCode' in read) process.exitCode = read.exitCode;
else if (read.positionals.length > 0) {
  terminal.writeError(`Not understood: ${read.positionals.join(' ')}\nUse: ${planUsage}\n`);
  process.exitCode = 1;
} else {
  const asker = terminalAsker();
  process.exitCode = await planCommand({
    contentDir: contentFolder(),
    options: read.values,
    asker,
    today: localDate(new Date()),
    terminal,
  });
  asker?.close();
}
