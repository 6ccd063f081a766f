import { resolve } from 'node:path';
import { existsSync } from 'node:fs';
import { contentFolder } from '../site/folders.ts';
import { readArguments } from './arguments.ts';
import { draftCommand } from './draft/draftCommand.ts';
import { processTerminal } from './terminal.ts';

/** `npm run draft [-- FILE.csv ...] [--slug name] [--warm-ups 10] [--dry-run] [--json]` */
const terminal = processTerminal();
const usage = 'npm run draft -- FILE.csv [FILE.csv ...] [--slug name] [--warm-ups 10] [--dry-run] [--json]';
const read = readArguments(
  process.argv.slice(2),
  {
    slug: { type: 'string' },
    'warm-ups': { type: 'string', default: '0' },
    'dry-run': { type: 'boolean', default: false },
    json: { type: 'boolean', default: false },
  },
  usage,
  terminal,
);

/** npm starts its commands in the folder of the project; a path is meant from where the person stands. */
function fromWhereTyped(path: string): string {
  const there = resolve(process.env['INIT_CWD'] ?? '.', path);
  return existsSync(there) ? there : resolve(path);
}

process.exitCode =
  'exitCode' in read
    ? read.exitCode
    : draftCommand({
        contentDir: contentFolder(),
        paths: read.positionals.map(fromWhereTyped),
        slug: read.values.slug ?? null,
        warmUps: read.values['warm-ups'],
        dryRun: read.values['dry-run'],
        json: read.values.json,
        terminal,
      });
