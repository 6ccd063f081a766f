// Random files against an oracle that knows the shots it wrote.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runsOf } from '../../everyday.ts';
import { readShotFile } from '../../../src/intake/shots/readShotFile.ts';
import type { ShotRow } from '../../../src/intake/shots/shotFile.ts';
import type { MetricId } from '../../../src/trade/metrics.ts';
import { knownSessions, type KnownShot } from './knownSession.ts';

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

/** Metrics of a shot that were read otherwise than written. */
function changed(row: ShotRow | undefined, shot: KnownShot): readonly string[] {
  if (row === undefined) return ['the shot itself'];
  const values = (Object.keys(shot.values) as MetricId[]).filter((id) => {
    const [found, wanted] = [row.values[id], shot.values[id]];
    if (typeof wanted !== 'number') return found !== wanted;
    return typeof found !== 'number' || Math.abs(found - wanted) > 1e-9 * Math.max(1, Math.abs(wanted));
  });
  return row.club === shot.club ? values : [...values, 'club'];
}

describe('a session written down in any of the usual ways', () => {
  it('is read shot for shot', () => {
    fc.assert(
      fc.property(knownSessions, ({ bytes, shots }) => {
        const { rows, problems } = readShotFile('known.csv', bytes);
        expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
        expect(rows).toHaveLength(shots.length);
        for (const [index, shot] of shots.entries()) {
          expect(changed(rows[index], shot)).toEqual([]);
          expect(rows[index]?.note).toBe(shot.note);
          expect(rows[index]?.shotNo).toBe(index + 1);
        }
      }),
      { numRuns: runsOf(400) },
    );
  });
});

/** Removes, doubles or overwrites a piece of text. */
const damages = fc.record({
  kind: fc.constantFrom('remove', 'double', 'overwrite', 'cut'),
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.integer({ min: 1, max: 3 }),
  by: fc.constantFrom('"', ',', ';', '\t', '\n', '\r', '\0', ' ', '-', 'x', '9', '\ufeff'),
});

describe('a damaged file', () => {
  it('keeps every other shot, or has a problem that says so', () => {
    fc.assert(
      fc.property(knownSessions, damages, (known, { kind, at, length, by }) => {
        // A damaged heading is another heading: its column is ignored and listed, or means something else.
        const start = known.bodyAt + Math.floor(at * (known.text.length - known.bodyAt));
        const piece = known.text.slice(start, start + length);
        const rest = known.text.slice(start + length);
        const damaged = {
          remove: `${known.text.slice(0, start)}${rest}`,
          double: `${known.text.slice(0, start)}${piece}${piece}${rest}`,
          overwrite: `${known.text.slice(0, start)}${by}${rest}`,
          cut: known.text.slice(0, start),
        }[kind];
        const file = readShotFile('damaged.csv', utf8(damaged));
        if (file.problems.length > 0) return;
        // Nothing was said, so at most the one row that was touched may read otherwise, and none may be gone but those
        // behind a cut that fell on a line end.
        const other = known.shots.filter((shot, index) => changed(file.rows[index], shot).length > 0);
        const lost = known.shots.length - file.rows.length;
        if (kind === 'cut') expect(other.length - lost).toBeLessThanOrEqual(1);
        else {
          expect(lost).toBe(0);
          expect(other.length).toBeLessThanOrEqual(1);
        }
      }),
      { numRuns: runsOf(1500) },
    );
  });
});

describe('anything at all', () => {
  it('is read or refused, never a crash', () => {
    const bytes = fc.uint8Array({ maxLength: 400 });
    const pieces = fc
      .array(
        fc.constantFrom(
          'Carry (yd)',
          'Club',
          'sep=;',
          '\ufeff',
          '"',
          '""',
          ',',
          ';',
          '\t',
          '\n',
          '\r\n',
          '\r',
          '\0',
          '1',
          '240.5',
          '-',
          '(',
          'L',
          'Average',
          'Club: A',
          'mph',
          'Units: yd',
          '__proto__',
          '٣',
          '\ud800',
          '9'.repeat(50),
        ),
        { maxLength: 60 },
      )
      .map((parts) => utf8(parts.join('')));
    fc.assert(
      fc.property(fc.oneof(bytes, pieces), (content) => {
        const file = readShotFile('any.csv', content);
        expect(file.rows.length > 0 || file.problems.some(({ severity }) => severity === 'error')).toBe(true);
        for (const row of file.rows) {
          for (const value of Object.values(row.values))
            expect(value === null || Number.isFinite(value)).toBe(true);
        }
      }),
      { numRuns: runsOf(3000) },
    );
  });

  it.each([
    ['a million commas', ','.repeat(1_000_000)],
    ['a million quotes', '"'.repeat(1_000_001)],
    ['a hundred thousand line ends', '\n'.repeat(100_000)],
    ['a cell of two million letters', `Club,Carry (yd)\n${'A'.repeat(2_000_000)},240\n`],
    ['a heading of a million brackets', `Club,Carry ${'('.repeat(500_000)}\nA,240\n`],
    ['a hundred thousand headings', `Club,Carry (yd)${',Carry (yd)'.repeat(100_000)}\n`],
    ['ten thousand lines of headings', 'Club,Carry (yd)\nA,240\n'.repeat(10_000)],
    [
      'ten thousand changes of delimiter',
      'Club,Carry (yd),Side (yd)\nClub;Carry (yd);Side (yd)\n'.repeat(10_000),
    ],
    ['ten thousand quoted starts', `Club,Carry (yd)\n${'"A" x,240\n'.repeat(10_000)}`],
    ['a number of a million digits', `Club,Carry (yd)\nA,${'1'.repeat(1_000_000)}\n`],
    ['a million spaces in a cell', `Club,Carry (yd)\nA,${' '.repeat(1_000_000)}240\n`],
    ['a million zero bytes, then a letter', `Club,Carry (yd)\nA,240\n${'\0'.repeat(1_000_000)}x`],
    [
      'ten thousand clubs with one line each',
      `Club,Carry (yd)\n${Array.from({ length: 10_000 }, (_, i) => `C${i},\n,240`).join('\n')}\n`,
    ],
  ])(
    '%s takes no longer than a few seconds',
    (_, text) => {
      const start = process.cpuUsage();
      readShotFile('huge.csv', utf8(text));
      // Microseconds of work, not of waiting. Anything quadratic takes minutes here.
      expect(process.cpuUsage(start).user).toBeLessThan(10_000_000);
    },
    60_000,
  );
});
