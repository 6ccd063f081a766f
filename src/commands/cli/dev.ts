import { contentFolder } from '../../site/folders.ts';
import { readArguments } from '../arguments.ts';
import type { Command } from '../command.ts';
import { devSite } from '../devSite.ts';
import { readPort } from '../port.ts';

/** `npm run dev [-- --port 4321]` */
export const command: Command = async (call) => {
  const read = readArguments(call, {
    name: 'dev',
    options: { port: { type: 'string' } },
    names: false,
    usage: 'npm run dev [-- --port 4321]',
  });
  if ('exitCode' in read) return read.exitCode;
  const port = readPort(read.values.port, call.terminal);
  if (port === undefined) return 1;
  const server = await devSite({ contentDir: contentFolder(), port, terminal: call.terminal });
  return server === null ? 1 : 0;
};
