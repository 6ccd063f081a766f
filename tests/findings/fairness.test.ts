import { describe, expect, test } from 'vitest';
import { buildDifferences } from '../../src/findings/buildDifferences.ts';
import type { FairnessId } from '../../src/findings/findings.ts';
import { emptyLedger, type Ledger } from '../../src/intake/ledger.ts';
import { planHash } from '../../src/site/ledger.ts';
import { around, csvOf, reportOf, threeHeads, writtenReport } from './reportOf.ts';

type Invented = Parameters<typeof reportOf>[0];

const stateOf = (id: FairnessId, invented: Invented, ledger: Ledger | null = null): string =>
  reportOf(invented, ledger).findings.fairness.find((check) => check.id === id)?.state ?? 'absent';

const front = (answers: Readonly<Record<string, string>>): Invented => ({ front: answers });
const hitter = (answers: string): Invented =>
  front({ hitters: `{one: {role: staff fitter, consent: yes, ${answers}}}` });
const plan = (answers: string): Invented => front({ plan: `{${answers}}` });

describe('what makes a test fair, one thing after another', () => {
  test('fifteen things in a fixed order, each with why it matters, and no score', () => {
    const { fairness } = reportOf({}).findings;
    expect(fairness.map(({ id }) => id)).toEqual([
      'one-thing-varied',
      'order',
      'warm-up',
      'enough-shots',
      'plan-first',
      'exclusion-rule',
      'exclusions-even',
      'same-ball',
      'conditions',
      'reading-measured',
      'hitter-blind',
      'hitters',
      'interests',
      'device-accuracy',
      'shot-numbers',
    ]);
    expect(fairness.every(({ why }) => /^[A-Z].{20,120}\.$/.test(why))).toBe(true);
    expect(fairness.every((check) => Object.keys(check).join() === 'id,state,why')).toBe(true);
  });

  const table: readonly (readonly [FairnessId, string, Invented, string])[] = [
    ['one-thing-varied', 'nothing else written', {}, 'not-recorded'],
    [
      'one-thing-varied',
      'held for all',
      front({ held: '{shaft: one stiff shaft, length: 45 in}' }),
      'stated',
    ],
    ['order', 'in turn', {}, 'yes'],
    ['order', 'one after another', { order: 'one after another' }, 'no'],
    ['order', 'not known', front({ rows: 'not-in-hit-order' }), 'not-recorded'],
    ['order', 'stated', front({ rows: 'not-in-hit-order', plan: '{order: random}' }), 'stated'],
    [
      'order',
      'stated to be one after another',
      front({ rows: 'not-in-hit-order', plan: '{order: one after another}' }),
      'no',
    ],
    ['warm-up', 'nothing said', {}, 'not-recorded'],
    ['warm-up', 'stated', plan('warm_up: ten balls with another club'), 'stated'],
    ['warm-up', 'stated that there was none', plan('warm_up: none'), 'no'],
    ['enough-shots', 'a gap of 6 found, 5 matters', {}, 'no'],
    ['enough-shots', 'a gap of 6 found, 8 matters', front({ matters: '{carry: 8 yd}' }), 'yes'],
    ['plan-first', 'no plan', {}, 'not-recorded'],
    ['plan-first', 'stated only', plan('date: 2026-04-01'), 'stated'],
    ['plan-first', 'on the day', plan('date: 2026-04-11'), 'no'],
    ['exclusion-rule', 'none', plan('date: 2026-04-01'), 'not-recorded'],
    ['exclusion-rule', 'without a day', plan('exclusion_rule: misreads only'), 'not-recorded'],
    ['exclusion-rule', 'before', plan('date: 2026-04-01, exclusion_rule: misreads only'), 'stated'],
    ['exclusion-rule', 'on the day', plan('date: 2026-04-11, exclusion_rule: misreads only'), 'no'],
    ['exclusions-even', 'none left out', {}, 'yes'],
    ['same-ball', 'nothing said', {}, 'not-recorded'],
    ['same-ball', 'held', front({ held: '{ball: one new model}' }), 'stated'],
    ['same-ball', 'stated', front({ conditions: '{ball: {same_for_all: yes}}' }), 'stated'],
    ['same-ball', 'stated that it was not', front({ conditions: '{ball: {same_for_all: no}}' }), 'no'],
    ['same-ball', 'balls compared', front({ varied: 'ball' }), 'absent'],
    ['conditions', 'none', {}, 'not-recorded'],
    [
      'conditions',
      'all, indoors',
      front({ conditions: '{place: indoors, surface: mat, temperature: 20 °C, altitude: 60 m}' }),
      'yes',
    ],
    [
      'conditions',
      'outdoors without the wind',
      front({ conditions: '{place: range, surface: turf, temperature: 20 °C, altitude: 60 m}' }),
      'not-recorded',
    ],
    ['reading-measured', 'nothing said', {}, 'not-recorded'],
    [
      'reading-measured',
      'measured',
      front({ conditions: '{monitor: {columns: {carry: measured}}}' }),
      'stated',
    ],
    ['reading-measured', 'modelled', front({ conditions: '{monitor: {columns: {carry: modelled}}}' }), 'no'],
    ['hitter-blind', 'nothing said', {}, 'not-recorded'],
    ['hitter-blind', 'blind', hitter('saw_numbers: no'), 'stated'],
    ['hitter-blind', 'not blind', hitter('saw_numbers: yes'), 'no'],
    ['hitters', 'one', {}, 'no'],
    ['interests', 'the golfer left out', {}, 'not-recorded'],
    ['interests', 'the golfer too', hitter('link_to_shop: none'), 'yes'],
    ['device-accuracy', 'none stated', {}, 'not-recorded'],
    [
      'device-accuracy',
      'finer than what matters',
      front({ conditions: '{monitor: {stated_accuracy: {carry: 2 yd}}}' }),
      'stated',
    ],
    [
      'device-accuracy',
      'coarser than what matters',
      front({ conditions: '{monitor: {stated_accuracy: {carry: 6 yd}}}' }),
      'no',
    ],
    [
      'device-accuracy',
      'in words only',
      front({ conditions: '{monitor: {stated_accuracy: good}}' }),
      'not-recorded',
    ],
    ['shot-numbers', 'complete', {}, 'yes'],
  ];

  test.each(table)('%s, %s', (id, _what, invented, state) => {
    expect(stateOf(id, invented)).toBe(state);
  });

  test('a warm-up in the file counts', () => {
    const csv = csvOf(threeHeads ?? {})
      .replace('Club,Shot,Carry (yd)', 'Club,Shot,Carry (yd),Warm-up')
      .replace(/(\d)\n/g, '$1,\n');
    const warm = csv.replace(/^alder,1,(.*),$/m, 'other,0,200,yes\nalder,1,$1,');
    expect(stateOf('warm-up', { csv: warm })).toBe('yes');
  });

  test('a plan is first only when the ledger holds this very plan from before the session', () => {
    const planned = plan('date: 2026-04-01, stopping_rule: twelve each');
    const { source } = writtenReport(planned);
    const hash = source === null ? '' : (planHash(source.front) ?? '');
    const on = (date: string, own = hash): Ledger => ({
      ...emptyLedger,
      plans: [{ slug: 'invented', date, hash: own }],
    });
    expect(stateOf('plan-first', planned, on('2026-04-10'))).toBe('yes');
    expect(stateOf('plan-first', planned, on('2026-04-11'))).toBe('stated');
    expect(stateOf('plan-first', planned, on('2026-04-10', 'f'.repeat(64)))).toBe('no');
    expect(stateOf('plan-first', front({ plan: '{date: 2026-04-01}' }), on('2026-04-10'))).toBe('no');
    expect(reportOf(planned, on('2026-04-10')).findings.design.plannedInAdvance).toBe(true);
    expect(reportOf(planned).findings.design.plannedInAdvance).toBe(false);
  });

  test('left out: one more of one than of the other is even, two are not', () => {
    const out = (...numbers: readonly number[]): Invented =>
      front({
        exclusions: `[${numbers.map((shot) => `{contender: alder, shot: ${shot}, rule: misread, reason: no spin}`).join(', ')}]`,
      });
    expect(stateOf('exclusions-even', out(1))).toBe('yes');
    expect(stateOf('exclusions-even', out(1, 4))).toBe('no');
  });

  test('one shot left out is not even-handed where the answer hangs on it', () => {
    // Without its 260 Alder would be level with Birch; with it left in, the gap is lost in the spread.
    const shots = {
      'Carry (yd)': {
        alder: [...around(236, 0.5).slice(0, 11), 180],
        birch: around(230, 0.5),
        cedar: around(230, 0.5),
      },
    };
    const left = {
      shots,
      ...front({ exclusions: '[{contender: alder, shot: 34, rule: misread, reason: no spin}]' }),
    };
    expect(reportOf(left).findings.caveats).toContain('depends-on-left-out');
    expect(stateOf('exclusions-even', left)).toBe('no');
  });

  test('a missing shot number, or none at all', () => {
    const csv = csvOf(threeHeads ?? {});
    expect(stateOf('shot-numbers', { csv: csv.replace(/^birch,5,.*\n/m, '') })).toBe('no');
    const bare = csv
      .split('\n')
      .map((row) => row.replace(/^([^,]*),[^,]*,/, '$1,'))
      .join('\n');
    expect(stateOf('shot-numbers', { csv: bare })).toBe('not-recorded');
  });
});

describe('build sheets compared field by field', () => {
  const compared = (varied: string, held: string, alder: string, birch: string) => {
    const contenders = `{alder: {label: A, supplied_by: us, sold_here: new, build: ${alder}}, birch: {label: B, supplied_by: us, sold_here: new, build: ${birch}}}`;
    const { source } = writtenReport({
      ...front({ varied, held, contenders }),
      shots: { 'Carry (yd)': { alder: around(1), birch: around(1) } },
    });
    if (source === null) throw new Error('the front matter was refused');
    const { differing, partly, alike } = buildDifferences(source.front);
    const told = (own: typeof differing): string[] =>
      own.map(
        ({ item, values }) =>
          `${item}: ${values.map(({ contender, value }) => `${contender} ${value}`).join(', ')}`,
      );
    return { differing: told(differing), partly: told(partly), alike };
  };

  test.each([
    ['head', '{shaft: S, length: 45 in}', '{head: H1, model: M1}', '{head: H2, model: M2}', [], [], 2],
    [
      'head',
      '{shaft: S}',
      '{head: H1, loft: 9°}',
      '{head: H2, loft: 10°}',
      ['stated loft: alder 9°, birch 10°'],
      [],
      1,
    ],
    ['head', '{shaft: S}', '{head: H1, shaft: T}', '{head: H2}', ['shaft: alder T, birch S'], [], 0],
    ['head', '{shaft: S}', '{head: H1, condition: used}', '{head: H2}', [], ['condition: alder used'], 1],
    ['head', '{shaft: S}', '{head: H1, length: 45.25 in}', '{head: H2, length: 45.25in}', [], [], 2],
    ['head', '{shaft: S}', '{head: H1, notes: scratched}', '{head: H2}', [], [], 1],
    [
      'shaft',
      '{head: H}',
      '{shaft: S1, flex: stiff, shaft_weight: 60 g}',
      '{shaft: S2, flex: regular, shaft_weight: 50 g}',
      [],
      [],
      1,
    ],
    [
      'shaft',
      '{head: H}',
      '{shaft: S1, length: 45 in}',
      '{shaft: S2, length: 46 in}',
      ['length: alder 45 in, birch 46 in'],
      [],
      1,
    ],
    ['ball', '{head: H}', '{ball: B1, cover: soft}', '{ball: B2, cover: hard}', [], [], 1],
    ['loft', '{head: H}', '{loft: 9°, settings: low}', '{loft: 11°, settings: high}', [], [], 1],
    ['grooves', '{head: H}', '{grooves: worn, condition: used}', '{grooves: new, condition: new}', [], [], 1],
    [
      'driver',
      '{ball: B}',
      '{head: H1, shaft: S1}',
      '{head: H2, shaft: S2}',
      ['shaft: alder S1, birch S2'],
      [],
      1,
    ],
    [
      'face angle',
      '{head: H}',
      '{also: {face angle: open, hosel: long}}',
      '{also: {face angle: shut, hosel: short}}',
      ['hosel: alder long, birch short'],
      [],
      0,
    ],
  ])('%s, held %s, %s and %s', (varied, held, alder, birch, differing, partly, alike) => {
    expect(compared(varied, held, alder, birch)).toEqual({ differing, partly, alike });
  });
});
