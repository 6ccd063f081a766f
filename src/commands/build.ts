import { contentFolder, outFolder } from '../site/folders.ts';
import { buildSite } from './buildSite.ts';
import { processTerminal } from './terminal.ts';

const { built } = await buildSite({
  contentDir: contentFolder(),
  outDir: outFolder(),
  terminal: processTerminal(),
});
process.exitCode = built ? 0 : 1;
