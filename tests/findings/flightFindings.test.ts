import { describe, expect, test } from 'vitest';
import { checkCarries } from '../../src/findings/carryCheck.ts';
import { launchWindowOf } from '../../src/findings/launchWindow.ts';
import type { Report } from '../../src/kit/report.ts';
import { fromCanonical, toCanonical } from '../../src/trade/units.ts';
import { flown } from '../demo/flown.ts';
import { drives, type Club } from './drives.ts';
import { madeReport, reportOf } from './reportOf.ts';

const twoHeads = {
  contenders:
    '{alder: {label: Alder, supplied_by: our stock, sold_here: new}, birch: {label: Birch, supplied_by: our stock, sold_here: new}}',
};
const reportOn = (clubs: readonly Club[], options = {}): Report =>
  reportOf({ front: twoHeads, csv: drives(clubs, options) });

describe('carries beside the flight model (C18)', () => {
  const kinds = (clubs: readonly Club[], options = {}, front: Record<string, string> = {}): string[] =>
    madeReport({ front: { ...twoHeads, ...front }, csv: drives(clubs, options) })
      .problems.map(({ kind }) => kind)
      .filter((kind) => kind.startsWith('carry-'));
  const alike = [{ name: 'Alder' }, { name: 'Birch' }];

  test('are left in peace where they follow from their launches', () => {
    expect(kinds(alike)).toEqual([]);
  });

  test('that no usual drag gives are called unusual, with the factor', () => {
    const { session } = reportOn(alike, { scale: 0.88 });
    const [problem] = checkCarries(session, toCanonical(5, 'yd'), false);
    expect(problem).toMatchObject({
      kind: 'carry-unusual',
      severity: 'warning',
      expected:
        'carries that a golf ball in usual air reaches: a drag factor of 0.88 to 1.05 in the flight model',
      forReader: 'The carries are unusual for these launches: conditions, ball or data may be special.',
    });
    expect(problem?.found).toMatch(/^carries that take a drag factor of 1\.\d\d$/);
  });

  test('that differ between contenders launch for launch are pointed out, save where balls are compared', () => {
    const favoured = [{ name: 'Alder', extra: 6 }, { name: 'Birch' }];
    expect(kinds(favoured)).toEqual(['carry-model-differs']);
    const { session } = reportOn(favoured);
    expect(checkCarries(session, toCanonical(5, 'yd'), true).map(({ kind }) => kind)).toEqual([]);
  });

  test('that scatter by more than launches explain are pointed out', () => {
    expect(kinds(alike, { scatter: 12 })).toContain('carry-scatters');
  });

  test('are not judged without launches, or with few shots', () => {
    const { session } = reportOf({});
    expect(checkCarries(session, toCanonical(5, 'yd'), false)).toEqual([]);
  });
});

describe('the swing', () => {
  test('that was faster with one head is called different and stands beside the gap', () => {
    const { findings } = reportOn([{ name: 'Alder', clubSpeed: 102 }, { name: 'Birch' }]);
    const speed = findings.swing?.measures.find(({ id }) => id === 'club_speed');
    expect(speed?.pricedBy).toBe('flight-model');
    expect(speed?.pairs[0]?.answer).toBe('different');
    const pair = findings.metrics[0]?.pairs[0];
    expect(pair?.overlays).toContain('mixed-with-swing');
    // All of the gap came with 4 mph of club speed, so little is left of it at equal speed.
    const left = fromCanonical(pair?.atEqualSpeed?.estimate ?? 99, 'yd');
    expect(Math.abs(left)).toBeLessThan(0.35 * fromCanonical(pair?.estimate ?? 0, 'yd'));
  });

  test('that was alike is not called different, and its price a mph lies where the trade puts it', () => {
    const { findings } = reportOn([{ name: 'Alder' }, { name: 'Birch' }]);
    const speed = findings.swing?.measures.find(({ id }) => id === 'club_speed');
    expect(speed?.pairs[0]?.answer).not.toBe('different');
    // 1 mph of club speed is worth 2 to 3 yards with a driver (common practice, no source).
    const yardsPerMph = (speed?.perUnit ?? [0, 0]).map((price) =>
      fromCanonical(price * toCanonical(1, 'mph'), 'yd'),
    );
    expect(yardsPerMph[0]).toBeGreaterThan(1.5);
    expect(yardsPerMph[1]).toBeLessThan(3.5);
    expect(findings.metrics[0]?.pairs[0]?.overlays).not.toContain('mixed-with-swing');
  });

  test('is not compared where nothing of it was read', () => {
    expect(reportOf({}).findings.swing).toBeNull();
  });
});

describe('where the yards come from', () => {
  test('a gap that came from the strike alone is given to it, within its own range', () => {
    const { findings } = reportOn([{ name: 'Alder', smash: 1.48 }, { name: 'Birch' }]);
    const [account] = findings.yards;
    if (account?.attribution.state !== 'attributed') throw new Error('no account');
    const { parts } = account.attribution;
    const smash = parts.find(({ id }) => id === 'smash');
    expect(smash?.settled).toBe(true);
    expect(smash?.finding).toBe(true);
    // What the strike is truly worth at the mean launch, by the model that flew the shots.
    const mean = { launchDeg: 13, directionDeg: 0, spinRpm: 2700, axisDeg: 0 };
    const worth =
      flown({ ballSpeedMph: 98 * 1.48, ...mean }).carryYd -
      flown({ ballSpeedMph: 98 * 1.42, ...mean }).carryYd;
    expect(fromCanonical(smash?.range[0] ?? 0, 'yd')).toBeLessThan(worth);
    expect(fromCanonical(smash?.range[1] ?? 0, 'yd')).toBeGreaterThan(worth);
    expect(parts.filter(({ id, settled }) => id !== 'smash' && settled)).toEqual([]);
  });

  test('there is no account without a gap, with the order open, or under eight shots', () => {
    expect(reportOn([{ name: 'Alder' }, { name: 'Birch' }]).findings.yards).toEqual([]);
    const rows = drives([{ name: 'Alder', smash: 1.48 }, { name: 'Birch' }])
      .trim()
      .split('\n');
    const [head = '', ...shots] = rows;
    const after = [
      ...shots.filter((row) => row.includes('Alder')),
      ...shots.filter((row) => row.includes('Birch')),
    ];
    const numbered = after.map((row, index) => row.replace(/^\d+/, String(index + 1)));
    const oneAfterAnother = reportOf({ front: twoHeads, csv: `${[head, ...numbered].join('\n')}\n` });
    expect(oneAfterAnother.findings.design.order).toBe('one-after-another');
    expect(oneAfterAnother.findings.yards).toEqual([]);
    const few = reportOf({ front: twoHeads, csv: `${[head, ...shots.slice(0, 14)].join('\n')}\n` });
    expect(few.findings.yards).toEqual([]);
  });

  test('the same session gives the same ranges', () => {
    const clubs = [{ name: 'Alder', smash: 1.48 }, { name: 'Birch' }];
    expect(reportOn(clubs).findings.yards).toEqual(reportOn(clubs).findings.yards);
  });
});

describe('launch and spin at this ball speed', () => {
  test('is worked out for the mean ball speed, nowhere better than its best point', () => {
    const { session } = reportOn([{ name: 'Alder' }, { name: 'Birch' }]);
    const window = launchWindowOf(session);
    expect(window?.sets).toBe(3);
    expect(fromCanonical(window?.ballSpeed ?? 0, 'mph')).toBeCloseTo(98 * 1.42, -1);
    expect(Math.min(...(window?.short.flat() ?? [-1]))).toBeGreaterThanOrEqual(0);
    expect(window?.short).toHaveLength(window?.spinRates.length ?? 0);
  });

  test('is left out where launches were not read', () => {
    expect(launchWindowOf(reportOf({}).session)).toBeNull();
  });
});

describe('the plan beside the rows', () => {
  test('other counts than planned are said (C15)', () => {
    const { problems } = madeReport({ front: { plan: '{shots_per_contender: 15}' } });
    expect(problems.find(({ kind }) => kind === 'shots-differ-from-plan')).toMatchObject({
      severity: 'warning',
      expected: '15 shots with each, as planned',
      found: 'Alder 9° 12, Birch 9° 12, Cedar 9° 12',
      forReader: 'Planned were 15 shots with each; recorded are Alder 9° 12, Birch 9° 12, Cedar 9° 12.',
    });
    const kept = madeReport({ front: { plan: '{shots_per_contender: 12}' } });
    expect(kept.problems.map(({ kind }) => kind)).not.toContain('shots-differ-from-plan');
  });

  test('a planned rotation that the rows contradict is said (C20)', () => {
    const contradicted = madeReport({
      front: { plan: '{order: random rotation}' },
      order: 'one after another',
    });
    expect(contradicted.problems.find(({ kind }) => kind === 'order-differs-from-plan')).toMatchObject({
      expected: 'shots in the planned order: random rotation',
      found: 'rows in which the shots stand one after another',
    });
    const kept = madeReport({ front: { plan: '{order: random rotation}' } });
    expect(kept.problems.map(({ kind }) => kind)).not.toContain('order-differs-from-plan');
    const notInOrder = madeReport({
      front: { plan: '{order: random rotation}', rows: 'not-in-hit-order' },
      order: 'one after another',
    });
    expect(notInOrder.problems.map(({ kind }) => kind)).not.toContain('order-differs-from-plan');
  });
});
