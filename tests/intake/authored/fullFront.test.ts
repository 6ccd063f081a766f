import { describe, expect, test } from 'vitest';
import { readReport } from '../../../src/intake/authored/readReport.ts';
import { file } from './example.ts';

/** Every key that a report may have, in block style. */
const text = `---
title: "Two wedges: #2 and #3"
date: 2026-04-11
published: 2026-04-20
summary: >
  Two lines
  become one.
status: superseded
superseded_by: two-wedges-again
aliases: [wedges, two-wedges.2025]
invented_data: yes
question: Does the new groove spin more?
varied: grooves
held:
  shaft: one shaft moved across
  also: {glove of: the hitter's own}
contenders:
  alder:
    label: Alder 56°
    short: Alder
    match: [ALD-56, Ald 56]
    build: {loft: 56°, loft_measured: 55.6°, length: 35.25 in, grooves: new, also: {sole: wide}}
    supplied_by: our stock
    sold_here: both
    price: {amount: 149.5, currency: EUR, on: 2026-04-01}
  birch: {label: Birch 56°, match: Birch, supplied_by: our used stock, sold_here: used}
primary: [Spin Rate, descent angle]
better: {spin rate: more, carry: neither}
matters: {spin rate: 500, carry: 3 m, smash: 0.02, club speed: 1 mph, launch angle: 1.5°, strike_across: 5 mm}
plan:
  date: 2026-04-01
  shots_per_contender: 12
  order: random rotation
  seed: 0042
  exclusion_rule: none leaves for where it went
  stopping_rule: 12 each
  expectation: the new one spins more
  warm_up: ten shots with another club
session: [day/alder.csv, birch.csv]
rows: not-in-hit-order
columns:
  carry: {heading: Dist, unit: yards, class: modelled}
  side: {heading: Off, unit: m, positive: left}
  spin axis: Tilt
hitters:
  one: {role: staff fitter, hand: left, link_to_shop: employed, saw_club: yes, saw_numbers: no, consent: "yes, 2026-04-01", match: JD}
conditions:
  place: indoors, bay 2
  temperature: 21 °C
  ball: one new model for every shot
  monitor:
    kind: camera
    stated_accuracy: {ball speed: ±1 mph, launch angle: 0.2}
    accuracy_stated_by: its maker
    columns: {carry: modelled, spin rate: estimated}
exclusions:
  - {contender: alder, shot: 3, rule: misread, reason: no spin reading}
  - {metric: smash, below: 0.7, reason: declared before hitting}
  - {metric: side, below: -40 m, above: 40 m, rule: into the net, reason: hit the frame}
interests: {supplied: our own stock, paid_by: the shop, commission_or_gifts: none, seen_before: nobody}
claims:
  - {say: Alder spins more, metric: spin rate, more: alder, than: birch, by_at_least: 200 rpm, allow_unproven: yes}
  - {say: Birch is straighter, straighter: birch, than: alder}
corrections: [{date: 2026-05-01, what: loft, was: 56°, now: 55.6°}]
replies: [{from: the distributor, date: 2026-05-02, text: We measured 56°.}]
---
`;

describe('a report that answers everything', () => {
  const { front, problems, placeOf } = readReport(file, text);

  test('has no problem', () => {
    expect(problems).toEqual([]);
  });

  test('reads metrics by id or by the words of the trade', () => {
    expect(front?.primary).toEqual(['spin_rate', 'descent_angle']);
    expect(front?.better).toEqual({ spin_rate: 'more', carry: 'neither' });
    expect(Object.keys(front?.columns ?? {})).toEqual(['carry', 'side', 'spin_axis']);
  });

  test('reads gaps in canonical units (1 mph = 0.44704 m/s, 1 mm = 0.001 m: NIST SP 811 appendix B.8)', () => {
    const gaps = front?.matters ?? {};
    const expected = {
      spin_rate: 500,
      carry: 3,
      smash: 0.02,
      club_speed: 0.44704,
      launch_angle: 1.5,
      strike_across: 0.005,
    };
    expect(Object.keys(gaps)).toEqual(Object.keys(expected));
    for (const [metric, value] of Object.entries(expected)) {
      expect(Object.entries(gaps).find(([id]) => id === metric)?.[1].value).toBeCloseTo(value, 12);
    }
  });

  test('keeps texts, sheets and prices', () => {
    expect(front).toMatchObject({
      title: 'Two wedges: #2 and #3',
      summary: 'Two lines become one.',
      published: '2026-04-20',
      status: 'superseded',
      supersededBy: 'two-wedges-again',
      aliases: ['wedges', 'two-wedges.2025'],
      inventedData: true,
      held: { shaft: 'one shaft moved across', also: { 'glove of': "the hitter's own" } },
      rowsInHitOrder: false,
      session: ['day/alder.csv', 'birch.csv'],
      plan: { date: '2026-04-01', shotsPerContender: 12, order: 'random rotation', seed: '0042' },
      columns: {
        carry: { heading: 'Dist', unit: 'yd', class: 'modelled' },
        side: { heading: 'Off', unit: 'm', positive: 'left' },
        spin_axis: { heading: 'Tilt' },
      },
    });
    expect(front?.contenders[0]).toEqual({
      id: 'alder',
      label: 'Alder 56°',
      short: 'Alder',
      match: ['ALD-56', 'Ald 56'],
      build: {
        loft: '56°',
        loft_measured: '55.6°',
        length: '35.25 in',
        grooves: 'new',
        also: { sole: 'wide' },
      },
      suppliedBy: { kind: 'own-stock', stock: null, words: 'our stock' },
      soldHere: 'both',
      price: { amount: 149.5, currency: 'EUR', on: '2026-04-01' },
    });
    expect(front?.contenders[1]?.match).toEqual(['Birch']);
    expect(front?.hitters[0]).toEqual({
      id: 'one',
      role: 'staff fitter',
      hand: 'left',
      linkToShop: 'employed',
      sawClub: true,
      sawNumbers: false,
      consent: { date: '2026-04-01' },
      match: ['JD'],
    });
  });

  test('reads conditions in their short and long forms', () => {
    expect(front?.conditions).toMatchObject({
      place: 'indoors, bay 2',
      temperature: '21 °C',
      ball: { description: 'one new model for every shot' },
      monitor: {
        kind: 'camera',
        statedAccuracy: { words: null, byMetric: { launch_angle: { value: 0.2 } } },
        accuracyStatedBy: 'its maker',
        columns: { carry: 'modelled', spin_rate: 'estimated' },
      },
    });
    expect(front?.conditions.monitor?.statedAccuracy?.byMetric.ball_speed?.value).toBeCloseTo(0.44704, 12);
  });

  test('tells shots left out from limits, and says what a claim compares', () => {
    expect(front?.exclusions).toMatchObject([
      { kind: 'shot', contender: 'alder', shot: 3, rule: 'misread', reason: 'no spin reading' },
      { kind: 'limit', metric: 'smash', below: { value: 0.7 }, above: null, rule: null },
      { kind: 'limit', metric: 'side', below: { value: -40 }, above: { value: 40 }, rule: 'into the net' },
    ]);
    expect(front?.claims).toMatchObject([
      {
        metric: 'spin_rate',
        direction: 'more',
        of: 'alder',
        than: 'birch',
        byAtLeast: { value: 200 },
        allowUnproven: true,
      },
      {
        metric: 'side',
        direction: 'straighter',
        of: 'birch',
        than: 'alder',
        byAtLeast: null,
        allowUnproven: false,
      },
    ]);
  });

  test('knows where each answer stands: key, value, list entry, and the parent of what is not there', () => {
    const lines = text.split('\n');
    const at = (path: readonly (string | number)[], part?: 'key' | 'value'): string => {
      const { line, column } = placeOf(path, part);
      return (lines[(line ?? 0) - 1] ?? '').slice((column ?? 0) - 1);
    };
    expect(at(['title'])).toBe('"Two wedges: #2 and #3"');
    expect(at(['title'], 'key')).toBe('title: "Two wedges: #2 and #3"');
    expect(at(['contenders', 'alder', 'build', 'loft_measured'])).toMatch(/^55\.6°, length/);
    expect(at(['claims', 1])).toMatch(/^\{say: Birch is straighter/);
    expect(at(['claims', 1, 'than'])).toBe('alder}');
    expect(at(['claims', 7])).toBe('claims:');
    expect(at(['hitters', 'one', 'usual_club'])).toMatch(/^one: \{role/);
    expect(placeOf(['hitters', 'one', 'usual_club']).columnName).toBe('hitters.one.usual_club');
    expect(placeOf(['nothing'])).toMatchObject({ line: 1, column: 1, columnName: 'nothing' });
    expect(placeOf(['claims', 1, 'than'])).toMatchObject({ file, columnName: 'claims[2].than' });
  });
});
