import { expect, test } from 'vitest';
import { contenderMark } from '../../src/charts/contenderMarks.ts';
import { drawnShots, drawnWords } from '../../src/charts/drawnShots.ts';
import { makeFigures } from '../../src/charts/makeFigures.ts';
import { mostWeighed, truePlaces } from '../../src/charts/truePlaces.ts';
import { seededRandom } from '../../src/stats/random.ts';
import { madeReport } from '../findings/reportOf.ts';
import { sessionOf, yd } from '../findings/sessions.ts';

const sessionOfMany = (count: number) =>
  sessionOf(
    Array.from({ length: count }, (_, at) => ({
      contender: at % 2 === 0 ? 'a' : 'b',
      values: { carry: yd(200) },
    })),
  );

test('up to 2,000 shots all are drawn and nothing is said', () => {
  const session = sessionOfMany(2000);
  expect(drawnShots(session)).toBe(session.shots);
  expect(drawnWords(session)).toEqual([]);
});

test('of more, 2,000 are drawn and the caption says so', () => {
  const session = sessionOfMany(2001);
  expect(drawnShots(session)).toHaveLength(2000);
  expect(drawnWords(session)).toEqual([
    'Of 2,001 shots 2,000 are drawn, spread evenly over the session; the numbers are of all.',
  ]);
});

test('a report of 5,000 shots has charts of 2,000, each with what it leaves out', () => {
  const random = seededRandom('many drawn');
  const readings = (mean: number): readonly number[] =>
    Array.from({ length: 2500 }, () => mean + 5 * random.normal());
  const { report } = madeReport({
    shots: { 'Carry (yd)': { alder: readings(237), birch: readings(231) } },
    front: {
      contenders:
        '{alder: {label: Alder, supplied_by: our stock, sold_here: new}, birch: {label: Birch, supplied_by: our stock, sold_here: new}}',
    },
  });
  const figures = report === null ? [] : makeFigures(report.telling, report.session, report.source.front);
  for (const id of ['shots', 'order']) {
    const figure = figures.find((one) => one.id === id);
    if (figure?.kind !== 'drawn') expect.fail(`${id} is not drawn`);
    expect([figure.drawn, figure.recorded]).toEqual([2000, 2000]);
    expect(figure.found.join(' ')).toContain('Of 5,000 shots 2,000 are drawn');
  }
  const order = figures.find(({ id }) => id === 'order');
  expect(order?.kind === 'drawn' && order.table.rows).toHaveLength(2000);
}, 120_000);

test('marks at their true places: beyond 1,000 all have the smallest radius', () => {
  const spots = Array.from({ length: mostWeighed + 1 }, (_, at) => ({
    x: (at * 37) % 300,
    y: (at * 53) % 200,
    mark: contenderMark(0),
  }));
  const radii = (count: number) =>
    new Set(
      truePlaces([spots.slice(0, count)])
        .flat()
        .map(({ radius }) => radius),
    );
  expect(radii(mostWeighed + 1)).toEqual(new Set([2.2]));
  expect(radii(3)).toEqual(new Set([4.5]));
});
