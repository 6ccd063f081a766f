import { contentFolder } from '../../site/folders.ts';
import { readArguments } from '../arguments.ts';
import { checkContent } from '../checkContent.ts';
import type { Command } from '../command.ts';
import { localDate } from '../localDate.ts';

/** `npm run check [-- slug...] [--json] [--strict]` */
export const command: Command = (call) => {
  const read = readArguments(call, {
    name: 'check',
    options: { json: { type: 'boolean', default: false }, strict: { type: 'boolean', default: false } },
    usage: 'npm run check -- [name of a report ...] [--json] [--strict]',
  });
  if ('exitCode' in read) return read.exitCode;
  return checkContent({
    contentDir: contentFolder(),
    only: read.positionals,
    json: read.values.json,
    strict: read.values.strict,
    today: localDate(new Date()),
    terminal: call.terminal,
  });
};
