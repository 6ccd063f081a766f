import { nearest } from '../../intake/authored/nearest.ts';
import { visible } from '../../problems/visible.ts';
import { version } from '../../site/version.ts';
import type { Command } from '../command.ts';
import { shopHelp } from '../helpText.ts';

type Load = () => Promise<{ readonly command: Command }>;

/** What stands behind each name; loaded when it is asked for, so that no command waits for another's code. */
export const loaders: Readonly<Record<string, Load>> = {
  start: () => import('./start.ts'),
  build: () => import('./build.ts'),
  plan: () => import('./plan.ts'),
  draft: () => import('./draft.ts'),
  check: () => import('./check.ts'),
  dev: () => import('./dev.ts'),
  preview: () => import('./preview.ts'),
  record: () => import('./record.ts'),
  migrate: () => import('./migrate.ts'),
  init: () => import('./init.ts'),
};

/** `straightface NAME ...`: the commands of `npm run` under one name, for folders that have it as a package. */
export const command: Command = async (call) => {
  const [name = 'help', ...typed] = call.typed;
  const load = Object.hasOwn(loaders, name) ? loaders[name] : undefined;
  if (load !== undefined) return (await load()).command({ ...call, typed });
  if (['help', '--help', '-h'].includes(name)) {
    call.terminal.write(shopHelp());
    return 0;
  }
  if (['--version', '-v'].includes(name)) {
    call.terminal.write(`${version}\n`);
    return 0;
  }
  const meant = nearest(name, [...Object.keys(loaders), 'help']);
  call.terminal.writeError(
    `There is no command "${visible(name)}".${meant === null ? '' : ` Did you mean "${meant}"?`} "straightface help" lists all.\n`,
  );
  return 1;
};
