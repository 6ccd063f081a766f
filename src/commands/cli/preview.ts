import { contentFolder, outFolder } from '../../site/folders.ts';
import { readArguments } from '../arguments.ts';
import type { Command } from '../command.ts';
import { readPort } from '../port.ts';
import { previewSite } from '../previewSite.ts';

/** `npm run preview [-- --port 4321]` */
export const command: Command = async (call) => {
  const read = readArguments(call, {
    name: 'preview',
    options: { port: { type: 'string' } },
    names: false,
    usage: 'npm run preview [-- --port 4321]',
  });
  if ('exitCode' in read) return read.exitCode;
  const port = readPort(read.values.port, call.terminal);
  if (port === undefined) return 1;
  const { terminal } = call;
  const preview = await previewSite({ contentDir: contentFolder(), outDir: outFolder(), port, terminal });
  return preview === null ? 1 : 0;
};
