import { contentFolder, outFolder } from '../site/folders.ts';
import { readArguments } from './arguments.ts';
import { readPort } from './port.ts';
import { previewSite } from './previewSite.ts';
import { processTerminal } from './terminal.ts';

/** `npm run preview [-- --port 4321]` */
const terminal = processTerminal();
const read = readArguments(
  process.argv.slice(2),
  { port: { type: 'string' } },
  'npm run preview [-- --port 4321]',
  terminal,
);
if ('exitCode' in read) process.exitCode = read.exitCode;
else {
  const port = readPort(read.values.port, terminal);
  const preview =
    port === undefined
      ? null
      : await previewSite({ contentDir: contentFolder(), outDir: outFolder(), port, terminal });
  if (preview === null) process.exitCode = 1;
}
