import { contentFolder } from '../../site/folders.ts';
import type { Command } from '../command.ts';
import { openInBrowser } from '../desk/openInBrowser.ts';
import { devSite } from '../devSite.ts';
import { readServing } from '../serving.ts';

/** `npm start [-- --port 4321]` */
export const command: Command = async (call) => {
  const read = readServing(call, 'start');
  if ('exitCode' in read) return read.exitCode;
  const { port } = read;
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
