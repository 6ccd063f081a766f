import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { describe, expect, test } from 'vitest';
import { contentFolder, shop } from './contentFolder.ts';

/** Of util-linux: runs a command at a terminal of its own. */
const hasScript =
  spawnSync('script', ['--version'], { encoding: 'utf8' }).stdout?.includes('util-linux') ?? false;

interface Typed {
  /** What the command has last said. */
  readonly after: RegExp;
  readonly keys: string;
}

/** Starts `plan` at a real terminal and types each answer when it is asked for. */
async function typedAt(contentDir: string, typing: readonly Typed[], columns = 80) {
  const command = `stty cols ${columns}; "${process.execPath}" src/commands/plan.ts --slug asked`;
  const running = spawn('script', ['--quiet', '--return', '--command', command, '/dev/null'], {
    env: { ...process.env, CONTENT_DIR: contentDir, TERM: 'xterm', NO_COLOR: '1' },
  });
  const left = [...typing];
  let said = '';
  let read = 0;
  running.stdout.setEncoding('utf8').on('data', (text: string) => {
    said += text;
    const [next] = left;
    if (next === undefined || !next.after.test(said.slice(read))) return;
    read = said.length;
    left.shift();
    // Tab completes only where it comes alone, as from a keyboard.
    void [...next.keys.split(/(\t)/)].reduce(async (before, keys) => {
      await before;
      running.stdin.write(keys);
      await setTimeout(100);
    }, Promise.resolve());
  });
  const ended = once(running, 'close');
  const patience = setTimeout(60_000, 'still running', { ref: false });
  const [status]: unknown[] = await Promise.race([ended, patience.then((word) => [word])]);
  running.kill();
  return { status, said: said.replaceAll('\r', ''), left };
}

const ctrlC = '\u0003';
const ctrlD = '\u0004';
const enter = '\r';
const tab = '\t';

describe.skipIf(!hasScript)('plan at a terminal', () => {
  test.each([80, 24])('asks, again where an answer cannot be used, %i columns wide', async (columns) => {
    const content = contentFolder({ 'shop.yaml': shop });
    const { status, said, left } = await typedAt(
      content,
      [
        { after: /What is compared\?/, keys: `Alder 9°, Birch 9°${enter}` },
        { after: /The one thing that/, keys: `head${enter}` },
        { after: /The one metric/, keys: enter },
        { after: /The smallest gap/, keys: `5${enter}` },
        { after: /Expected: a number with a unit[\s\S]*The smallest gap/, keys: enter },
        { after: /Which kind of club/, keys: `dr${tab}${enter}` },
        { after: /Who hits/, keys: enter },
        { after: /A good player/, keys: `good${enter}` },
        { after: /The spread of carry/, keys: enter },
        { after: /The order/, keys: `m${tab}2${enter}` },
        { after: /How many shots/, keys: `12${enter}` },
        { after: /What do you expect/, keys: enter },
      ],
      columns,
    );
    expect([status, left], said).toEqual([0, []]);
    const report = readFileSync(join(content, 'reports/asked/report.md'), 'utf8');
    expect(report).toMatch(/^ {2}shots_per_contender: 12$/m);
    expect(report).toMatch(/^ {2}carry: 5 yd$/m);
    expect(report).toMatch(/^ {2}order: '?mini-blocks of 2 shots/m);
    expect(report).toContain('Alder 9°');
    expect(said.match(/Tab completes/g)).toHaveLength(1);
  });

  test('Tab shows the choices where nothing is typed', async () => {
    const { said } = await typedAt(contentFolder({ 'shop.yaml': shop }), [
      { after: /What is compared\?/, keys: `Alder, Birch${enter}` },
      { after: /The one thing that/, keys: `head${enter}` },
      { after: /The one metric/, keys: tab + tab },
      { after: /ball_speed[\s\S]*spin_rate/, keys: ctrlC },
    ]);
    expect(said).toMatch(/ball_speed/);
    expect(said).toMatch(/No plan\./);
  });

  test.each([
    ['Ctrl-C', ctrlC],
    ['Ctrl-D', ctrlD],
    ['Ctrl-C in the middle of an answer', `hea${ctrlC}`],
  ])('%s ends it, and nothing is written', async (_what, keys) => {
    const content = contentFolder({ 'shop.yaml': shop });
    const { status, said } = await typedAt(content, [
      { after: /What is compared\?/, keys: `Alder, Birch${enter}` },
      { after: /The one thing that/, keys },
    ]);
    expect(status).toBe(1);
    expect(said).toMatch(/\nNo plan\.\nNothing was written\.\n$/);
    expect(said).not.toMatch(/^\s+at /m);
    expect([readdirSync(content), existsSync(join(content, 'ledger.json'))]).toEqual([['shop.yaml'], false]);
  });
});
