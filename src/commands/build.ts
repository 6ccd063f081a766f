import { contentFolder, outFolder } from '../site/folders.ts';
import { readArguments } from './arguments.ts';
import { buildSite } from './buildSite.ts';
import { processTerminal } from './terminal.ts';

/** `npm run build` */
const terminal = processTerminal();
const usage = 'npm run build';
const read = readArguments(process.argv.slice(2), {}, usage, terminal);
if ('exitCode' in read) process.exitCode = read.exitCode;
else if (read.positionals.length > 0) {
  terminal.writeError(`All reports are built together. Use: ${usage}\n`);
  process.exitCode = 1;
} else {
  const { built } = await buildSite({ contentDir: contentFolder(), outDir: outFolder(), terminal });
  process.exitCode = built ? 0 : 1;
}
