/** What each `npm run` command does, in the order in which a shop meets them. */
export const commandHelp: Readonly<Record<string, { readonly takes?: string; readonly does: string }>> = {
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
  test: { does: 'tests everything' },
  format: { does: 'formats the source' },
  reference: { does: 'writes the reference in content/README.md from the schemas' },
  picture: { does: 'takes the picture in README.md of a demo report anew' },
  help: { does: 'prints this list' },
};

export function helpText(): string {
  const lines = Object.entries(commandHelp).map(([name, { takes, does }]) => ({
    typed: `npm run ${name}${takes === undefined ? '' : ` -- ${takes}`}`,
    does,
  }));
  const widest = Math.max(...lines.map(({ typed }) => typed.length));
  const list = lines.map(({ typed, does }) => `${typed.padEnd(widest)}  ${does}`).join('\n');
  return `${list}\n\nWhat a command takes: npm run draft -- --help, and so for build, plan, check, dev, preview and record.\nEvery command works on content/ and dist/, or on the folders in CONTENT_DIR and OUT_DIR.\n`;
}
