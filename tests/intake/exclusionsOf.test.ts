import { describe, expect, test } from 'vitest';
import { readWith } from '../../src/intake/authored/readWith.ts';
import { exclusions, type ExclusionEntry } from '../../src/intake/authored/exclusions.ts';
import { applyExclusions, markedInFile } from '../../src/intake/exclusionsOf.ts';
import type { Shot } from '../../src/intake/session.ts';

const yard = 0.9144;
const place = { file: 'report.md', line: 1, column: 3, columnName: null };

interface Own {
  readonly contender?: string;
  readonly hitter?: string;
  readonly shotNo?: number | null;
  /** Yards. */
  readonly carry?: number | null;
  readonly marked?: boolean;
}

const shot = ({ contender = 'alder', hitter = 'one', shotNo = null, carry = 200, marked }: Own): Shot => ({
  contender,
  hitter,
  round: null,
  order: 1,
  shotNo,
  time: null,
  values: { carry: carry === null ? null : carry * yard },
  excluded: marked === true ? { rule: markedInFile, reason: 'no reason given' } : null,
  place: { file: 'shots.csv', line: 2 },
});

function entries(...typed: readonly Readonly<Record<string, string>>[]): readonly ExclusionEntry[] {
  const read = readWith(exclusions, typed);
  if ('troubles' in read) throw new Error(JSON.stringify(read.troubles));
  return read.value;
}

const named = (contender: string, number: number, more = {}): Readonly<Record<string, string>> => ({
  contender,
  shot: String(number),
  rule: 'topped',
  reason: 'hit the mat first',
  ...more,
});

const out = (shots: readonly Shot[], list: readonly ExclusionEntry[]): readonly (string | null)[] =>
  applyExclusions(shots, list, () => place).shots.map(({ excluded }) => excluded?.rule ?? null);

describe('a shot left out by its number', () => {
  test('is that of the shot column; another contender’s shot of the same number stays', () => {
    const shots = [
      shot({ shotNo: 7 }),
      shot({ shotNo: 8 }),
      shot({ contender: 'birch', shotNo: 7 }),
      shot({ contender: 'birch', shotNo: 8 }),
    ];
    expect(out(shots, entries(named('birch', 7)))).toEqual([null, null, 'topped', null]);
  });

  test('without a shot column is the place among the shots of its contender', () => {
    const shots = [shot({}), shot({ contender: 'birch' }), shot({}), shot({ contender: 'birch' })];
    expect(out(shots, entries(named('alder', 2)))).toEqual([null, null, 'topped', null]);
  });

  test('of one golfer leaves the same number of another in', () => {
    const shots = [shot({ shotNo: 1 }), shot({ shotNo: 1, hitter: 'two' })];
    expect(out(shots, entries(named('alder', 1, { hitter: 'two' })))).toEqual([null, 'topped']);
    expect(out(shots, entries(named('alder', 1)))).toEqual(['topped', 'topped']);
  });

  test('gives its reason in place of a mark in the file; a limit does not', () => {
    const shots = [shot({ shotNo: 1, marked: true, carry: 100 })];
    expect(out(shots, entries(named('alder', 1)))).toEqual(['topped']);
    expect(out(shots, entries({ metric: 'carry', below: '150 yd', reason: 'mishits' }))).toEqual([
      markedInFile,
    ]);
  });

  test.each([
    [named('alder', 9), 'a shot of alder: 3, 5', '9'],
    [named('cedar', 3), 'a shot of cedar', '3'],
  ])('that is not there is a problem: %o', (entry, expected, found) => {
    const { shots, problems } = applyExclusions(
      [shot({ shotNo: 5 }), shot({ shotNo: 3 })],
      entries(named('alder', 3), entry),
      (index) => ({ ...place, line: 10 + index }),
    );
    expect(problems).toMatchObject([
      {
        kind: 'exclusion-matches-nothing',
        severity: 'error',
        file: 'report.md',
        line: 11,
        expected,
        found,
        cure: 'Write the number that stands in the shot column of the file.',
      },
    ]);
    expect(shots.map(({ excluded }) => excluded?.rule ?? null)).toEqual([null, 'topped']);
  });

  test('is told among the first twelve numbers', () => {
    const many = Array.from({ length: 14 }, (_, index) => shot({ shotNo: index + 1 }));
    const { problems } = applyExclusions(many, entries(named('alder', 99)), () => place);
    expect(problems[0]?.expected).toBe('a shot of alder: 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, ...');
  });
});

describe('a limit', () => {
  const shots = [199.9, 200, 200.1, 250, 250.1].map((carry) => shot({ carry }));
  const limit = (more: Readonly<Record<string, string>>): readonly ExclusionEntry[] =>
    entries({ metric: 'carry', reason: 'misreads', ...more });

  test('leaves out what lies beyond it, not what lies on it', () => {
    expect(out(shots, limit({ below: '200 yd' }))).toEqual(['carry below 200 yd', null, null, null, null]);
    expect(out(shots, limit({ above: '250 yd' }))).toEqual([null, null, null, null, 'carry above 250 yd']);
  });

  test('on both sides, under the rule that it names', () => {
    const both = { below: '200 yd', above: '250 yd' };
    expect(out(shots, limit(both))[0]).toBe('carry below 200 yd or above 250 yd');
    expect(out(shots, limit({ ...both, rule: 'misread' }))).toEqual(['misread', null, null, null, 'misread']);
  });

  test('leaves a shot without a reading in, and need not match any', () => {
    expect(out([shot({ carry: null })], limit({ below: '200 yd' }))).toEqual([null]);
    expect(applyExclusions(shots, limit({ below: '1 yd' }), () => place).problems).toEqual([]);
  });

  test('the first entry that fits gives the rule', () => {
    const two = entries(
      { metric: 'carry', below: '200 yd', rule: 'first', reason: 'misreads' },
      { metric: 'carry', below: '201 yd', rule: 'second', reason: 'misreads' },
    );
    expect(out(shots, two)).toEqual(['first', 'second', 'second', null, null]);
  });
});
