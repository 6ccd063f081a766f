import { describe, expect, test } from 'vitest';
import { metrics, type MetricId } from '../../src/trade/metrics.ts';
import type { Dimension } from '../../src/trade/units.ts';
import { supportedClaim, supportedClaims } from '../../src/prose/supportedClaims.ts';
import { yamlScalar } from '../../src/intake/draft/yamlScalar.ts';
import { around, madeReport, reportOf, threeHeads } from '../findings/reportOf.ts';

type Invented = Parameters<typeof reportOf>[0];

const offered = (invented: Invented): readonly string[] => {
  const { telling } = reportOf(invented);
  return supportedClaims({ telling, ruleFirst: false }).flatMap(({ about, role, claims }) =>
    claims.map(({ claim }) => `${role} ${about}: ${claim.say} [${claim.byAtLeast?.typed ?? 'no size'}]`),
  );
};

/** An average, a step between contenders, and the unit of a heading. */
const sizes: Readonly<Record<Dimension, readonly [number, number, string]>> = {
  speed: [100, 4, ' (mph)'],
  distance: [2, 12, ' (yd)'],
  height: [90, 12, ' (ft)'],
  offset: [2, 8, ' (mm)'],
  angle: [3, 2, ' (deg)'],
  spin: [2500, 400, ' (rpm)'],
  ratio: [1.4, 0.02, ''],
  time: [6, 0.5, ' (s)'],
};

/** Measures in groups of which none can be worked out from others, so that none is held against another. */
const groups: readonly (readonly MetricId[])[] = [
  ['ball_speed', 'launch_direction', 'face_angle', 'side', 'apex', 'hang_time'],
  ['club_speed', 'launch_angle', 'club_path', 'dynamic_loft', 'curve', 'strike_across'],
  ['smash', 'spin_rate', 'face_to_path', 'spin_loft', 'descent_angle', 'strike_up'],
  ['spin_axis', 'attack_angle', 'back_spin'],
  ['side_spin'],
];

describe('the claims that shots support', () => {
  test('are told pair by pair, each with the largest size that still is supported', () => {
    expect(offered({})).toEqual([
      'primary carry: Alder carried at least 7 yards farther than Cedar [7 yd]',
      'primary carry: Alder carried at least 1 yard farther than Birch [1 yd]',
      'primary carry: Birch carried at least 1 yard farther than Cedar [1 yd]',
    ]);
  });

  test('a step more is overstated', () => {
    const { telling } = reportOf({});
    const found = supportedClaim(
      { metric: 'carry', direction: 'more', of: 'cedar', than: 'alder' },
      { telling, ruleFirst: false },
    );
    expect(found?.claim.of).toBe('alder');
    const more = reportOf({
      front: { claims: '\n  - {say: It does, metric: carry, more: alder, than: cedar, by_at_least: 8 yd}' },
    });
    expect(more.findings.claims.map(({ standing }) => standing)).toEqual(['weaker-than-said']);
  });

  test('in the unit of a shop that prints metres', () => {
    const shop = 'name: Example Shop\ndefaults: {units: metres}';
    expect(offered({ shop })).toEqual([
      'primary carry: Alder carried at least 6 metres farther than Cedar [6 m]',
      'primary carry: Alder carried at least 1 metre farther than Birch [1 m]',
      'primary carry: Birch carried at least 1 metre farther than Cedar [1 m]',
    ]);
  });

  test('with what was hit the more consistently, and nearer the line', () => {
    const shots = {
      'Carry (yd)': { alder: around(230, 0.3), birch: around(230, 1.2).toReversed() },
      'Side (yd)': {
        alder: around(0, 0.2),
        birch: around(20, 0.2).map((own, index) => (index % 2 === 0 ? own : -own)),
      },
    };
    const contenders =
      '{alder: {label: Alder, supplied_by: our stock, sold_here: new}, birch: {label: Birch, supplied_by: our stock, sold_here: new}}';
    expect(offered({ shots, front: { contenders } })).toEqual([
      'primary carry: Alder was more consistent in carry than Birch [no size]',
      'exploratory side: Alder was more consistent in side than Birch [no size]',
      'exploratory straighter: Alder finished at least 15 yards nearer the line than Birch [15 yd]',
    ]);
  });

  test('none where the order leaves the cause open', () => {
    expect(offered({ order: 'one after another' })).toEqual([]);
  });

  test.each(groups)('each is one that the check of a report finds nothing wrong with: %s', (...ids) => {
    const wide = (least: number, step: number): Record<string, readonly number[]> => ({
      alder: around(least, step / 12),
      birch: around(least + step, step / 12).toReversed(),
      cedar: around(least + 3 * step, step / 12),
    });
    const shots = {
      ...threeHeads,
      ...Object.fromEntries(
        ids.map((id) => {
          const [least, step, unit] = sizes[metrics[id].dimension];
          return [`${metrics[id].headings[0] ?? id}${unit}`, wide(least, step)];
        }),
      ),
    };
    const { telling } = reportOf({ shots });
    const families = supportedClaims({ telling, ruleFirst: false });
    const claims = families.flatMap((family) => family.claims);
    expect(families.filter(({ claims: own }) => own.length > 0).map(({ about }) => about)).toEqual(
      expect.arrayContaining([...ids]),
    );
    const entries = claims.map(
      ({ claim: { say, metric, direction, of, than, byAtLeast } }) =>
        `  - {say: ${yamlScalar(say)}, metric: ${metric}, ${direction}: ${of}, than: ${than}${byAtLeast === null ? '' : `, by_at_least: ${byAtLeast.typed}`}}`,
    );
    const { problems, report } = madeReport({ shots, front: { claims: `\n${entries.join('\n')}` } });
    expect(problems.filter(({ columnName }) => columnName?.startsWith('claims') === true)).toEqual([]);
    expect(report?.findings.claims.map(({ standing }) => standing)).toEqual(claims.map(() => 'borne-out'));
    expect(new Set(claims.map(({ claim }) => claim.say)).size).toBe(claims.length);
  });
});
