import { contentFolder } from '../../site/folders.ts';
import { readArguments } from '../arguments.ts';
import type { Command } from '../command.ts';
import { openInBrowser } from '../desk/openInBrowser.ts';
import { devSite } from '../devSite.ts';
import { readPort } from '../port.ts';

/** `npm start [-- --port 4321]` */
export const command: Command = async (call) => {
  const read = readArguments(call, {
    name: 'start',
    options: { port: { type: 'string' } },
    names: false,
    usage: 'npm run start [-- --port 4321]',
  });
  if ('exitCode' in read) return read.exitCode;
  const port = readPort(read.values.port, call.terminal);
  if (port === undefined) return 1;
  // A machine that builds sites has nobody before it.
  const isWatched = process.stdout.isTTY === true && (call.environment['CI'] ?? '') === '';
  const server = await devSite({
    contentDir: contentFolder(),
    port,
    terminal: call.terminal,
    open: isWatched ? openInBrowser : null,
  });
  return server === null ? 1 : 0;
};
