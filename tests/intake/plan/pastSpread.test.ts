import { describe, expect, test } from 'vitest';
import { learnedSpread, type PastSession } from '../../../src/intake/plan/pastSpread.ts';
import type { Session, Shot } from '../../../src/intake/session.ts';
import reference from '../../reference/plan/plan.json' with { type: 'json' };

interface Hit {
  readonly contender: string;
  readonly value: number | null;
  readonly hitter?: string;
  readonly excluded?: boolean;
}

function session(hits: readonly Hit[]): Session {
  return {
    contenders: [...new Set(hits.map(({ contender }) => contender))],
    hitters: [...new Set(hits.map(({ hitter = 'one' }) => hitter))],
    warmUps: 0,
    columns: {},
    shots: hits.map(({ contender, value, hitter = 'one', excluded = false }, index): Shot => ({
      contender,
      hitter,
      round: null,
      order: index + 1,
      shotNo: index + 1,
      time: null,
      values: { carry: value },
      excluded: excluded ? { rule: 'misread', reason: 'no reading' } : null,
      place: { file: 'shots.csv', line: index + 2 },
    })),
  };
}

const past = (
  slug: string,
  hits: readonly Hit[],
  { kind = 'driver', role = 'staff fitter' }: { kind?: PastSession['kind']; role?: string } = {},
): PastSession => ({ slug, kind, roles: { one: role, two: 'customer' }, session: session(hits) });

/** `count` shots one above and one below the mean in turn, `away` apart from it, with two contenders. */
const swinging = (away: number, count = 12, extra: Partial<Hit> = {}): Hit[] =>
  Array.from({ length: count }, (_, index) => ({
    contender: index % 4 < 2 ? 'alder' : 'birch',
    value: (index % 4 < 2 ? 200 : 210) + (index % 2 === 0 ? away : -away),
    ...extra,
  }));

const asked = { metric: 'carry', kind: 'driver', role: null } as const;
const warp = reference.shots.map(({ cell, value }) => ({ contender: cell, value }));

describe('the pooled spread', () => {
  // warpbreaks of R: residual standard error of the one-way model.
  test('of one session is the residual standard error of R', () => {
    const learned = learnedSpread([past('a', warp)], asked);
    expect(learned?.sd).toBeCloseTo(reference.pooledSd, 10);
    expect(learned).toMatchObject({ shots: 54, reports: ['a'], sameRole: false });
    expect(learned?.range?.[0]).toBeLessThan(reference.pooledSd);
    expect(learned?.range?.[1]).toBeGreaterThan(reference.pooledSd);
  });

  test('is the same when cells lie in several sessions, whatever their averages', () => {
    const cells = [...Map.groupBy(warp, ({ contender }) => contender).values()];
    const apart = cells.map((hits, index) =>
      past(
        `r${index}`,
        hits.map(({ value }) => ({ contender: 'alder', value: value + 50 * index })),
      ),
    );
    expect(learnedSpread(apart, asked)?.sd).toBeCloseTo(reference.pooledSd, 10);
  });

  test('keeps hitters apart, and leaves out excluded shots and shots without a reading', () => {
    const two = swinging(4).map((hit) => ({ ...hit, hitter: 'two', value: (hit.value ?? 0) - 60 }));
    const off: Hit[] = [
      { contender: 'alder', value: 20, excluded: true },
      { contender: 'alder', value: null },
    ];
    const learned = learnedSpread([past('a', [...swinging(4), ...two, ...off])], asked);
    // Four cells of six, each 4 either side of its mean: 96 / 5 in each.
    expect(learned?.sd).toBeCloseTo(Math.sqrt(96 / 5), 10);
    expect(learned?.shots).toBe(24);
  });
});

describe('whose shots count', () => {
  const sessions = [
    past('fitter', swinging(2)),
    past('customer', swinging(8), { role: 'Customer' }),
    past('irons', swinging(20), { kind: 'iron' }),
    past('unknown', swinging(30), { kind: null }),
  ];

  test('those with the same kind of club', () => {
    expect(learnedSpread(sessions, asked)?.reports).toEqual(['fitter', 'customer']);
    expect(learnedSpread(sessions, { ...asked, kind: 'wedge' })).toBe(null);
  });

  test('those of the role, in any casing, where there are any; else all', () => {
    const customer = learnedSpread(sessions, { ...asked, role: 'customer' });
    expect(customer).toMatchObject({ reports: ['customer'], sameRole: true });
    expect(learnedSpread(sessions, { ...asked, role: 'professional' })).toMatchObject({
      reports: ['fitter', 'customer'],
      sameRole: false,
    });
  });

  test('too few shots tell nothing: ten degrees of freedom at least', () => {
    expect(learnedSpread([past('a', swinging(4, 11))], asked)).toBe(null);
    expect(learnedSpread([past('a', swinging(4, 12))], asked)?.shots).toBe(12);
    expect(learnedSpread([past('a', swinging(0))], asked)).toBe(null);
  });
});
