import type { ParseArgsConfig } from 'node:util';
import type { Call } from './command.ts';

export interface KeptByNpm {
  /** As they are typed to the command. */
  readonly flags: readonly string[];
  /** Those whose value npm did not hand on. */
  readonly lost: readonly string[];
}

/** Said to npm itself and set by `npx` for all that it starts: nobody need have meant our command. */
const ofNpmAlone = ['yes'];

/**
 * Flags of a command that npm kept for itself, since no `--` stood before them. It hands them on as `npm_config_...`:
 * a flag alone and the flag of a value after a blank as `true`, `--slug=name` as `name`, repeated ones with an empty line
 * between them. npm 12 refuses those that it does not know.
 */
export function keptByNpm(
  command: string,
  options: NonNullable<ParseArgsConfig['options']>,
  environment: Call['environment'],
): KeptByNpm {
  // Else what is set is meant for whatever npm has started, and not for us.
  if (environment['npm_lifecycle_event'] !== command) return { flags: [], lost: [] };
  const flags: string[] = [];
  const lost: string[] = [];
  for (const [name, { type }] of Object.entries(options)) {
    const kept = environment[`npm_config_${name.replaceAll('-', '_')}`];
    if (kept === undefined || ofNpmAlone.includes(name)) continue;
    const values = kept.split('\n\n');
    if (type === 'boolean') flags.push(...(kept === 'true' ? [`--${name}`] : []));
    else if (values.every((value) => value !== '' && value !== 'true'))
      flags.push(...values.map((value) => `--${name}=${value}`));
    else lost.push(`--${name}`);
  }
  return { flags, lost };
}
