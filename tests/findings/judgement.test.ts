import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/findings/analyse.ts';
import { driftsOf } from '../../src/findings/drift.ts';
import { fewHitterGaps } from '../../src/findings/fewHitterGaps.ts';
import type { Findings, Hold, PairFindings } from '../../src/findings/findings.ts';
import { leaveOneOut } from '../../src/stats/leaveOneOut.ts';
import reference from '../reference/findings/judgement.json' with { type: 'json' };
import { isGap } from '../../src/findings/verdict.ts';
import { at, expectClose, expectInterval } from '../stats/close.ts';
import { inputFor, inTurn, oneAfterAnother, sessionOf, tenthYard, yd, type Swing } from './sessions.ts';

/**
 * Against R 4.2.2 (tests/reference/findings/judgement.R): lm, aov, t.test, binom.test and formulas written out there.
 * R's own qtukey is good to about 1e-7 at these degrees of freedom.
 */
const FIGURE = 1e-10;
const RANGE = 1e-6;

const ids = ['a', 'b', 'c'];

function pairOf(findings: Findings, a: string, b: string): PairFindings {
  const pair = findings.metrics[0]?.pairs.find((one) => one.a === a && one.b === b);
  if (pair === undefined) throw new Error(`no pair ${a}, ${b}`);
  return pair;
}

/** Cells of shots, a hitter each and in it a contender each, as swings in turn. */
function swingsOf(cells: readonly (readonly (readonly number[])[])[]): Swing[] {
  return cells.flatMap((own, hitter) =>
    inTurn(Object.fromEntries(own.map((carries, index) => [at(ids, index), carries])), `h${hitter + 1}`),
  );
}

describe.each(reference.few.map((set) => [set.hitters, set.contenders, set] as const))(
  '%i hitters, each counted alike, %i contenders',
  (hitters, contenders, set) => {
    const samples = set.cells.map((own) =>
      own.map((values, index) => ({ contender: at(ids, index), values })),
    );

    test('gap, standard error, df and interval at both levels', () => {
      for (const level of [0.95, 0.975] as const) {
        const { gaps } = fewHitterGaps(samples, level, 0.1);
        expect(gaps).toHaveLength(set.gaps.length);
        gaps.forEach((gap, index) => {
          const expected = at(set.gaps, index);
          expect(gap).toMatchObject({ a: expected.a, b: expected.b, method: 'hitters-alike', level });
          expectClose(gap.estimate, expected.estimate, FIGURE, expected.standardError);
          expectClose(gap.standardError, expected.standardError, FIGURE);
          expectClose(gap.df, expected.df, FIGURE);
          const half = level === 0.95 ? expected.half95 : expected.half975;
          expectClose((gap.ci[1] - gap.ci[0]) / 2, half, RANGE);
        });
      }
    });

    test('the same through the whole analysis, in metres', () => {
      const findings = analyse(inputFor(swingsOf(set.cells)), []);
      expect(findings.design).toMatchObject({ hitters, unit: 'shot' });
      for (const { a, b, estimate, half95 } of set.gaps) {
        const pair = pairOf(findings, a, b);
        expect(pair.method).toBe('hitters-alike');
        expectInterval(pair.ci ?? [NaN, NaN], [yd(estimate - half95), yd(estimate + half95)], RANGE);
        expect(pair.byHitter).toHaveLength(hitters);
        expect(pair.overlays).toContain('few-hitters');
        expect([pair.whoGained, pair.newHitter]).toEqual([null, null]);
      }
      expect(findings.metrics[0]?.pairs).toHaveLength((contenders * (contenders - 1)) / 2);
    });
  },
);

describe('eight hitters with one cell missing', () => {
  const set = reference.many;
  const findings = analyse(inputFor(swingsOf(set.cells)), []);

  test('the hitter is the unit; F of contenders given hitters', () => {
    expect(findings.design).toMatchObject({ hitters: 8, unit: 'hitter' });
    const omnibus = findings.metrics[0]?.omnibus;
    expectClose(omnibus?.statistic ?? NaN, set.f, FIGURE);
    expect(omnibus?.df).toEqual(set.df);
  });

  test.each(set.gaps)('$a and $b', ({ a, b, estimate, half, direct, newHitter, more, byLuck, share }) => {
    const pair = pairOf(findings, a, b);
    expectInterval(pair.ci ?? [NaN, NaN], [yd(estimate - half), yd(estimate + half)], RANGE);
    expectInterval(pair.newHitter ?? [NaN, NaN], newHitter.map(yd), FIGURE);
    expect(pair.whoGained).toMatchObject({ more, of: direct });
    expectClose(pair.whoGained?.byLuck ?? NaN, byLuck, FIGURE);
    expectInterval(pair.whoGained?.share ?? [NaN, NaN], share, 1e-9);
    expect(pair.overlays).not.toContain('few-hitters');
  });
});

/** agrees: the 95 % interval lies on the gap's side of 0; narrow: the 90 % one does; fails: neither. */
function stateBy(side: number, { estimate, half95, half90 }: Way): Hold['state'] {
  if (Math.abs(estimate) > half95 && Math.sign(estimate) === side) return 'agrees';
  return Math.abs(estimate) > half90 && Math.sign(estimate) === side ? 'narrow' : 'fails';
}
interface Way {
  readonly estimate: number;
  readonly half95: number;
  readonly half90: number;
}

describe.each(reference.one.map((set, index) => [index, set] as const))(
  'one hitter in rotation, session %i',
  (_, set) => {
    const swings = set.sequence.map((contender, index): Swing => ({
      contender,
      values: { carry: yd(at(set.carry, index)) },
    }));
    // A drift credit hinges on m; a large m keeps it out of the way of the third check.
    const input = inputFor(swings, { contenders: ids, matters: { carry: yd(30) } });
    const findings = analyse(input, []);

    test('the drift is the slope of place in lm', () => {
      const [drift] = driftsOf(sessionOf(swings, { contenders: ids }), 'carry');
      expectClose(drift?.slope ?? NaN, yd(set.slope), FIGURE, yd(set.slopeHalf));
      expectInterval(
        drift?.ci ?? [NaN, NaN],
        [yd(set.slope - set.slopeHalf), yd(set.slope + set.slopeHalf)],
        FIGURE,
      );
      expectClose(findings.metrics[0]?.drift?.slope ?? NaN, yd(set.slope), FIGURE, yd(set.slopeHalf));
    });

    test.each(set.gaps)('each other way of working out $a and $b', ({ a, b, usual, rounds, drift }) => {
      const pair = pairOf(findings, a, b);
      // usual strikes take eight shots with either, six complete rounds are enough for the check by rounds
      const ways = [
        ...(set.sequence.length >= 24 ? [{ check: 'usual-strikes', way: usual }] : []),
        { check: 'by-rounds', way: rounds },
        { check: 'drift-taken-out', way: drift },
      ];
      if (isGap(pair.verdict)) {
        const side = Math.sign(pair.estimate ?? 0);
        expect(pair.holds.map(({ check, state }) => ({ check, state }))).toEqual(
          ways.map(({ check, way }) => ({ check, state: stateBy(side, way) })),
        );
      } else if (pair.verdict === 'level') {
        // a check fails only where it finds what matters, which is a lot here
        expect(pair.holds.map(({ check, state }) => ({ check, state }))).toEqual(
          ways.map(({ check }) => ({ check, state: 'agrees' })),
        );
      } else {
        expect(pair.holds).toEqual([]);
      }
      pair.holds.forEach(({ estimate, ci }, index) => {
        const { way } = at(ways, index);
        expectClose(estimate, yd(way.estimate), FIGURE, yd(way.half95));
        expectInterval(ci, [yd(way.estimate - way.half95), yd(way.estimate + way.half95)], RANGE);
      });
    });

    test.each(set.gaps)('by rounds, at the level of the answer, beside $a and $b', ({ a, b, rounds }) => {
      const { byRounds } = pairOf(findings, a, b);
      expectInterval(
        byRounds?.ci ?? [NaN, NaN],
        [yd(rounds.estimate - rounds.half95), yd(rounds.estimate + rounds.half95)],
        RANGE,
      );
    });
  },
);

test('the sessions above hold agreeing, narrow and failing checks', () => {
  const states = reference.one.flatMap(({ gaps }) =>
    gaps.flatMap(({ usual, rounds, drift }) =>
      [usual, rounds, drift].map((way) => stateBy(Math.sign(usual.estimate), way)),
    ),
  );
  expect(new Set(states)).toEqual(new Set(['agrees', 'narrow', 'fails']));
});

describe('leaving out any one shot', () => {
  const { a, b, range, lower, upper, farOut } = reference.leaveOneOut;

  test('gap and interval without each shot, and how far out it lies', () => {
    const without = leaveOneOut([a, b], 0, 1, 0.95);
    without.forEach(({ gap, farOut: distance }, index) => {
      expectInterval(gap().ci, [at(lower, index), at(upper, index)], FIGURE);
      expectClose(distance, at(farOut, index), FIGURE, 1);
    });
    expect(without).toHaveLength(24);
  });

  test('the printed range is the smallest and largest of them', () => {
    const pair = pairOf(analyse(inputFor(oneAfterAnother({ a, b })), []), 'a', 'b');
    expectInterval(pair.leaveOneOut ?? [NaN, NaN], range.map(yd), FIGURE);
  });
});

describe.each(reference.visits.map((set, index) => [index, set] as const))(
  'in visits, session %i',
  (_, set) => {
    const swings = set.who.map((contender, index): Swing => ({
      contender,
      values: { carry: yd(at(set.carry, index)) },
    }));
    const gap = set.shots.every((limit) => limit > 0) || set.shots.every((limit) => limit < 0);
    const survives = Math.abs(set.estimate) > set.half90;

    test('a gap must also show on visit means at 90 %, whatever their degrees of freedom', () => {
      const findings = analyse(inputFor(swings, { step: tenthYard }), []);
      expect(findings.design.order).toBe('mini-blocks');
      const pair = pairOf(findings, 'a', 'b');
      expectInterval(pair.ci ?? [NaN, NaN], set.shots.map(yd), FIGURE);
      expect(pair.overlays.includes('visits-alike')).toBe(gap && !survives);
      if (gap && !survives) expect([pair.verdict, pair.holds]).toEqual(['too-close', []]);
    });

    test('the check by rounds takes four visits, and three degrees of freedom', () => {
      const pair = pairOf(analyse(inputFor(swings), []), 'a', 'b');
      const byRounds = pair.holds.find(({ check }) => check === 'by-rounds');
      const graded = pair.verdict !== 'too-close' && set.df >= 3;
      const side = Math.sign(pair.estimate ?? 0);
      expect(byRounds?.state).toBe(graded ? stateBy(side, set) : undefined);
    });
  },
);

test('among them are gaps that survive and gaps that do not, with two and three degrees of freedom', () => {
  const kinds = reference.visits.map(({ estimate, half90, shots, df }) => [
    Math.min(...shots) > 0,
    Math.abs(estimate) > half90,
    df,
  ]);
  expect(kinds).toEqual([
    [true, true, 3],
    [true, false, 3],
    [true, true, 2],
    [true, false, 2],
  ]);
});
