import { contentFolder } from '../site/folders.ts';
import { readArguments } from './arguments.ts';
import { devSite } from './devSite.ts';
import { readPort } from './port.ts';
import { processTerminal } from './terminal.ts';

/** `npm run dev [-- --port 4321]` */
const terminal = processTerminal();
const read = readArguments(
  process.argv.slice(2),
  { port: { type: 'string' } },
  'npm run dev [-- --port 4321]',
  terminal,
);
if ('exitCode' in read) process.exitCode = read.exitCode;
else {
  const port = readPort(read.values.port, terminal);
  if (port === undefined) process.exitCode = 1;
  else if ((await devSite({ contentDir: contentFolder(), port, terminal })) === null) process.exitCode = 1;
}
