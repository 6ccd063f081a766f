import { contentFolder } from '../site/folders.ts';
import { readArguments } from './arguments.ts';
import { checkContent } from './checkContent.ts';
import { processTerminal } from './terminal.ts';

/** `npm run check [-- slug...] [--json]` */
const terminal = processTerminal();
const read = readArguments(
  process.argv.slice(2),
  { json: { type: 'boolean', default: false } },
  'npm run check -- [name of a report ...] [--json]',
  terminal,
);
process.exitCode =
  'exitCode' in read
    ? read.exitCode
    : checkContent({
        contentDir: contentFolder(),
        only: read.positionals,
        json: read.values.json,
        terminal,
      });
