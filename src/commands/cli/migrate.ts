import { contentFolder } from '../../site/folders.ts';
import { readArguments } from '../arguments.ts';
import type { Command } from '../command.ts';
import { migrateCommand } from '../migrate/migrateCommand.ts';

/** `npm run migrate [-- --dry-run]` */
export const command: Command = (call) => {
  const read = readArguments(call, {
    name: 'migrate',
    options: { 'dry-run': { type: 'boolean', default: false } },
    names: false,
    usage: 'npm run migrate [-- --dry-run]',
  });
  if ('exitCode' in read) return read.exitCode;
  return migrateCommand({
    contentDir: contentFolder(),
    dryRun: read.values['dry-run'],
    terminal: call.terminal,
  });
};
