interface Help {
  readonly takes?: string;
  readonly does: string;
}

interface Line {
  readonly typed: string;
  readonly does: string;
}

/** What each command of a shop does, in the order in which it meets them: `npm run` starts them, here and there. */
export const shopCommands: Readonly<Record<string, Help>> = {
  start: { does: 'opens the desk: from a session file to a published page in a browser' },
  build: { does: 'checks content/, works everything out and writes the site into dist/' },
  plan: {
    takes: '[--contender NAME ...]',
    does: 'before hitting: how many shots, a random order, a sheet to hit by, a draft report on record',
  },
  draft: {
    takes: '[FILE.csv ...]',
    does: 'makes a draft report of session files, or of all that waits in the inbox',
  },
  check: {
    takes: '[NAME ...] [--json] [--strict]',
    does: 'shows every problem of every report, builds nothing; with --strict warnings fail it too',
  },
  dev: { does: 'shows the site with drafts and reloads on every change' },
  preview: { does: 'serves dist/ as a plain host would' },
  record: {
    takes: '[--drop NAME --reason TEXT]',
    does: 'puts plans and published reports on record in ledger.json',
  },
  migrate: { does: 'brings content that was written for an earlier version up to this one' },
  help: { does: 'prints this list' },
};

/** What those who keep the code have besides. */
export const developerCommands: Readonly<Record<string, Help>> = {
  test: { does: 'tests all code, and a page or two of each kind' },
  testall: { does: 'tests everything, and that tests run through every file of code' },
  format: { does: 'formats the source' },
  reference: { does: 'writes the reference in content/README.md from the schemas' },
  picture: { does: 'takes the picture in README.md of a demo report anew' },
};

/** What there is only as a package. */
const firstCommand: Line = {
  typed: 'npx straightface init FOLDER',
  does: 'writes a folder to begin with: content/ with a shop.yaml, package.json, a workflow',
};

const linesOf = (commands: Readonly<Record<string, Help>>): readonly Line[] =>
  Object.entries(commands).map(([name, { takes, does }]) => ({
    typed: `npm run ${name}${takes === undefined ? '' : ` -- ${takes}`}`,
    does,
  }));

/** For a checkout of the program. */
export const helpText = (): string => told([...linesOf(shopCommands), ...linesOf(developerCommands)]);

/** For a folder that has the program as a package. */
export const shopHelp = (): string => told([...linesOf(shopCommands), firstCommand]);

function told(lines: readonly Line[]): string {
  const widest = Math.max(...lines.map(({ typed }) => typed.length));
  const list = lines.map(({ typed, does }) => `${typed.padEnd(widest)}  ${does}`).join('\n');
  return `${list}\n\nWhat a command takes: npm run draft -- --help, and so for build, plan, check, dev, preview, record and migrate.\nEvery command works on content/ and dist/, or on the folders in CONTENT_DIR and OUT_DIR.\n`;
}
