import { describe, expect, test } from 'vitest';
import type { DrawnFigure } from '../../src/charts/figure.ts';
import { reportCharts, type FigureId, type ReportChart } from '../../src/charts/charts.ts';
import type { MetricFindings, PairFindings } from '../../src/findings/findings.ts';
import type { Report } from '../../src/kit/report.ts';
import { sayShort } from '../../src/prose/english/answerWords.ts';
import { pairAnswer, surestFirst } from '../../src/prose/pairAnswer.ts';
import type { PartId } from '../../src/flight/attributionPlan.ts';
import type { MetricId } from '../../src/trade/metrics.ts';
import { drives } from '../findings/drives.ts';
import { around, reportOf } from '../findings/reportOf.ts';
import { drawnMarks } from './drawnMarks.ts';
import { inherited, parseSvg, placedTexts } from './inspectSvg.ts';

/** Metres in a yard (NIST SP 811, appendix B.8): what charts print is worked out here anew from the findings. */
const yard = 0.9144;

/** Metres a second in a mile an hour (the same). */
const mph = 0.44704;

const figureIn = ({ figures }: Report, id: FigureId): DrawnFigure => {
  const figure = figures.find((own) => own.id === id);
  if (figure?.kind !== 'drawn') throw new Error(`${id} is not drawn`);
  return figure;
};

const carryOf = ({ findings }: Report): MetricFindings => {
  const carry = findings.metrics.find(({ id }) => id === 'carry');
  if (carry === undefined) throw new Error('no carry');
  return carry;
};

const numberIn = (cell: string | undefined): number =>
  Number(
    (cell ?? '')
      .replace('−', '-')
      .replace(/,(?=\d{3})/, '')
      .replace(/^almost |^just (?:under|over|above|below) /, ''),
  );

/** One unit of a cell's last digit. */
const unitOf = (cell: string): number => 10 ** -(cell.split('.')[1]?.length ?? 0);

/** A cell holds `truth`: to the nearest last digit, or as a limit rounded away from the middle of its range. */
function expectCell(cell: string | undefined, truth: number, limit?: 'lower' | 'upper'): void {
  const [printed, unit] = [numberIn(cell), unitOf(cell ?? '')];
  const said = `${cell} for ${truth}, ${limit ?? 'nearest'}`;
  const beyond = limit === 'lower' ? truth - printed : printed - truth;
  if (limit === undefined)
    return expect(Math.abs(printed - truth), said).toBeLessThanOrEqual(unit / 2 + 1e-9);
  // "almost 0": nearer to 0 than one step, on whichever side.
  if (printed === 0) return expect(Math.abs(truth), said).toBeLessThan(unit);
  if (/^just/.test(cell ?? '')) return expect(Math.abs(printed - truth), said).toBeLessThan(unit);
  expect(beyond, said).toBeGreaterThanOrEqual(-1e-9);
  expect(beyond, said).toBeLessThan(unit);
}

/** A difference and its limits in yards, counted towards the one ahead. */
function turned(
  gap: { readonly estimate: number | null; readonly ci: readonly [number, number] | null },
  flip: 1 | -1,
) {
  if (gap.estimate === null || gap.ci === null) throw new Error('not judged');
  const [low, high] = flip === 1 ? gap.ci : [-gap.ci[1], -gap.ci[0]];
  return { estimate: (flip * gap.estimate) / yard, low: low / yard, high: high / yard };
}

const flipOf = ({ estimate }: PairFindings): 1 | -1 => ((estimate ?? 0) >= 0 ? 1 : -1);

function expectDifference(cells: readonly string[], truth: ReturnType<typeof turned>): void {
  expectCell(cells[0], truth.estimate);
  expectCell(cells[1], truth.low, 'lower');
  expectCell(cells[2], truth.high, 'upper');
}

/** The row of a table that is about a pair, its names in the order of the one ahead. */
function rowOf({ table }: DrawnFigure, pair: PairFindings, { telling }: Report): readonly string[] {
  const ids = flipOf(pair) === 1 ? [pair.a, pair.b] : [pair.b, pair.a];
  const name = ids.map(telling.nameOf).join(' and ');
  const rows = table.rows.filter(([first]) => first === name);
  expect(rows, name).toHaveLength(1);
  return rows[0] ?? [];
}

// Listed first, Alder is the shortest: every pair with it has to be turned.
const oneGolfer = reportOf({
  shots: {
    'Carry (yd)': {
      alder: around(225),
      birch: around(237).toReversed(),
      cedar: [...around(231).slice(6), ...around(231).slice(0, 6)],
    },
    'Side (yd)': { alder: around(6, 2), birch: around(-2).toReversed(), cedar: around(1) },
  },
  front: {
    contenders:
      '{alder: {label: Alder, supplied_by: our stock, sold_here: new, price: {amount: 300, currency: GBP, on: 2026-04-01}}, ' +
      'birch: {label: Birch, supplied_by: our stock, sold_here: new, price: {amount: 480, currency: GBP, on: 2026-04-01}}, ' +
      'cedar: {label: Cedar, supplied_by: our stock, sold_here: new}}',
    exclusions: '[{contender: cedar, shot: 3, rule: topped, reason: struck on top}]',
  },
});

const golferSpeeds = [86, 108, 97];
const golferGains = [9, 14, -6];
const golferRows = ['slow', 'fast', 'third'].flatMap((golfer, place) =>
  around(220).flatMap((own, at) => [
    `${golfer},alder,${own},${golferSpeeds[place]}`,
    `${golfer},birch,${own + (golferGains[place] ?? 0) + (at % 3)},${golferSpeeds[place]}`,
  ]),
);
const threeGolfers = reportOf({
  csv: ['Golfer,Club,Carry (yd),Club Speed (mph)', ...golferRows, ''].join('\n'),
  front: {
    contenders:
      '{alder: {label: Alder, supplied_by: our stock, sold_here: new}, birch: {label: Birch, supplied_by: our stock, sold_here: new}}',
    hitters:
      '{slow: {role: customer, handicap_band: 16-20, consent: yes}, fast: {role: customer, consent: yes}, third: {role: customer, consent: yes}}',
  },
});

/** Swung, and struck, faster with the one that is listed second. */
const twoDrivers = reportOf({
  csv: drives([
    { name: 'Birch', clubSpeed: 96, smash: 1.42 },
    { name: 'Alder', clubSpeed: 101, smash: 1.42 },
  ]),
  front: {
    contenders:
      '{birch: {label: Birch, supplied_by: our stock, sold_here: new}, alder: {label: Alder, supplied_by: our stock, sold_here: new}}',
  },
});

/** The rows of parts. */
const partRows: Readonly<Record<PartId, string>> = {
  'ball-speed': 'Ball speed',
  'club-speed': 'Club speed',
  smash: 'Smash factor (ball speed for the club speed)',
  'launch-angle': 'Launch angle',
  'spin-rate': 'Spin',
  direction: 'Direction',
};

/** Near where the model carries farthest. */
const threeLaunches = reportOf({
  shots: {
    'Carry (yd)': { alder: around(230, 0.3), birch: around(231, 0.3), cedar: around(232, 0.3) },
    'Ball Speed (mph)': { alder: around(150, 0.1), birch: around(150.3, 0.1), cedar: around(150.6, 0.1) },
    'Launch Angle (deg)': { alder: around(20.4, 0.1), birch: around(21, 0.1), cedar: around(21.7, 0.1) },
    'Spin Rate (rpm)': { alder: around(2080, 9), birch: around(2150, 9), cedar: around(2240, 9) },
    'Launch Direction (deg)': { alder: around(0, 0.1), birch: around(0, 0.1), cedar: around(0, 0.1) },
    'Spin Axis (deg)': { alder: around(0, 0.2), birch: around(0, 0.2), cedar: around(0, 0.2) },
  },
});

/** What each chart prints, held against the findings of its report. */
const held: Readonly<Record<ReportChart, () => void>> = {
  apart() {
    const figure = figureIn(oneGolfer, 'apart');
    const { pairs } = carryOf(oneGolfer);

    test.each(pairs)(
      '$a and $b: estimate, limits and p stand in their own columns, the one ahead first',
      (pair) => {
        const [, ...cells] = rowOf(figure, pair, oneGolfer);
        expectDifference(cells, turned(pair, flipOf(pair)));
        const [, , , p = '', answer] = cells;
        if ((pair.p ?? 1) < 0.001) expect(p).toBe('under 0.001');
        else expect(Number(p) / (pair.p ?? NaN)).toBeCloseTo(1, 1);
        expect(answer).toBe(sayShort(pairAnswer(pair, carryOf(oneGolfer), oneGolfer.findings.design)));
      },
    );

    test('the heads say which column is which, and what p allows for', () => {
      expect(figure.table.head).toEqual([
        'Pair',
        'Best estimate (yd)',
        'Likely range, from',
        'to',
        'p',
        'Answer',
      ]);
      expect(figure.table.caption).toBe(
        'Differences in average carry (yd). Positive: the first-named farther. p is held against 0.05 and allows for all three pairs.',
      );
    });

    test('a p of next to nothing or nearly one is never printed as 0 or 1', () => {
      for (const { table } of [oneGolfer, threeGolfers].map((report) => figureIn(report, 'apart')))
        for (const row of table.rows) expect(row[4]).toMatch(/^(?:under 0\.001|over 0\.99|0\.0*[1-9]\d)$/);
    });

    test('in the picture each number stands under its own end of its own bar, and each answer over its own', () => {
      const svg = figure.svg.wide;
      const rings = [...parseSvg(svg).querySelectorAll('circle[r="7"]')].map((ring) => ({
        x: Number(ring.getAttribute('cx')),
        y: Number(ring.getAttribute('cy')),
      }));
      const bars = [...parseSvg(svg).querySelectorAll('path')]
        .filter(
          (path) => inherited(path, 'stroke') === 'var(--ink)' && inherited(path, 'stroke-width') === '2.5',
        )
        .map((path) => [...(path.getAttribute('d') ?? '').matchAll(/-?[\d.]+/g)].map(Number))
        // Samples of the key are 26 px long.
        .filter(([from = 0, , to = 0]) => to - from !== 26);
      expect([rings.length, bars.length]).toEqual([pairs.length, pairs.length]);
      const texts = placedTexts(svg);
      for (const [index, pair] of surestFirst(carryOf(oneGolfer)).entries()) {
        const truth = turned(pair, flipOf(pair));
        const [ring, bar] = [rings[index], bars[index]];
        if (ring === undefined || bar === undefined) throw new Error('no row');
        const under = texts.filter(
          ({ y, text }) => y > ring.y + 14 && y < ring.y + 46 && /^[\d.]+$/.test(text),
        );
        const at = (x: number): number | null => {
          const near = under.find(({ left, right }) => Math.abs((left + right) / 2 - x) < 1);
          return near === undefined ? null : Number(near.text);
        };
        // What the first-named has more lies right of 0.
        const [lowX = NaN, highX = NaN] = [bar[0], bar[2]].map(Number).toSorted((x, y) => x - y);
        expect(Math.abs((at(ring.x) ?? NaN) - truth.estimate)).toBeLessThanOrEqual(0.5);
        for (const [x, limit] of [
          [lowX, truth.low],
          [highX, truth.high],
        ] as const) {
          const printed = at(x);
          if (printed !== null) expect(Math.abs(printed - Math.abs(limit))).toBeLessThan(1);
        }
        expect(at(highX)).not.toBeNull();
        const answer = sayShort(pairAnswer(pair, carryOf(oneGolfer), oneGolfer.findings.design));
        const answers = texts.filter(({ text }) => text === answer);
        const above = rings[index - 1]?.y ?? 0;
        expect(
          answers.some(({ y }) => y < ring.y && y > above),
          answer,
        ).toBe(true);
      }
    });
  },

  shots() {
    test('All the shots: every figure of a contender in its own column', () => {
      const { table } = figureIn(oneGolfer, 'shots');
      for (const { id, n, mean, ci, sd, median, min, max } of carryOf(oneGolfer).byContender) {
        const cells = table.rows.find(([name]) => name === oneGolfer.telling.nameOf(id)) ?? [];
        expect(cells.slice(1, 3)).toEqual([String(n), id === 'cedar' ? '1' : '0']);
        for (const [place, value] of [mean, ci?.[0], ci?.[1], sd, median, min, max].entries())
          expectCell(cells[3 + place], (value ?? NaN) / yard);
      }
      expect(table.head).toEqual([
        'Head',
        'Shots',
        'Left out',
        'Average',
        'Likely range, from',
        'to',
        'Spread (sd)',
        'Median',
        'Lowest',
        'Highest',
      ]);
    });

    describe('of several golfers', () => {
      const labelsOf = (figure: DrawnFigure): readonly string[] =>
        placedTexts(figure.svg.wide).map(({ text }) => text);

      test('stand in one strip a golfer where they fit, with the average of their own', () => {
        const figure = figureIn(threeGolfers, 'shots');
        const strips = ['86 mph, handicap 16-20', '97 mph', '108 mph'];
        const names = ['Alder', 'Birch'].flatMap((name) => strips.map((golfer) => `${name}, ${golfer}`));
        expect(labelsOf(figure).filter((text) => names.includes(text))).toEqual(names);
        const [, , , , slow] = figure.table.rows
          .filter(([name]) => names.includes(name ?? ''))
          .map(([, , , mean]) => mean);
        expect(figure.table.rows.map(([name]) => name)).toEqual(['Alder', 'Birch', ...names]);
        const own = threeGolfers.session.shots
          .filter(({ contender, hitter }) => contender === 'birch' && hitter === 'third')
          .map(({ values }) => (values.carry ?? NaN) / yard);
        expectCell(slow, own.reduce((sum, value) => sum + value, 0) / own.length);
        expect(labelsOf(figure).some((text) => text.startsWith(`${slow}, likely `))).toBe(true);
        expect(figure.finding).toBe('All 72 shots of three golfers');
        expect(figure.description).toContain(`, average ${slow}, likely `);
      });

      test('stand together where they do not fit, and the chart says so', () => {
        const golfers = Array.from({ length: 5 }, (_, at) => `g${at}`);
        const report = reportOf({
          csv: [
            'Golfer,Club,Carry (yd)',
            ...golfers.flatMap((golfer, place) =>
              around(200 + 9 * place).flatMap((own) => [
                `${golfer},alder,${own}`,
                `${golfer},birch,${own + 4}`,
              ]),
            ),
            '',
          ].join('\n'),
          front: {
            contenders:
              '{alder: {label: Alder, supplied_by: our stock, sold_here: new}, birch: {label: Birch, supplied_by: our stock, sold_here: new}}',
            hitters: `{${golfers.map((id) => `${id}: {role: customer, consent: yes}`).join(', ')}}`,
          },
        });
        const figure = figureIn(report, 'shots');
        expect(labelsOf(figure)).toContain('average of all five golfers, not told apart here');
        expect(figure.table.rows).toHaveLength(2 + 2 * 5);
        expect(figure.table.rows.at(-1)?.[0]).toBe('Birch, golfer g4');
      });
    });
  },

  landing() {
    test('Where they landed: left, right and within are not exchanged, under the panels nor in the table', () => {
      const figure = figureIn(oneGolfer, 'landing');
      for (const own of oneGolfer.findings.landing?.byContender ?? []) {
        const name = oneGolfer.telling.nameOf(own.id);
        const cells = figure.table.rows.find(([first]) => first === name) ?? [];
        expectCell(cells[2], (own.meanCarry ?? NaN) / yard);
        expectCell(cells[3], (own.meanSide ?? NaN) / yard);
        expect(cells.slice(4, 7)).toEqual([own.left, own.right, own.within].map(String));
        expect(figure.description).toMatch(
          new RegExp(
            `${name}: [^.]*${own.left} shots? left, ${own.within} of ${own.n} within 15 yd, ${own.right} shots? right`,
          ),
        );
      }
      expect(figure.table.head.slice(2, 7)).toEqual([
        'Average carry',
        'Average side, right is plus',
        'Left',
        'Right',
        'Within 15 yd of the line',
      ]);
    });
  },

  delivery() {
    const figure = figureIn(twoDrivers, 'delivery');

    test('a difference and what it is worth stand in this order, both towards the one whom it would favour', () => {
      const swing = twoDrivers.findings.swing;
      const pair = swing?.measures.find(({ id }) => id === 'club_speed')?.pairs[0];
      if (pair?.worth == null) throw new Error('club speed has no price');
      const [row = []] = figure.table.rows.filter(([name]) => name?.startsWith('Club speed'));
      // Alder was swung faster, and Birch is listed first.
      expect([pair.a, pair.b]).toEqual(['birch', 'alder']);
      const [, faster, slower, first, worthLow, worthHigh, favoured] =
        /^([\d.]+) to ([\d.]+) mph faster with (\w+), worth ([\d.]+) to ([\d.]+) yards for (\w+)\.$/.exec(
          row[1] ?? '',
        ) ?? [];
      expect([first, favoured]).toEqual(['Alder', 'Alder']);
      expectCell(faster, -pair.ci[1] / mph, 'lower');
      expectCell(slower, -pair.ci[0] / mph, 'upper');
      expectCell(worthLow, -pair.worth.ci[1] / yard, 'lower');
      expectCell(worthHigh, -pair.worth.ci[0] / yard, 'upper');
      expect(row[2]).toBe('Club speed was not the same with Birch and Alder.');
    });

    test('the heads say which column is which', () => {
      expect(figure.table.head).toEqual(['Measure and pair', 'Difference and worth', 'Answer']);
    });
  },

  order() {
    const figure = figureIn(oneGolfer, 'order');

    test('every shot in its place, with its own value', () => {
      for (const [index, { order, contender, values, excluded }] of oneGolfer.session.shots.entries()) {
        const [number, name, value, leftOut] = figure.table.rows[index] ?? [];
        expect([number, name]).toEqual([String(order), oneGolfer.telling.nameOf(contender)]);
        expectCell(value, (values.carry ?? NaN) / yard);
        expect(leftOut).toBe(excluded === null ? 'no' : 'yes');
      }
    });

    test("in the picture each trend runs through the middle of its own contender's counted shots", () => {
      const svg = figure.svg.wide;
      for (const [contender, colour] of ['umber', 'bluebell', 'pine'].entries()) {
        // The first mark stands in the key.
        const own = drawnMarks(svg, [contender]).slice(1);
        const middle = (of: (mark: { x: number; y: number }) => number): number =>
          own.reduce((sum, mark) => sum + of(mark), 0) / own.length;
        const [line] = [...parseSvg(svg).querySelectorAll('path')]
          .filter(
            (path) =>
              inherited(path, 'stroke') === `var(--${colour})` && inherited(path, 'stroke-width') === '2',
          )
          .map((path) => [...(path.getAttribute('d') ?? '').matchAll(/-?[\d.]+/g)].map(Number));
        const [x1 = NaN, y1 = NaN, x2 = NaN, y2 = NaN] = line ?? [];
        const at = y1 + ((middle(({ x }) => x) - x1) / (x2 - x1)) * (y2 - y1);
        expect(Math.abs(at - middle(({ y }) => y)), colour).toBeLessThan(1);
      }
    });

    test("each contender's trend is its own, and is said of it", () => {
      for (const { id, slope, ci } of carryOf(oneGolfer).trends) {
        const name = oneGolfer.telling.nameOf(id);
        const unclear = ci[0] <= 0 && ci[1] >= 0;
        const told =
          figure.description.split(/(?<=shots[^.]*)\. /).find((words) => words.includes(`${name}: `)) ?? '';
        expect(told).toContain(unclear ? 'no clear trend in carry' : slope > 0 ? 'carry rose' : 'carry fell');
        const tenShots = Math.max(...ci.map(Math.abs)) * 10;
        if (unclear) expect(told).toContain(`give or take ${Math.round(tenShots / yard)} yard`);
      }
      expect(carryOf(oneGolfer).trends).toHaveLength(3);
    });
  },

  yards() {
    const { about, table } = figureIn(twoDrivers, 'yards');
    const [pair] = carryOf(twoDrivers).pairs;
    const [split] = twoDrivers.findings.yards;
    if (pair === undefined || split?.attribution.state !== 'attributed') throw new Error('no account');
    const { parts, unexplained } = split.attribution;
    const wordsOf = (name: string): string => table.rows.find(([first]) => first === name)?.[1] ?? '';

    test('the whole difference, counted towards the one ahead', () => {
      expect(about).toMatchObject({ of: 'pair', a: 'birch', b: 'alder' });
      const { estimate, low, high } = turned(pair, flipOf(pair));
      const [, size, from, to] =
        /^about ([\d.]+) yards, likely ([\d.]+) to ([\d.]+)$/.exec(wordsOf('Measured difference')) ?? [];
      expectCell(size, estimate);
      expectCell(from, low, 'lower');
      expectCell(to, high, 'upper');
    });

    test.each([
      ...parts.map((part) => ({ name: partRows[part.id], part })),
      { name: 'Not explained', part: unexplained },
    ])(
      '$name: its own size and range, for whom it is, and no size where it is too uncertain',
      ({ name, part }) => {
        const words = wordsOf(name);
        const flip = flipOf(pair);
        const [low, high] = (flip === 1 ? part.range : [-part.range[1], -part.range[0]]).map(
          (si) => si / yard,
        );
        if (low === undefined || high === undefined) throw new Error('no range');
        if (!part.finding) {
          expect(words).not.toContain('about');
          const [, fromSize, fromName, toSize, toName] =
            /anything from ([\d.]+)(?: yards?)? for (\w+) to ([\d.]+) for (\w+)$/.exec(
              words.replaceAll('almost nothing', '0'),
            ) ?? [];
          expect(new Set([fromName, toName])).toEqual(new Set(['Alder', 'Birch']));
          const ofAlder = fromName === 'Alder' ? fromSize : toSize;
          const ofBirch = fromName === 'Alder' ? toSize : fromSize;
          expectCell(ofAlder, high, 'upper');
          expectCell(ofBirch, -low, 'upper');
          return;
        }
        const towardsAlder = (flip * part.value) / yard;
        const [, size, favoured, from, to] =
          /^about ([\d.]+) yards? for (\w+), likely ([\d.]+) to ([\d.]+)$/.exec(words) ?? [];
        expect(favoured).toBe(towardsAlder > 0 ? 'Alder' : 'Birch');
        expectCell(size, Math.abs(towardsAlder));
        expectCell(from, towardsAlder > 0 ? low : -high, 'lower');
        expectCell(to, towardsAlder > 0 ? high : -low, 'upper');
      },
    );
  },

  'launch-and-spin'() {
    test('average launch and spin of each in their own columns', () => {
      const { table } = figureIn(threeLaunches, 'launch-and-spin');
      const meanOf = (metric: MetricId, contender: string): number =>
        threeLaunches.findings.metrics
          .find(({ id }) => id === metric)
          ?.byContender.find(({ id }) => id === contender)?.mean ?? NaN;
      for (const id of ['alder', 'birch', 'cedar']) {
        const cells = table.rows.find(([name]) => name === threeLaunches.telling.nameOf(id)) ?? [];
        expectCell(cells[1], meanOf('launch_angle', id));
        expectCell(cells[2], meanOf('spin_rate', id));
      }
      expect(table.head).toEqual(['Head', 'Launch angle (°)', 'Spin rate (rpm)']);
    });
  },

  hitters() {
    const figure = figureIn(threeGolfers, 'hitters');
    const [pair] = carryOf(threeGolfers).pairs;
    if (pair === undefined) throw new Error('no pair');

    test('golfers by club speed, each with its own difference, counted towards the one ahead over all', () => {
      const flip = flipOf(pair);
      const order = ['slow', 'third', 'fast'];
      expect(threeGolfers.findings.design.golfers.map(({ id }) => id)).toEqual(order);
      expect(figure.table.rows.map(([name]) => name)).toEqual([
        '86 mph, handicap 16-20',
        '97 mph',
        '108 mph',
        'All three',
      ]);
      for (const [index, id] of order.entries()) {
        const own = pair.byHitter.find(({ hitter }) => hitter === id);
        if (own === undefined) throw new Error(`no ${id}`);
        expectDifference(figure.table.rows[index]?.slice(1) ?? [], turned(own, flip));
      }
      expectDifference(figure.table.rows[3]?.slice(1) ?? [], turned(pair, flip));
      expect(figure.table.caption).toContain('Positive: Birch farther.');
    });
  },

  luck() {
    test('Chance alone: what chance does and what was seen in their own rows, of the pair farthest apart', () => {
      const figure = figureIn(oneGolfer, 'luck');
      const carry = carryOf(oneGolfer);
      const [, , seen] = figure.table.rows;
      for (const [row, truth] of [
        [0, carry.luck?.average],
        [1, carry.luck?.upTo],
      ] as const)
        expect(Math.abs(numberIn(figure.table.rows[row]?.[1]) - (truth ?? NaN) / yard)).toBeLessThanOrEqual(
          0.5,
        );
      const most = Math.max(...carry.pairs.map(({ estimate }) => Math.abs(estimate ?? 0)));
      expect(numberIn(seen?.[1])).toBe(Math.round(most / yard));
      expect(figure.about).toMatchObject({ of: 'pair', metric: 'carry', a: 'alder', b: 'birch' });
      expect(seen?.[0]).toBe('Seen here, Alder and Birch');
    });
  },

  spread() {
    test('Which is more consistent: spread and its limits in their own columns', () => {
      const { rows } = figureIn(oneGolfer, 'spread').table;
      for (const { id, sd, sdCi } of carryOf(oneGolfer).byContender) {
        const cells =
          rows.find(([name, of]) => name === oneGolfer.telling.nameOf(id) && of === 'carry') ?? [];
        for (const [place, value] of [sd, sdCi?.[0], sdCi?.[1]].entries())
          expect(Math.abs(numberIn(cells[2 + place]) - (value ?? NaN) / yard)).toBeLessThanOrEqual(1);
      }
    });
  },

  'with-and-without'() {
    test('With and without: all shots and those kept in their own columns', () => {
      const figure = figureIn(oneGolfer, 'with-and-without');
      for (const pair of carryOf(oneGolfer).pairs.filter(({ withLeftOut }) => withLeftOut !== null)) {
        if (pair.withLeftOut === null) throw new Error('none left out');
        const [, ...cells] = rowOf(figure, pair, oneGolfer);
        expectDifference(cells.slice(0, 3), turned(pair.withLeftOut, flipOf(pair)));
        expectDifference(cells.slice(3, 6), turned(pair, flipOf(pair)));
      }
      expect(figure.table.head[1]).toContain('All shots');
      expect(figure.table.head[4]).toContain('Without those left out');
    });
  },
};

test('the numbers of every chart are held against the findings here', () => {
  expect(Object.keys(held).toSorted()).toEqual(reportCharts.toSorted());
});

describe.each(Object.entries(held))('%s', (_, tests) => tests());
