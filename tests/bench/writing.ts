/**
 * Commands that write in a content folder, killed at random moments and on a disk that is full at random moments: is any
 * file shorter than before, is the ledger whole, and is the next command right? Run by hand:
 *
 *   node tests/bench/writing.ts kills 35
 *   mkdir /tmp/small && mount -t tmpfs -o size=512k tmpfs /tmp/small
 *   node tests/bench/writing.ts full 100 /tmp/small
 *
 * The number is that of the trials of each command.
 */
import { spawn, spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, statfsSync, watch, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { seededRandom } from '../../src/stats/random.ts';
import { filesIn, leftovers, planned, scenarios, type Scenario } from '../commands/writingScenarios.ts';

const [how = 'kills', count = '10', small = ''] = process.argv.slice(2);
const random = seededRandom('writing');

interface Seen {
  trials: number;
  /** Killed, or refused by the full disk. */
  ended: number;
  /** Of these, after the command had begun to write. */
  writing: number;
  lost: number;
  nextRight: number;
}

const command = (
  content: string,
  { typed, outDir }: Scenario,
): readonly [string, readonly string[], object] => {
  const [file = '', ...rest] = typed(content);
  const site = outDir === undefined ? {} : { OUT_DIR: outDir() };
  const env = { ...process.env, CONTENT_DIR: content, NO_COLOR: '1', ...site };
  return [process.execPath, [resolve('src/commands', file), ...rest], { env, stdio: 'ignore' }];
};

function run(content: string, scenario: Scenario): void {
  spawnSync(...command(content, scenario));
}

function isLost(
  content: string,
  before: ReturnType<typeof filesIn>,
  whole: ReturnType<typeof filesIn>,
): boolean {
  const now = filesIn(content);
  const ledgerKept = !('ledger.json' in before) || planned(content).length >= 2;
  return !ledgerKept || Object.keys(before).some((path) => ![before[path], whole[path]].includes(now[path]));
}

const same = (one: object, other: object): boolean => JSON.stringify(one) === JSON.stringify(other);

async function killed(
  content: string,
  scenario: Scenario,
  usual: number,
  inWriting: boolean,
): Promise<boolean> {
  const running = spawn(...command(content, scenario));
  const ended = new Promise<string | null>((done) => running.on('exit', (_status, signal) => done(signal)));
  const kill = (): void => void running.kill('SIGKILL');
  const watcher = watch(content, () => {
    watcher.close();
    if (inWriting) setTimeout(kill, random.uniform() * 25);
  });
  const timer = inWriting ? null : setTimeout(kill, random.uniform() * usual);
  const signal = await ended;
  watcher.close();
  if (timer !== null) clearTimeout(timer);
  return signal === 'SIGKILL';
}

for (const scenario of scenarios) {
  const seen: Seen = { trials: 0, ended: 0, writing: 0, lost: 0, nextRight: 0 };
  const template = await scenario.make();
  const before = filesIn(template);
  const finished = mkdtempSync(join(tmpdir(), 'writing-'));
  cpSync(template, finished, { recursive: true });
  const start = performance.now();
  if (how === 'kills') run(finished, scenario);
  else await scenario.run(finished);
  const usual = performance.now() - start;
  const whole = filesIn(finished);
  if (same(before, whole)) throw new Error(`${scenario.name} writes nothing`);
  for (let trial = 0; trial < Number(count); trial += 1) {
    const parent = how === 'kills' ? tmpdir() : small;
    const content = mkdtempSync(join(parent, 'writing-'));
    cpSync(template, content, { recursive: true });
    seen.trials += 1;
    if (how === 'kills') {
      if (await killed(content, scenario, usual, trial % 3 !== 0)) seen.ended += 1;
      if (leftovers(content).length > 0) seen.writing += 1;
    } else {
      const { bavail, bsize } = statfsSync(small);
      const left = Math.floor(random.uniform() * 12) * bsize;
      writeFileSync(join(small, 'filler'), new Uint8Array(bavail * bsize - left));
      const { ok, said } = await scenario.run(content);
      if (!ok) seen.ended += 1;
      if (!ok && !said.includes('ENOSPC')) throw new Error(said);
      if (leftovers(content).length > 0) seen.writing += 1;
    }
    if (isLost(content, before, whole)) seen.lost += 1;
    rmSync(join(small || tmpdir(), 'filler'), { force: true });
    await scenario.next(content);
    if (same(filesIn(content), whole) && leftovers(content).length === 0) seen.nextRight += 1;
    else console.log(content, Object.keys(filesIn(content)), leftovers(content));
    rmSync(content, { recursive: true, force: true });
  }
  console.log(scenario.name, JSON.stringify(seen));
}
