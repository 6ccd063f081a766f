import { contentFolder, outFolder } from '../../site/folders.ts';
import type { Command } from '../command.ts';
import { readServing } from '../serving.ts';
import { previewSite } from '../previewSite.ts';

/** `npm run preview [-- --port 4321]` */
export const command: Command = async (call) => {
  const read = readServing(call, 'preview');
  if ('exitCode' in read) return read.exitCode;
  const { port } = read;
  const { terminal } = call;
  const preview = await previewSite({ contentDir: contentFolder(), outDir: outFolder(), port, terminal });
  return preview === null ? 1 : 0;
};
