import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { progress, type Progress } from '../../src/commands/progress.ts';

let said = '';
let clock = 0;
const now = (): number => clock;

beforeEach(() => {
  said = '';
  clock = 0;
  vi.useFakeTimers();
});
afterEach(() => vi.useRealTimers());

function started({ live, width = 100, all = 300 }: { live: boolean; width?: number; all?: number }) {
  const write = (text: string): void => void (said += text);
  const terminal = { write, writeError: write, colour: false, live, width };
  return progress({ doing: 'Writing pages', items: 'pages', all, terminal, now });
}

/** Each of so many takes as long; the bar is redrawn by its own clock as well. */
function steps(work: Progress, count: number, msEach: number): void {
  for (let step = 0; step < count; step += 1) {
    clock += msEach;
    vi.advanceTimersByTime(msEach);
    work.step();
  }
}

describe('where nobody looks on', () => {
  test('there are nine lines, and one at the end', async () => {
    const work = await started({ live: false });
    steps(work, 300, 200);
    work.end();
    const lines = said.split('\n');
    expect(lines).toHaveLength(11);
    expect(lines[0]).toBe('Writing pages: 30 of 300 pages, about 50 seconds more');
    expect(lines[4]).toBe('Writing pages: 150 of 300 pages, about 30 seconds more');
    expect(lines[9]).toBe('Writing pages: 300 pages in 60.0 s.');
    expect(lines[10]).toBe('');
  });

  test('few parts have a line each', async () => {
    const work = await started({ live: false, all: 3 });
    steps(work, 3, 10_000);
    work.end();
    expect(said).toBe(
      'Writing pages: 1 of 3 pages, about 20 seconds more\n' +
        'Writing pages: 2 of 3 pages, about 10 seconds more\n' +
        'Writing pages: 3 pages in 30.0 s.\n',
    );
  });

  test('work that was given up says how far it came', async () => {
    const work = await started({ live: false });
    steps(work, 7, 100);
    work.end();
    expect(said).toBe('Writing pages: 7 of 300 pages in 0.7 s.\n');
  });
});

/** What stands in the last line of a terminal that understands the few signs that a bar is drawn by. */
function lastLine(text: string): string {
  let line = '';
  let column = 0;
  let saved = 0;
  const signs = /\u001B\[(\d*)G|\u001B\[(\d?)K|\u001B(7)|\u001B(8)|\u001B\[\?7(h)|(\n)|([^\u001B\n]+)/gy;
  let read = 0;
  for (const [sign, to, cleared, saves, restores, , newLine, letters] of text.matchAll(signs)) {
    read += sign.length;
    if (to !== undefined) column = Number(to) - 1;
    else if (cleared !== undefined) line = cleared === '2' ? '' : line.slice(0, column);
    else if (saves !== undefined) saved = column;
    else if (restores !== undefined) column = saved;
    else if (newLine !== undefined) {
      line = '';
      column = 0;
    } else if (letters !== undefined) {
      line = line.slice(0, column) + letters + line.slice(column + letters.length);
      column += letters.length;
    }
  }
  expect(read, 'signs that are not understood here').toBe(text.length);
  return line;
}

describe('on a terminal', () => {
  test('one line grows', async () => {
    const work = await started({ live: true });
    expect(lastLine(said)).toBe(`Writing pages [${'-'.repeat(30)}] 0 of 300 pages`);
    steps(work, 150, 200);
    vi.advanceTimersByTime(200);
    expect(lastLine(said)).toBe(
      `Writing pages [${'='.repeat(15)}${'-'.repeat(15)}] 150 of 300 pages, about 30 seconds more`,
    );
    expect(said).not.toContain('\n');
    work.end();
  });

  test('and gives way to what was done', async () => {
    const work = await started({ live: true });
    steps(work, 300, 200);
    work.end();
    const end = 'Writing pages: 300 pages in 60.0 s.\n';
    expect(said.endsWith(end)).toBe(true);
    expect(lastLine(said.slice(0, -end.length))).toBe('');
    expect(said.split('\n')).toHaveLength(2);
    expect(vi.getTimerCount()).toBe(0);
  });

  test('is redrawn ten times a second at most', async () => {
    const work = await started({ live: true, all: 10_000 });
    steps(work, 10_000, 1);
    work.end();
    expect(said.split('\u001B[1G').length).toBeLessThan(110);
  });

  test.each([30, 40, 50, 60, 80])('stays within %i columns', async (width) => {
    const work = await started({ live: true, width });
    for (let step = 0; step < 300; step += 1) {
      steps(work, 1, 200);
      expect(lastLine(said).length).toBeLessThan(width);
    }
    work.end();
  });

  test('too narrow for a bar has the words alone', async () => {
    const work = await started({ live: true, width: 50 });
    steps(work, 150, 200);
    vi.advanceTimersByTime(200);
    expect(lastLine(said)).toBe('Writing pages: 150 of 300 pages, about 30 seconds'.slice(0, 49));
    work.end();
  });
});
