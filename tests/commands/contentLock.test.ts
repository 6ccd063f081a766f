import { existsSync, mkdirSync, readdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { beforeEach, describe, expect, test } from 'vitest';
import { recordLedger } from '../../src/commands/recordLedger.ts';
import { withContentLock, type Waiting } from '../../src/commands/writing/contentLock.ts';
import { realDisk } from '../../src/commands/writing/disk.ts';
import { contentFolder, shop } from './contentFolder.ts';
import { listen } from './listen.ts';

let content = '';
let lock = '';
beforeEach(() => {
  content = contentFolder({ 'shop.yaml': shop, 'reports/two/notes.txt': 'mine' });
  lock = join(content, '.straightface-lock');
});

/** Time that passes only while somebody waits. */
function clock(meanwhile: () => void = () => undefined): Waiting & { readonly waited: () => number } {
  const start = Date.now();
  let passed = 0;
  return {
    now: () => start + passed,
    sleep: (milliseconds) => {
      passed += milliseconds;
      meanwhile();
    },
    waited: () => passed,
  };
}

const inside = (path = ''): readonly string[] => readdirSync(join(content, path)).sort();
/** The process that started this one runs as long as it does. */
const running = process.ppid;

describe('one command writes at a time', () => {
  test('while it does, the lock names it; afterwards nothing is left', () => {
    withContentLock(content, realDisk, () =>
      expect(readFileSync(lock, 'utf8')).toBe(`${process.pid} ${hostname()}\n`),
    );
    expect(inside()).toEqual(['reports', 'shop.yaml']);
  });

  test('nor where the work fails', () => {
    const work = (): never => {
      throw new Error('no');
    };
    expect(() => withContentLock(content, realDisk, work)).toThrow('no');
    expect(existsSync(lock)).toBe(false);
  });

  test('another one waits until it ends', () => {
    writeFileSync(lock, `${running} ${hostname()}\n`);
    const waiting = clock(() => {
      if (waiting.waited() >= 3000) realDisk.rmSync(lock, { force: true });
    });
    expect(withContentLock(content, realDisk, () => 'done', waiting)).toBe('done');
    expect(waiting.waited()).toBeGreaterThanOrEqual(3000);
  });

  test('but not for ever: it says who writes, and what to do', () => {
    writeFileSync(lock, `${running} ${hostname()}\n`);
    const waiting = clock();
    expect(() => withContentLock(content, realDisk, () => 'done', waiting)).toThrow(
      `Another command (process ${running} on ${hostname()}) is writing in the content folder. Try again when it has ended; if there is none, delete ${lock}.`,
    );
    expect(waiting.waited()).toBeLessThan(20_000);
    expect(inside()).toEqual(['.straightface-lock', 'reports', 'shop.yaml']);
  });

  test.each([
    ['a process that has ended', () => `4194999 ${hostname()}\n`, 0],
    ['an earlier process of the same number', () => `${process.pid} ${hostname()}\n`, 0],
    ['a number that another process has by now', () => `${running} ${hostname()}\n`, 2 * 60 * 60],
    ['another machine', () => '1 elsewhere.example\n', 11 * 60],
    ['nobody', () => '', 11 * 60],
  ])('a lock left behind by %s is taken over', (_, owner, age) => {
    writeFileSync(lock, owner());
    const then = Date.now() / 1000 - age;
    utimesSync(lock, then, then);
    const waiting = clock();
    expect(withContentLock(content, realDisk, () => 'done', waiting)).toBe('done');
    expect(waiting.waited()).toBe(0);
    expect(inside()).toEqual(['reports', 'shop.yaml']);
  });

  test.each([
    ['another machine', '1 elsewhere.example\n'],
    ['somebody who has not said so yet', ''],
  ])('a young lock of %s is believed', (_, owner) => {
    writeFileSync(lock, owner);
    expect(() => withContentLock(content, realDisk, () => 'done', clock())).toThrow(
      'is writing in the content folder',
    );
  });

  test('a content folder that was not there is there only if something was written', () => {
    const fresh = join(content, 'new');
    withContentLock(fresh, realDisk, () => undefined);
    expect(existsSync(fresh)).toBe(false);
    withContentLock(fresh, realDisk, () => writeFileSync(join(fresh, 'a'), 'b'));
    expect(readdirSync(fresh)).toEqual(['a']);
  });
});

describe('what killed commands left half written', () => {
  test('is tidied by the next that writes; what is written now, and what is not ours, stays', () => {
    mkdirSync(join(content, 'reports/.straightface-4194999-2.new'));
    for (const path of [
      '.straightface-4194999-1.new',
      'reports/.straightface-4194999-2.new/shots.csv',
      'reports/two/.straightface-4194999-3.new',
      `reports/two/.straightface-${process.pid}-3.new`,
      `reports/two/.straightface-${running}-1.new`,
      'reports/two/.straightface-notes.new',
      'reports/two/x.new',
    ])
      writeFileSync(join(content, path), 'half');
    const { terminal } = listen();
    recordLedger({ contentDir: content, today: '2026-05-01', terminal });
    expect(inside()).toEqual(['ledger.json', 'reports', 'shop.yaml']);
    expect(inside('reports')).toEqual(['two']);
    expect(inside('reports/two')).toEqual([
      `.straightface-${running}-1.new`,
      '.straightface-notes.new',
      'notes.txt',
      'x.new',
    ]);
  });
});
