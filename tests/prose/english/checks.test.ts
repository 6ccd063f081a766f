import { describe, expect, test } from 'vitest';
import type { Hold, PairFindings } from '../../../src/findings/findings.ts';
import { checksOf, checksWorth } from '../../../src/prose/checks.ts';
import { checkTable, sayChecksWorth, tellChecks } from '../../../src/prose/english/checks.ts';
import type { Telling } from '../../../src/prose/telling.ts';
import { toCanonical } from '../../../src/trade/units.ts';
import { metricOf, tellingFor, type Told } from '../tellings.ts';

const yd = (yards: number): number => toCanonical(yards, 'yd');
const between = (low: number, high: number): readonly [number, number] => [yd(low), yd(high)];
const gap = (estimate: number, low: number, high: number) => ({
  estimate: yd(estimate),
  ci: between(low, high),
});
const hold = (check: Hold['check'], state: Hold['state'], numbers: ReturnType<typeof gap>): Hold => ({
  check,
  state,
  ...numbers,
});

/** Heron 12 yards past Wren, likely 9 to 15, unless a test says otherwise; `a` is Heron. */
function checked(
  pair: Partial<PairFindings>,
  told: Partial<Told> = {},
  options: Parameters<typeof tellingFor>[1] = {},
) {
  const metric = metricOf({
    metric: 'carry',
    verdict: 'clear',
    ...told,
    pair: { ...gap(12, 9, 15), ...pair },
  });
  const telling: Telling = tellingFor([metric], {
    names: { a: 'Heron', b: 'Wren' },
    varied: 'ball',
    ...options,
  });
  const checks = checksOf(metric, telling.findings);
  return {
    metric,
    lines: checks.flatMap((own) => tellChecks(own, telling).lines),
    table: checkTable(metric.id, checks, telling),
  };
}

const threeWays = [
  hold('usual-strikes', 'agrees', gap(11.6, 8, 15)),
  hold('by-rounds', 'agrees', gap(12, 8.4, 15.6)),
  hold('drift-taken-out', 'agrees', gap(12.2, 8, 16)),
];

describe('other ways to work a difference out', () => {
  test('one row a check, with its own numbers, under the printed answer', () => {
    expect(checked({ holds: threeWays }).table).toEqual({
      caption: 'Differences in carry, checked in other ways',
      head: ['Pair and check', 'Difference', 'Likely range', 'Does the answer hold?'],
      rows: [
        ['Heron and Wren, as printed', '12 yards for Heron', '9 to 15 yards', ''],
        ['Heron and Wren, without extreme shots', '12 yards for Heron', '8 to 15 yards', 'yes'],
        ['Heron and Wren, round by round', '12 yards for Heron', '8 to 16 yards', 'yes'],
        ['Heron and Wren, allowing for drift', '12 yards for Heron', '8 to 16 yards', 'yes'],
      ],
    });
  });

  test('in a sentence, where all hold', () => {
    expect(checked({ holds: threeWays }).lines).toEqual([
      'We checked the carry answer for Heron and Wren three other ways (without extreme shots, round by round, allowing for drift). It held each time.',
    ]);
    const never = threeWays.map((own) => ({ ...own, state: 'narrow' as const }));
    expect(checked({ holds: never }).lines[0]).toMatch(/ It never held sharply\.$/);
    expect(checked({ holds: never.slice(0, 1) }).lines[0]).toMatch(/\)\. It did not hold sharply\.$/);
    expect(checked({ holds: threeWays.slice(0, 1) }).lines).toEqual([
      'We checked the carry answer for Heron and Wren one other way (without extreme shots). It held.',
    ]);
  });

  test('what holds at nine in ten only is not said to hold', () => {
    const { lines, table } = checked({
      holds: [hold('usual-strikes', 'narrow', gap(5, -0.4, 10)), ...threeWays.slice(1)],
    });
    expect(table?.rows[1]).toEqual([
      'Heron and Wren, without extreme shots',
      '5 yards for Heron',
      'anything from 10 yards for Heron to almost nothing for Wren',
      'not sharply',
    ]);
    expect(lines).toEqual([
      'We checked the carry answer for Heron and Wren three other ways (without extreme shots, round by round, allowing for drift). ' +
        'It held round by round and allowing for drift. It did not hold sharply without extreme shots.',
    ]);
  });

  test('what fails is said to fail, with its difference the other way', () => {
    const { lines, table } = checked({
      holds: [hold('usual-strikes', 'fails', gap(-2, -8, 4)), hold('by-rounds', 'fails', gap(3, -3, 9))],
      overlays: ['leans'],
    });
    expect(table?.rows[1]).toEqual([
      'Heron and Wren, without extreme shots',
      '2 yards for Wren',
      'anything from 4 yards for Heron to 8 for Wren',
      'no',
    ]);
    expect(lines).toEqual([
      'We checked the carry answer for Heron and Wren two other ways (without extreme shots, round by round). ' +
        'It never held.',
    ]);
  });

  test('rounds stand beside a pair that cannot be told, and hold nothing', () => {
    const { lines, table } = checked(
      { ...gap(1, -6, 8), byRounds: gap(0.8, -5, 7) },
      { verdict: 'too-close' },
    );
    expect(table?.rows[1]?.[3]).toBe('no answer to hold');
    expect(lines).toEqual([
      'Counted round by round, the carry difference between Heron and Wren could be anything from 8 yards for Heron to 6 for Wren.',
    ]);
  });

  test('the printed answer reads as it does elsewhere, held against what matters; a check does not', () => {
    const { table } = checked({ ...gap(8, 5.2, 11), byRounds: gap(0.2, -4.7, 5.2) }, { verdict: 'clear' });
    expect(table?.rows.map(([, ...cells]) => cells)).toEqual([
      ['8 yards for Heron', 'just over 5 to 11 yards', ''],
      ['almost nothing', 'anything from 6 yards for Heron to 5 for Wren', 'no answer to hold'],
    ]);
  });

  test('rounds that are a check already stand once', () => {
    const { table } = checked({ holds: threeWays, byRounds: gap(12, 7, 17) });
    expect(table?.rows).toHaveLength(4);
  });

  test('what the checks are worth, once for two and for more', () => {
    const { metric } = checked({ holds: threeWays });
    expect(checksWorth(metric)).toEqual({ kind: 'checks-worth', byChance: 88, real: 98 });
    expect(sayChecksWorth({ kind: 'checks-worth', byChance: 88, real: 98 })).toBe(
      'These checks use the same shots and are not a second test: 88 of 100 differences made by chance pass them, and 98 of 100 real ones.',
    );
    const [summary] = metric.byContender;
    const three = { ...metric, byContender: [summary, summary, summary].filter((own) => own !== undefined) };
    expect(checksWorth(three)).toEqual({ kind: 'checks-worth', byChance: 60, real: null });
    expect(sayChecksWorth({ kind: 'checks-worth', byChance: 60, real: null })).toBe(
      'These checks use the same shots and are not a second test: about 60 of 100 differences made by chance pass them too.',
    );
    expect(checksWorth(checked({}).metric)).toBeNull();
  });
});

describe('one shot more or less', () => {
  test.each([
    [between(11.2, 11.9), 'between 11 and 12 yards'],
    [between(-0.8, 4.6), 'between 1 yard for Wren and 5 for Heron'],
  ])('%j', (leaveOneOut, words) => {
    expect(checked({ leaveOneOut }).lines).toEqual([
      `Whichever single shot is left out, the carry difference between Heron and Wren stays ${words}.`,
    ]);
  });

  test('one that decides', () => {
    const [line] = checked({ leaveOneOut: between(4, 9), overlays: ['rests-on-one-shot'] }).lines;
    expect(line).toBe(
      'Whichever single shot is left out, the carry difference between Heron and Wren stays between 4 and 9 yards. One stray shot decides it: without it we could not tell.',
    );
  });
});

describe('shots that were left out', () => {
  const told = (
    withLeftOut: PairFindings['withLeftOut'],
    excluded: readonly [number, number],
  ): readonly string[] => {
    const metric = metricOf({
      metric: 'carry',
      verdict: 'clear',
      pair: { ...gap(8, 6, 10), withLeftOut },
    });
    const telling = tellingFor([metric], { names: { a: 'Heron', b: 'Wren' } });
    const findings = {
      ...telling.findings,
      contenders: telling.findings.contenders.map((own, index) => ({
        ...own,
        excluded: excluded[index] ?? 0,
      })),
    };
    return checksOf(metric, findings).flatMap((own) => tellChecks(own, { ...telling, findings }).lines);
  };

  test('the answer turns: both are said, and on what it depends', () => {
    expect(told({ ...gap(3, -10, 16), verdict: 'too-close' }, [1, 0])).toEqual([
      'With the one shot left out counted, we cannot tell whether Heron or Wren carried farther: anything from 16 yards for Heron to 10 for Wren. ' +
        'Without it, Heron carried farther than Wren: about 8 yards, likely 6 to 10. So the carry answer depends on that shot.',
    ]);
  });

  test('the one ahead turns', () => {
    expect(told({ ...gap(-9, -14, -4), verdict: 'size-unsure' }, [1, 1])[0]).toMatch(
      /^With the two shots left out counted, Wren carried farther than Heron, by how much is uncertain: likely 4 to 14 yards\. Without them, Heron /,
    );
  });

  test('the answer stays: said once, with both numbers', () => {
    expect(told({ ...gap(9.4, 7.1, 11.7), verdict: 'clear' }, [2, 0])).toEqual([
      'With the two shots left out counted, Heron carried farther than Wren: about 9.5 yards, likely 7 to 12. ' +
        'Without them the answer is the same: about 8 yards, likely 6 to 10.',
    ]);
  });

  test('of shots left out with others only a change is told', () => {
    expect(told({ ...gap(8.2, 6, 10.4), verdict: 'clear' }, [0, 0])).toEqual([]);
    expect(told({ ...gap(4, 1, 7), verdict: 'size-unsure' }, [0, 0])[0]).toMatch(
      /^With the shots left out with others counted, .* depends on those shots\.$/,
    );
  });
});

describe("the monitor's error", () => {
  test.each([
    [between(6, 18), 'is likely 6 to 18 yards'],
    [between(-0.8, 18.2), 'could be anything from 19 yards for Heron to 1 for Wren'],
  ])('%j', (ci, words) => {
    expect(checked({ device: { accuracy: yd(2), ci, near: false } }).lines).toEqual([
      `If the monitor's error is not the same with each ball, the carry difference between Heron and Wren ${words}. The monitor is stated to be right to 2 yards.`,
    ]);
  });
});

describe('at equal club speed', () => {
  const lengths = { names: { a: 'Long', b: 'Short' }, varied: 'length' };

  test('the other is ahead', () => {
    expect(checked({ atEqualSpeed: gap(-2.2, -7.9, 4.8) }, {}, lengths).lines).toEqual([
      'At equal club speed Short would carry about 2 yards farther than Long (anything from 8 yards for Short to 5 for Long). ' +
        'Club speed is partly the doing of the length.',
    ]);
  });

  test('still ahead, for sure; a ball has no part in how fast the club comes', () => {
    expect(checked({ atEqualSpeed: gap(8, 2.3, 13.6) }).lines).toEqual([
      'At equal club speed Heron would carry about 8 yards farther than Wren (likely 2 to 14 yards).',
    ]);
  });

  test('nobody is', () => {
    expect(checked({ atEqualSpeed: gap(0.2, -5, 5.4) }).lines).toEqual([
      'At equal club speed neither Heron nor Wren would carry farther (anything from 6 yards for Heron to 5 for Wren).',
    ]);
  });
});

test('how large a drift it would take', () => {
  expect(checked({ driftNeeded: yd(-24.3), credit: 'open' }).lines).toEqual([
    'A steady drift of about 24 yards from the first shot to the last would alone make the carry difference between Heron and Wren.',
  ]);
});

test('where less is wanted all is counted towards the one with less', () => {
  const rpm = (low: number, high: number): readonly [number, number] => [low, high];
  const metric = metricOf({
    metric: 'spin_rate',
    verdict: 'clear',
    better: 'less',
    pair: {
      estimate: 900,
      ci: rpm(600, 1200),
      ahead: 'b',
      leaveOneOut: rpm(820, 980),
      holds: [{ check: 'by-rounds', state: 'agrees', estimate: 880, ci: rpm(500, 1260) }],
    },
  });
  const telling = tellingFor([metric], { names: { a: 'Heron', b: 'Wren' } });
  const checks = checksOf(metric, telling.findings);
  expect(checks.flatMap((own) => tellChecks(own, telling).lines)).toEqual([
    'We checked the spin rate answer for Wren and Heron one other way (round by round). It held.',
    'Whichever single shot is left out, the spin rate difference between Wren and Heron stays between 800 and 1,000 rpm.',
  ]);
  expect(checkTable('spin_rate', checks, telling)?.rows[1]).toEqual([
    'Wren and Heron, round by round',
    '900 rpm for Wren',
    '500 to 1,300 rpm',
    'yes',
  ]);
});
