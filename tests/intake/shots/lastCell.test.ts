// A transfer that breaks off inside the last number leaves another number there, and nothing else tells of it.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { judgeNumber, judgeText } from '../../../src/intake/shots/lastCell.ts';
import { readShotFile } from '../../../src/intake/shots/readShotFile.ts';
import type { ShotFile } from '../../../src/intake/shots/shotFile.ts';

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const read = (text: string): ShotFile => readShotFile('shots.csv', utf8(text));
type Fate = 'noticed' | 'harmless' | 'missing' | 'misread';

const doubts = ({ problems }: ShotFile): readonly string[] =>
  problems
    .filter(({ kind }) => kind === 'last-cell-short' || kind === 'truncated-row')
    .map(({ kind }) => kind);

/** Sessions as exports write them, the end of each, with its columns turned until every one of them stood last. */
function realSessions(): readonly string[] {
  const reports = new URL('../../../content/reports/', import.meta.url);
  const files = readdirSync(reports, { recursive: true, encoding: 'utf8' }).filter(
    (name) => name.endsWith('.csv') && !name.endsWith('order.csv'),
  );
  return files.flatMap((name) => {
    const rows = readFileSync(new URL(name, reports), 'utf8')
      .trim()
      .split(/\r?\n/)
      .map((line) => line.split(','))
      .filter((_, at, all) => at === 0 || at >= all.length - 12);
    return (rows[0] ?? []).map((_, turn) =>
      rows.map((cells) => [...cells.slice(turn + 1), ...cells.slice(0, turn + 1)].join(',')).join('\n'),
    );
  });
}

/** What the shots say, without notes and line numbers. */
const saidBy = ({ rows }: ShotFile): string =>
  JSON.stringify(rows.map(({ note: _, line: __, ...said }) => said));

/** Whether a cut file says it is one, is as good as whole, or lacks readings only; else it was misread unseen. */
function fateOf(cut: ShotFile, whole: ShotFile): Fate {
  const known = new Set(whole.problems.map(({ kind }) => kind));
  if (cut.problems.some(({ kind }) => !known.has(kind))) return 'noticed';
  if (saidBy(cut) === saidBy(whole)) return 'harmless';
  const lost = cut.rows.map((row, index) => {
    const values = Object.entries(whole.rows[index]?.values ?? {}).map(([metric, value]) => [
      metric,
      row.values[metric as keyof typeof row.values] === null ? null : value,
    ]);
    return { ...row, values: Object.fromEntries(values) as typeof row.values };
  });
  const withLost = {
    ...whole,
    rows: whole.rows.map((row, index) => ({ ...row, values: lost[index]?.values ?? {} })),
  };
  return saidBy(cut) === saidBy(withLost) ? 'missing' : 'misread';
}

/** The fates of a file cut behind every byte from a place of its last row on. */
function fatesOf(text: string, from: '\n' | ','): readonly Fate[] {
  const whole = read(`${text}\n`);
  const bytes = utf8(text);
  const first = bytes.lastIndexOf(from.charCodeAt(0)) + 1 + (from === '\n' ? 1 : 0);
  return Array.from({ length: bytes.length - first }, (_, more) =>
    fateOf(readShotFile('shots.csv', bytes.slice(0, first + more)), whole),
  );
}

const counted = (fates: readonly Fate[]): Readonly<Partial<Record<Fate, number>>> =>
  Object.fromEntries([...Map.groupBy(fates, (fate) => fate)].map(([fate, of]) => [fate, of.length]));

const zerosLeftOut = (text: string): string => text.replace(/\.0(?=,|\n|$)/g, '');

describe('a file that breaks off in its last row', () => {
  const sessions = realSessions();

  it('is seen to be cut, wherever it is', () => {
    const { noticed = 0, harmless = 0, ...others } = counted(sessions.flatMap((text) => fatesOf(text, ',')));
    expect(others).toEqual({});
    expect(noticed).toBeGreaterThan(450);
    // What is cut off a mark of warm-ups, "yes", reads the same.
    expect(harmless).toBeLessThanOrEqual(2);
    const wholeRows = sessions.filter((_, index) => index % 13 === 0).flatMap((text) => fatesOf(text, '\n'));
    expect(wholeRows.filter((fate) => fate !== 'noticed' && fate !== 'harmless')).toEqual([]);
    expect(counted(wholeRows).noticed).toBeGreaterThan(300);
  });

  it('is seen nine times in ten where zeros are left out at the end of numbers', () => {
    const { noticed = 0, misread = 0 } = counted(
      sessions.flatMap((text) => fatesOf(zerosLeftOut(text), ',')),
    );
    expect(noticed / (noticed + misread)).toBeGreaterThan(0.89);
  });
});

describe('a whole file without a line end', () => {
  it('is believed', () => {
    expect(realSessions().flatMap((text) => doubts(read(text)))).toEqual([]);
    const doubted = realSessions().filter((text) => doubts(read(zerosLeftOut(text))).length > 0);
    expect(doubted.length).toBeLessThanOrEqual(3);
  });

  it('is believed with blanks in the last column', () => {
    const rows = ['Alder,240.1,', 'Alder,240.2,3.1', 'Alder,240.3,2.1', 'Alder,240.4,1.1', 'Alder,240.5,'];
    expect(doubts(read(`Club,Carry (yd),Side (yd)\n${rows.join('\n')}`))).toEqual([]);
  });
});

describe('the number in the last cell', () => {
  it.each([
    ['229.9', ['231.2', '228.4', '99.9'], 'whole'],
    ['99.8', ['231.2', '228.4', '240.0'], 'whole'],
    ['229', ['231.2', '228.4', '240'], 'whole'],
    ['229', ['231.2', '228.4', '240.0'], 'perhaps-cut'],
    ['229.', ['231.2', '228.4', '240'], 'perhaps-cut'],
    ['22', ['231.2', '228.4', '240.0'], 'cut'],
    ['2', ['231', '228.4', '240.5'], 'cut'],
    ['254', ['2431', '2284', '2640'], 'cut'],
    ['990', ['1031', '1284', '1140'], 'perhaps-cut'],
    ['2,54', ['2,431', '2,284', '2,640'], 'perhaps-cut'],
    ['-3', ['-3.1', '2.4', '11.0'], 'perhaps-cut'],
    ['-', ['-3.1', '2.4', '11.0'], 'perhaps-cut'],
    ['', ['-3.1', '2.4', '11.0'], 'perhaps-cut'],
    ['', ['-3.1', '', '2.4', '11.0'], 'whole'],
    ['12.3', ['12.3 L', '4.1 R', '1.0 R'], 'whole'],
    ['12', ['12.3 L', '4.1 R', '1.0 R'], 'perhaps-cut'],
    ['1', ['231.2', '228.4'], 'whole'],
  ])('%j below %j is %s', (last, above, verdict) => {
    expect(judgeNumber(last, above)).toBe(verdict);
  });

  it.each([
    ['Bir', ['Alder', 'Birch', 'Birch'], 'perhaps-cut'],
    ['Alder', ['Alder', 'Alder 9', 'Birch'], 'whole'],
    ['Cedar', ['Alder', 'Birch', 'Birch'], 'whole'],
    ['10:32:1', ['10:30:12', '10:31:07', '10:31:40'], 'perhaps-cut'],
    ['10:32:15', ['10:30:12', '10:31:07', '10:31:40'], 'whole'],
    ['1', ['10', '11', '12'], 'perhaps-cut'],
  ])('and the text %j below %j is %s', (last, above, verdict) => {
    expect(judgeText(last, above)).toBe(verdict);
  });
});

it('is an error where it is plainly cut, and a warning with what to do where it may be', () => {
  const head = 'Shot,Club,Carry (yd)\n1,Alder,231.2\n2,Alder,228.4\n3,Birch,240.0\n';
  const found = (last: string) =>
    read(head + last).problems.map(({ kind, severity, line, column }) => [kind, severity, line, column]);
  expect(found('4,Birch,229.9')).toEqual([]);
  expect(found('4,Birch,229')).toEqual([['last-cell-short', 'warning', 5, 3]]);
  expect(found('4,Birch,22')).toEqual([['truncated-row', 'error', 5, 3]]);
  expect(found('4,Birch,22\n')).toEqual([]);
  const closed = head.replaceAll(/(\d)\n/g, '$1,\n').replace('(yd)', '(yd),');
  expect(read(`${closed}4,Birch,229.9,`).problems).toEqual([]);
  expect(read(`${closed}4,Birch,229.9`).problems).toMatchObject([
    { kind: 'last-cell-short', expected: 'as many cells as in the rows above, and a line end' },
  ]);
});
