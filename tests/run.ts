import { spawn } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/** Runs everything that must hold, side by side: none of it needs what another one makes. */
const require = createRequire(import.meta.url);

/** The script behind a package's command; not every package lets it be resolved by name. */
const script = (name: string, path: string): string =>
  join(dirname(require.resolve(`${name}/package.json`)), path);

const given = process.argv.slice(2);
/** `all` leaves out no test, and asks that they run through every file of code; all else that is given is vitest's. */
const isWhole = given.includes('all');
const forVitest = [...(isWhole ? ['--coverage'] : []), ...given.filter((one) => one !== 'all')];

interface Step {
  readonly name: string;
  readonly command: readonly string[];
  /** Whether it shows what it does; the others speak when they have ended. */
  readonly live?: boolean;
}

const steps: readonly Step[] = [
  {
    name: 'tests',
    command: [script('vitest', 'vitest.mjs'), 'run', ...forVitest],
    live: true,
  },
  {
    name: 'types',
    command: [script('astro', 'bin/astro.mjs'), 'check', '--minimumSeverity', 'warning'],
  },
  {
    name: 'format',
    // Files that were in order are not read again until they change.
    command: [
      script('prettier', 'bin/prettier.cjs'),
      ...['--check', '--log-level', 'warn', '--cache', '--cache-strategy', 'content', '.'],
    ],
  },
];

function passes({ name, command, live = false }: Step): Promise<boolean> {
  return new Promise((done) => {
    const said: Buffer[] = [];
    const step = spawn(process.execPath, command, {
      stdio: ['ignore', live ? 'inherit' : 'pipe', live ? 'inherit' : 'pipe'],
      env: {
        ...process.env,
        ASTRO_TELEMETRY_DISABLED: '1',
        TZ: 'UTC',
        TESTS: isWhole ? 'all' : 'everyday',
      },
    });
    for (const stream of [step.stdout, step.stderr])
      stream?.on('data', (part: Buffer) => void said.push(part));
    step.once('error', (error) => void said.push(Buffer.from(`${error.message}\n`)));
    step.once('close', (status) => {
      process.stdout.write(Buffer.concat(said));
      console.log(status === 0 ? `The ${name}: in order.` : `The ${name}: NOT in order.`);
      done(status === 0);
    });
  });
}

const all = await Promise.all(steps.map(passes));
const failed = steps.filter((_, index) => all[index] !== true).map(({ name }) => name);
if (failed.length > 0) console.log(`\nNot in order: ${failed.join(', ')}.`);
process.exitCode = failed.length === 0 ? 0 : 1;
