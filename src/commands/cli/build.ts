import { contentFolder, outFolder } from '../../site/folders.ts';
import { readArguments } from '../arguments.ts';
import { buildSite } from '../buildSite.ts';
import type { Command } from '../command.ts';
import { localDate } from '../localDate.ts';

/** `npm run build` */
export const command: Command = async (call) => {
  const usage = 'npm run build';
  const read = readArguments(call, { name: 'build', options: {}, usage });
  if ('exitCode' in read) return read.exitCode;
  if (read.positionals.length > 0) {
    call.terminal.writeError(`All reports are built together. Use: ${usage}\n`);
    return 1;
  }
  const { built } = await buildSite({
    contentDir: contentFolder(),
    outDir: outFolder(),
    today: localDate(new Date()),
    terminal: call.terminal,
  });
  return built ? 0 : 1;
};
