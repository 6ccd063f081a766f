import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { contentFolder } from '../../site/folders.ts';
import { readArguments } from '../arguments.ts';
import type { Call, Command } from '../command.ts';
import { draftCommand } from '../draft/draftCommand.ts';

/** `npm run draft [-- FILE.csv ...] [--slug name] [--warm-ups 10] [--dry-run] [--json]` */
export const command: Command = (call) => {
  const read = readArguments(call, {
    name: 'draft',
    options: {
      slug: { type: 'string' },
      'warm-ups': { type: 'string', default: '0' },
      'dry-run': { type: 'boolean', default: false },
      json: { type: 'boolean', default: false },
    },
    usage: 'npm run draft -- FILE.csv [FILE.csv ...] [--slug name] [--warm-ups 10] [--dry-run] [--json]',
  });
  if ('exitCode' in read) return read.exitCode;
  return draftCommand({
    contentDir: contentFolder(),
    paths: read.positionals.map((path) => fromWhereTyped(path, call.environment)),
    slug: read.values.slug ?? null,
    warmUps: read.values['warm-ups'],
    dryRun: read.values['dry-run'],
    json: read.values.json,
    terminal: call.terminal,
  });
};

/** npm starts its commands in the folder of the project; a path is meant from where the person stands. */
function fromWhereTyped(path: string, environment: Call['environment']): string {
  const there = resolve(environment['INIT_CWD'] ?? '.', path);
  return existsSync(there) ? there : resolve(path);
}
