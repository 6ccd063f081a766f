import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/findings/analyse.ts';
import { claimStandings, isMeasured } from '../../src/findings/claims.ts';
import type {
  ClaimStanding,
  Findings,
  OverlayId,
  PairFindings,
  StandingId,
} from '../../src/findings/findings.ts';
import { analysisInput } from '../../src/findings/inputOf.ts';
import type { Claim } from '../../src/intake/authored/claims.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import robot from '../reference/cases/robot-balls.json' with { type: 'json' };
import spreads from '../reference/cases/claimed-spread.json' with { type: 'json' };
import { plainPair } from './plainPair.ts';
import { around, reportOf } from './reportOf.ts';

const claim = (rest: Partial<Claim>, byAtLeast = 0): Claim => ({
  say: 'as it is said',
  metric: 'carry',
  direction: 'more',
  of: 'a',
  than: 'b',
  byAtLeast: byAtLeast === 0 ? null : { value: byAtLeast, unit: 'm', typed: `${byAtLeast} m` },
  allowUnproven: false,
  ...rest,
});

const only = (
  claims: readonly Claim[],
  findings: Pick<Findings, 'metrics' | 'straighter'>,
): ClaimStanding => {
  const [standing] = claimStandings(claims, findings);
  if (standing === undefined) throw new Error('no standing');
  return standing;
};

/**
 * The intervals of R 4.2.2 (Games-Howell; `reference/cases/robot-balls.R`) decide by themselves how a claim of some
 * size stands: borne out below the interval, contradicted above it, weaker than said inside it.
 */
describe('claims about the robot-hit balls of a textbook, held against the intervals of R', () => {
  const site = loadSite(resolve('tests/cases/robot-balls/content'));
  const [report] = site.reports;
  if (report === undefined) throw new Error('tests/cases/robot-balls has no report');
  const { findings } = report;

  test.each(robot.pairs)('$a and $b, both ways round, at every size', ({ a, b, lower, upper }) => {
    const sizes = [
      0,
      ...[lower, upper].flatMap((limit) => [Math.abs(limit) - 0.001, Math.abs(limit) + 0.001]),
    ];
    for (const size of sizes) {
      for (const [of, than, low, high] of [[a, b, lower, upper] as const, [b, a, -upper, -lower] as const]) {
        const expected: StandingId =
          low > size
            ? 'borne-out'
            : (size > 0 ? high < size : high < 0)
              ? 'contradicted'
              : low > 0
                ? 'weaker-than-said'
                : 'not-shown';
        expect([of, size, only([claim({ of, than }, size)], findings).standing]).toEqual([
          of,
          size,
          expected,
        ]);
        // "b has less than a" says the same.
        const turned = claim({ direction: 'less', of: than, than: of }, size);
        expect(only([turned], findings).standing).toBe(expected);
      }
    }
  });

  test('all four standings occur among them', () => {
    const standings = [
      claim({ of: 'c', than: 'a' }, 12.18),
      claim({ of: 'c', than: 'a' }, 12.2),
      claim({ of: 'c', than: 'a' }, 22.9),
      claim({ of: 'a', than: 'd' }),
    ].map((own) => only([own], findings).standing);
    expect(standings).toEqual(['borne-out', 'weaker-than-said', 'contradicted', 'not-shown']);
  });

  test('the gap is counted the claimed way', () => {
    const standing = only([claim({ of: 'c', than: 'a' })], findings);
    expect(standing.gap?.estimate).toBeCloseTo(17.529048, 6);
    expect(standing.gap?.ci[0]).toBeCloseTo(12.1886396210854, 6);
    expect(standing.gap?.ci[1]).toBeCloseTo(22.8694563789146, 6);
    const less = only([claim({ direction: 'less', of: 'a', than: 'c' })], findings);
    expect(less.gap).toEqual(standing.gap);
  });

  test('with the order unknown nothing is borne out, and what is wholly against the shots is still contradicted', () => {
    const front = { ...report.source.front, plan: null };
    const open = analyse(analysisInput({ ...report.source, front }, report.session, 'not-said'), []);
    const standings = [
      claim({ of: 'c', than: 'a' }),
      claim({ of: 'c', than: 'a' }, 15),
      claim({ of: 'a', than: 'c' }),
      claim({ of: 'c', than: 'a' }, 23),
    ].map((own) => only([own], open).standing);
    expect(standings).toEqual(['not-shown', 'not-shown', 'contradicted', 'contradicted']);
  });

  test('a gap that mostly does not hold in other ways bears out nothing, and nothing the other way', () => {
    const leaning = {
      ...findings,
      metrics: findings.metrics.map((metric) => ({
        ...metric,
        pairs: metric.pairs.map((pair) => ({ ...pair, overlays: [...pair.overlays, 'leans' as const] })),
      })),
    };
    expect(only([claim({ of: 'c', than: 'a' })], findings).standing).toBe('borne-out');
    expect(only([claim({ of: 'c', than: 'a' })], leaning).standing).toBe('not-shown');
    expect(only([claim({ of: 'c', than: 'a' }, 15)], leaning).standing).toBe('not-shown');
    expect(only([claim({ of: 'a', than: 'c' })], leaning).standing).toBe('contradicted');
  });

  test('a claim on what no column holds is not measured, and not judged', () => {
    const spin = claim({ metric: 'spin_rate' });
    const straighter = claim({ metric: 'side', direction: 'straighter' });
    expect([spin, straighter].map((own) => isMeasured(own, findings))).toEqual([false, false]);
    expect(claimStandings([spin, straighter], findings)).toEqual([]);
    expect(isMeasured(claim({}), findings)).toBe(true);
  });
});

/** Brown-Forsythe with Holm by R 4.2.2 (`reference/cases/claimed-spread.R`). */
describe('claims about spread', () => {
  const heads = (shots: number) => ({
    'Carry (yd)': {
      alder: around(230, 0.3).slice(0, shots),
      birch: around(230, 1.2).toReversed().slice(0, shots),
      cedar: around(230, 1.3).slice(0, shots),
    },
  });
  const { findings } = reportOf({ shots: heads(12) });
  const tighter = (of: string, than: string): Claim => claim({ direction: 'tighter', of, than });

  test.each(spreads.pairs)('$a and $b: p and ratio are those of R', ({ a, b, p, ratio }) => {
    const { spread } = only([tighter(a, b)], findings);
    expect(spread?.p).toBeCloseTo(p, 9);
    expect(spread?.ratio).toBeCloseTo(ratio, 9);
    const turned = only([tighter(b, a)], findings).spread;
    expect(turned?.ratio).toBeCloseTo(1 / ratio, 9);
    expect([spread?.tighter, turned?.tighter]).toEqual(['of', 'than']);
  });

  test('borne out below 0.05 the claimed way, contradicted the other way, else not shown', () => {
    const standings = [tighter('alder', 'birch'), tighter('birch', 'alder'), tighter('birch', 'cedar')];
    expect(standings.map((own) => only([own], findings).standing)).toEqual([
      'borne-out',
      'contradicted',
      'not-shown',
    ]);
  });

  test('eleven shots with each show nothing about spread', () => {
    const fewer = reportOf({ shots: heads(11) }).findings;
    const standing = only([tighter('alder', 'birch')], fewer);
    expect([standing.standing, standing.spread]).toEqual(['not-shown', null]);
  });

  test('hit one after another, a smaller spread is not put down to the head', () => {
    const open = reportOf({ shots: heads(12), order: 'one after another' }).findings;
    const standings = [tighter('alder', 'birch'), tighter('birch', 'alder')];
    expect(standings.map((own) => only([own], open).standing)).toEqual(['not-shown', 'contradicted']);
  });
});

describe('claims on what was not chosen before hitting', () => {
  const shots = {
    'Carry (yd)': { alder: around(230), birch: around(230) },
    'Side (yd)': {
      alder: around(0, 0.2),
      birch: around(20, 0.2).map((own, index) => (index % 2 === 0 ? own : -own)),
    },
    'Ball Speed (mph)': { alder: around(150, 0.2), birch: around(140, 0.2) },
  };
  const { findings } = reportOf({
    shots,
    front: {
      contenders:
        '{alder: {label: A, supplied_by: us, sold_here: new}, birch: {label: B, supplied_by: us, sold_here: new}}',
    },
  });

  test('straighter is less distance from the line, left and right alike, and was not planned', () => {
    const straighter = (of: string, than: string, size = 0): Claim =>
      claim({ metric: 'side', direction: 'straighter', of, than }, size);
    const standing = only([straighter('alder', 'birch')], findings);
    expect([standing.standing, standing.planned]).toEqual(['borne-out', false]);
    expect(only([straighter('birch', 'alder')], findings).standing).toBe('contradicted');
    expect(only([straighter('alder', 'birch', 18)], findings).standing).toBe('weaker-than-said');
  });

  test('on an exploratory metric a claim is borne out, but not planned; on the primary one it is', () => {
    const speed = only([claim({ metric: 'ball_speed', of: 'alder', than: 'birch' })], findings);
    const carry = only([claim({ of: 'alder', than: 'birch' })], findings);
    expect([speed.standing, speed.planned]).toEqual(['borne-out', false]);
    expect([carry.standing, carry.planned]).toEqual(['not-shown', true]);
  });
});

test('four shots are too few to judge: nothing is shown', () => {
  const { findings } = reportOf({
    shots: { 'Carry (yd)': { alder: [240, 241, 242, 243], birch: around(200), cedar: around(201) } },
  });
  const standing = only([claim({ of: 'alder', than: 'birch' })], findings);
  expect([standing.standing, standing.gap]).toEqual(['not-shown', null]);
});

describe('the most that a claim can reach', () => {
  const gap = (
    overlays: readonly OverlayId[],
    rest: Partial<PairFindings> = {},
  ): Pick<Findings, 'metrics' | 'straighter'> => {
    const {
      metrics: [carry],
      straighter,
    } = reportOf({}).findings;
    const pair = plainPair('a', 'b', 10, 'clear', { ci: [6, 14], overlays, ...rest });
    return { metrics: carry === undefined ? [] : [{ ...carry, pairs: [pair] }], straighter };
  };
  const standing = (
    overlays: readonly OverlayId[],
    {
      direction = 'more' as const,
      ruleFirst = false,
      rest = {},
    }: {
      readonly direction?: 'more' | 'less';
      readonly ruleFirst?: boolean;
      readonly rest?: Partial<PairFindings>;
    } = {},
  ): StandingId | undefined =>
    claimStandings([claim({ direction })], gap(overlays, rest), ruleFirst)[0]?.standing;

  test('a gap with nothing beside it bears it out', () => {
    expect(standing(['one-hitter', 'one-example', 'few-shots'])).toBe('borne-out');
  });

  test.each([
    'mixed-with-swing',
    'near-device',
    'rests-on-one-shot',
    'depends-on-left-out',
    'uneven-readings',
    'leans',
    'visits-alike',
  ] as const)('with %s it is not shown, and contradicted all the same', (overlay) => {
    expect(standing([overlay])).toBe('not-shown');
    expect(standing([overlay], { direction: 'less' })).toBe('contradicted');
  });

  test('with an open cause it is not shown', () => {
    expect(standing([], { rest: { credit: 'open' } })).toBe('not-shown');
  });

  test('an answer that depends on what was left out stands where a record shows the rule from before', () => {
    expect(standing(['depends-on-left-out'], { ruleFirst: true })).toBe('borne-out');
    expect(standing(['depends-on-left-out', 'rests-on-one-shot'], { ruleFirst: true })).toBe('not-shown');
  });
});
