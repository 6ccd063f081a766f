import { contentFolder } from '../../site/folders.ts';
import type { Command } from '../command.ts';
import { devSite } from '../devSite.ts';
import { readServing } from '../serving.ts';

/** `npm run dev [-- --port 4321]` */
export const command: Command = async (call) => {
  const read = readServing(call, 'dev');
  if ('exitCode' in read) return read.exitCode;
  const { port } = read;
  const server = await devSite({ contentDir: contentFolder(), port, terminal: call.terminal });
  return server === null ? 1 : 0;
};
