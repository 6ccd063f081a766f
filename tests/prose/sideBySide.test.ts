import { describe, expect, test } from 'vitest';
import type { MetricFindings } from '../../src/findings/findings.ts';
import type { Contender } from '../../src/intake/authored/contender.ts';
import type { Front } from '../../src/intake/authored/front.ts';
import type { Source } from '../../src/intake/authored/source.ts';
import { tellSideBySide } from '../../src/prose/english/sideBySide.ts';
import { sideBySide } from '../../src/prose/sideBySide.ts';
import type { Telling } from '../../src/prose/telling.ts';
import type { MetricId } from '../../src/trade/metrics.ts';
import { toCanonical, type UnitId } from '../../src/trade/units.ts';
import { metricOf, pairOf, tellingFor, type Told } from './tellings.ts';

const names = { a: 'Heron', b: 'Wren', c: 'Plover' };

/** A metric of several contenders: averages as typed, each give or take one, sd two; pairs as told. */
function metricWith(
  metric: MetricId,
  unit: UnitId,
  means: readonly (number | null)[],
  pairs: readonly MetricFindings['pairs'][number][],
  rest: Partial<MetricFindings> = {},
): MetricFindings {
  const si = (value: number): number => toCanonical(value, unit);
  return metricOf(
    { metric, verdict: 'clear' },
    {
      resolution: si(0.1),
      matters: si(4),
      byContender: means.map((mean, index) => ({
        id: 'abc'.charAt(index),
        n: mean === null ? 0 : 12,
        mean: mean === null ? null : si(mean),
        sd: mean === null ? null : si(2),
        ci: mean === null ? null : [si(mean - 1), si(mean + 1)],
        median: null,
        min: null,
        max: null,
        sdCi: null,
      })),
      pairs,
      ...rest,
    },
  );
}

const between = (
  metric: MetricId,
  unit: UnitId,
  [a, b]: readonly [string, string],
  verdict: Told['verdict'],
  [estimate, low, high]: readonly [number, number, number],
): MetricFindings['pairs'][number] => {
  const si = (value: number): number => toCanonical(value, unit);
  return {
    ...pairOf({ metric, verdict, pair: { estimate: si(estimate), ci: [si(low), si(high)] } }),
    a,
    b,
    ahead: estimate >= 0 ? a : b,
  };
};

const carry = metricWith(
  'carry',
  'yd',
  [172, 161, 168],
  [
    between('carry', 'yd', ['a', 'b'], 'clear', [11, 8, 15]),
    between('carry', 'yd', ['a', 'c'], 'too-close', [4, -2, 10]),
    between('carry', 'yd', ['b', 'c'], 'clear', [-7, -11, -4.4]),
  ],
);
const spin = metricWith(
  'spin_rate',
  'rpm',
  [5100, 5200, 5600],
  [
    between('spin_rate', 'rpm', ['a', 'b'], 'too-close', [-100, -300, 100]),
    between('spin_rate', 'rpm', ['a', 'c'], 'clear', [-500, -800, -310]),
    between('spin_rate', 'rpm', ['b', 'c'], 'size-unsure', [-400, -700, -100]),
  ],
  { role: 'exploratory', matters: 300 },
);

const sheet = (id: string, rest: Partial<Contender> = {}): Contender => ({
  id,
  label: id,
  suppliedBy: { kind: 'own-stock', stock: null, words: 'our stock' },
  soldHere: 'new',
  ...rest,
});

const sourceOf = (contenders: readonly Contender[], held: Front['held'] = {}): Pick<Source, 'front'> => {
  const front: Pick<Front, 'contenders' | 'held'> = { contenders, held };
  return { front: front as Front };
};
const plainSource = sourceOf(['a', 'b', 'c'].map((id) => sheet(id)));

function told(
  metricsTold: readonly MetricFindings[],
  source = plainSource,
  options: Parameters<typeof tellingFor>[1] = {},
  change: (telling: Telling) => Telling = (telling) => telling,
) {
  const telling = change(tellingFor(metricsTold, { names, varied: 'ball', ...options }));
  return tellSideBySide(sideBySide(telling.findings, source), telling, 'en-GB');
}
const rowOf = (table: ReturnType<typeof told>, name: string) => table.rows.find((row) => row.name === name);

describe('measures', () => {
  test('stand in the order in which the trade reads them, after the shots', () => {
    expect(told([carry, spin]).rows.map(({ name }) => name)).toEqual([
      'Shots',
      'Spin rate',
      'Carry',
      'Supplied by',
    ]);
  });

  test('give the average with its sd, and its likely range under it, rounded as in sentences', () => {
    expect(rowOf(told([carry]), 'Carry')).toMatchObject({
      aside: 'yd',
      weight: 'main',
      cells: [
        { value: '172', beside: 'sd 2', under: ['170–174'] },
        { value: '161', beside: 'sd 2', under: ['160–162'] },
        { value: '168', beside: 'sd 2', under: ['166–170'] },
      ],
    });
  });

  test('print a range beyond 0 with "to", and say which side is which', () => {
    const side = metricWith('side', 'yd', [0, 3], [], { role: 'exploratory' });
    expect(rowOf(told([side], sourceOf([sheet('a'), sheet('b')])), 'Side')).toMatchObject({
      aside: 'yd, right +',
      cells: [{ under: ['−1 to 1'] }, { under: ['2–4'] }],
    });
  });

  test('are not recorded where there is no reading, and say how many there are where some are missing', () => {
    const some = metricWith('carry', 'yd', [172, null], []);
    const [first, second] = some.byContender;
    if (first === undefined || second === undefined) throw new Error('two contenders');
    const table = told(
      [{ ...some, byContender: [{ ...first, n: 9 }, second] }],
      sourceOf([sheet('a'), sheet('b')]),
    );
    expect(rowOf(table, 'Carry')?.cells).toEqual([
      { value: '172', beside: 'sd 2', under: ['171–173', 'nine readings'] },
      { value: 'not recorded', beside: null, under: [] },
    ]);
  });

  test('of several golfers have neither a range nor an sd of their own, and it is said why', () => {
    const table = told([carry], plainSource, { design: { hitters: 8, unit: 'hitter' } });
    expect(table.caption).toBe('Averages of all shots of eight golfers');
    expect(rowOf(table, 'Carry')?.cells[0]).toEqual({ value: '172', beside: null, under: [] });
    expect(table.notes[0]).toBe(
      'Averages depend on who hit, so none has a likely range: the balls are compared golfer by golfer, and a difference need not be one average less another.',
    );
  });

  test('that nobody measured are named once under the table', () => {
    const table = told([
      { ...carry, class: 'modelled' },
      { ...spin, class: 'estimated' },
    ]);
    expect(table.notes.slice(0, 2)).toEqual([
      'Calculated, not measured: carry.',
      'Estimated, not measured: spin rate.',
    ]);
  });
});

describe('differences', () => {
  test('of a main measure are told with their likely range, and who cannot be told from whom', () => {
    expect(rowOf(told([carry]), 'Carry')?.judged).toEqual([
      'Heron and Plover carried farther than Wren, likely by just over 4 to 16 yards',
      'We cannot tell Heron from Plover',
    ]);
  });

  test('of another measure have one muted form, and their family is told once', () => {
    const table = told([carry, spin], plainSource, {}, (telling) => ({
      ...telling,
      findings: { ...telling.findings, explored: { looked: 11, byChance: 0.55 } },
    }));
    expect(rowOf(table, 'Spin rate')).toMatchObject({
      weight: 'seen',
      judged: ['Seen, not tested for: Plover more than Heron and Wren'],
    });
    expect(table.notes).toEqual([
      'Seen, but not what this test set out to check: of 11 such measures, about one would show a difference by chance.',
    ]);
  });

  test.each([
    ['level', {}, 'No difference that matters between Heron and Wren'],
    ['small', {}, 'Heron carried farther than Wren, by too little to matter'],
    ['clear', { shots: [6, 6] }, 'On a first look Heron carried farther than Wren, likely by 6 to 18 yards'],
    ['clear', { open: true, overlays: ['order-lever'] }, 'Heron carried farther than Wren, cause unclear'],
    ['clear', { overlays: ['leans'] }, 'Heron may carry farther than Wren; our checks do not confirm it'],
    ['level', { overlays: ['leans'] }, 'We cannot tell Heron from Wren'],
    ['not-judged', {}, 'We did not judge Heron against Wren'],
  ] as const)('%s %j', (verdict, rest, words) => {
    const metric = metricOf({ metric: 'carry', verdict, ...rest });
    expect(rowOf(told([metric], sourceOf([sheet('a'), sheet('b')])), 'Carry')?.judged).toEqual([words]);
  });

  test('are counted where no one of them is in all pairs', () => {
    const four = ['a', 'b', 'c', 'd'];
    const pairs = four.flatMap((a, index) =>
      four.slice(index + 1).map((b) => between('carry', 'yd', [a, b], 'too-close', [1, -5, 7])),
    );
    const metric = metricWith('carry', 'yd', [160, 160, 160], pairs);
    const [one] = metric.byContender;
    if (one === undefined) throw new Error('a contender');
    const table = told(
      [{ ...metric, byContender: [...metric.byContender, { ...one, id: 'd' }] }],
      sourceOf(four.map((id) => sheet(id))),
    );
    expect(rowOf(table, 'Carry')?.judged).toEqual(['We cannot tell in any pair']);
  });
});

describe('shots near the line', () => {
  test('are counted, and whoever was nearer is seen, not tested for', () => {
    const side = metricWith('side', 'yd', [1, 3], [], { role: 'exploratory' });
    const place = { meanSide: 1, meanCarry: 150, withinShare: null, left: 3, right: 9, nextShot: null };
    const table = told([side], sourceOf([sheet('a'), sheet('b')]), {}, (telling) => ({
      ...telling,
      findings: {
        ...telling.findings,
        landing: {
          laneM: toCanonical(15, 'yd'),
          byContender: [
            { id: 'a', n: 20, within: 12, ...place },
            { id: 'b', n: 20, within: 20, ...place },
          ],
        },
        straighter: [between('side', 'yd', ['a', 'b'], 'clear', [6, 5, 9])],
      },
    }));
    expect(rowOf(table, 'Within 15 yards')).toEqual({
      name: 'Within 15 yards',
      aside: 'of the line',
      weight: 'seen',
      cells: [
        { value: '12 of 20', beside: null, under: [] },
        { value: '20 of 20', beside: null, under: [] },
      ],
      judged: ['Seen, not tested for: Wren nearer the line than Heron'],
    });
  });
});

describe('shots, prices, sources and builds', () => {
  test('shots left out stand under those that count', () => {
    const table = told([carry], plainSource, {}, (telling) => ({
      ...telling,
      findings: {
        ...telling.findings,
        contenders: telling.findings.contenders.map((one) => ({ ...one, excluded: one.id === 'b' ? 2 : 0 })),
      },
    }));
    expect(rowOf(table, 'Shots')?.cells.map(({ value, under }) => [value, ...under])).toEqual([
      ['12'],
      ['10', 'two more left out'],
      ['12'],
    ]);
  });

  test('prices have their day once where it is one, else each its own; none recorded, no row', () => {
    const priced = (on: string) =>
      sourceOf([
        sheet('a', { price: { amount: 48, currency: 'GBP', on: '2026-04-18' } }),
        sheet('b', { price: { amount: 21.5, currency: 'GBP', on } }),
        sheet('c'),
      ]);
    expect(rowOf(told([carry], priced('2026-04-18')), 'Price')).toMatchObject({
      aside: '18 April 2026',
      cells: [{ value: '£48', under: [] }, { value: '£21.50', under: [] }, { value: 'not recorded' }],
    });
    expect(rowOf(told([carry], priced('2026-04-20')), 'Price')).toMatchObject({
      aside: null,
      cells: [{ under: ['18 April 2026'] }, { under: ['20 April 2026'] }, { under: [] }],
    });
    expect(rowOf(told([carry]), 'Price')).toBeUndefined();
  });

  test('items that differ are marked, those on some sheets only are not, those alike are named in one line', () => {
    const source = sourceOf(
      [
        sheet('a', { build: { ball: 'four-piece', condition: 'new', compression: '90' } }),
        sheet('b', { build: { ball: 'two-piece', condition: 'new' } }),
        sheet('c', { build: { ball: 'two-piece', condition: 'new' } }),
      ],
      { head: 'one 5-iron' },
    );
    const table = told([carry], source);
    expect(
      table.rows
        .slice(3)
        .map(({ name, weight, cells }) => [name, weight, ...cells.map(({ value }) => value)]),
    ).toEqual([
      ['Ball', 'differs', 'four-piece', 'two-piece', 'two-piece'],
      ['Compression', 'plain', '90', 'not recorded', 'not recorded'],
    ]);
    expect(table.notes).toEqual(['The same for all: head and condition.']);
  });

  test('where each came from is marked where it differs', () => {
    const lent: Contender['suppliedBy'] = {
      kind: 'lent',
      by: 'its maker',
      when: null,
      whole: true,
      words: 'lent by its maker',
    };
    const table = told([carry], sourceOf([sheet('a', { suppliedBy: lent }), sheet('b'), sheet('c')]));
    expect(rowOf(table, 'Supplied by')).toMatchObject({
      weight: 'differs',
      cells: [{ value: 'lent by its maker' }, {}, {}],
    });
    expect(rowOf(told([carry]), 'Supplied by')?.weight).toBe('plain');
  });
});
