import { describe, expect, test } from 'vitest';
import { charts, pageOf, reportCharts } from '../../src/charts/charts.ts';
import { metrics } from '../../src/trade/metrics.ts';
import { around, reportOf } from '../findings/reportOf.ts';

/** Two main measures, one shot left out. */
const report = reportOf({
  shots: {
    'Carry (yd)': { alder: around(225), birch: around(237).toReversed(), cedar: around(231) },
    'Ball Speed (mph)': {
      alder: around(140, 0.3),
      birch: around(144, 0.3).toReversed(),
      cedar: around(142, 0.3),
    },
    'Side (yd)': { alder: around(6, 2), birch: around(-2).toReversed(), cedar: around(1) },
  },
  front: {
    primary: '[carry, ball_speed]',
    matters: '{carry: 5 yd, ball_speed: 2 mph}',
    exclusions: '[{contender: cedar, shot: 3, rule: topped, reason: struck on top}]',
  },
});

describe('figures of a report with two main measures', () => {
  const { figures } = report;

  test('every chart that there is is drawn or says why not, under an id of its own', () => {
    expect(new Set(figures.map(({ chart }) => chart))).toEqual(new Set(reportCharts));
    expect(new Set(figures.map(({ id }) => id)).size).toBe(figures.length);
  });

  test('a chart about one measure stands once for each, with it in id, question, subject and about', () => {
    for (const chart of ['apart', 'shots', 'order', 'luck', 'with-and-without'] as const) {
      const own = figures.filter((figure) => figure.chart === chart);
      expect(own.map(({ id }) => id)).toEqual([chart, `${chart}-ball-speed`]);
      expect(own.map(({ about }) => (about.of === 'report' ? null : about.metric))).toEqual([
        'carry',
        'ball_speed',
      ]);
      for (const [index, figure] of own.entries()) {
        const name = index === 0 ? metrics.carry.name : metrics.ball_speed.name;
        expect(figure.question.toLowerCase()).toContain(name);
        expect(figure.kind === 'drawn' && figure.subject.toLowerCase()).toContain(name);
      }
    }
  });

  test('what is missing for the same reason in both measures is said once', () => {
    const own = figures.filter((figure) => figure.chart === 'hitters');
    expect(own).toHaveLength(1);
    expect(own[0]?.kind).toBe('absent');
  });

  test('the name of every picture says what was compared', () => {
    for (const figure of figures) {
      if (figure.kind !== 'drawn') continue;
      const named = ['Alder', 'Birch', 'Cedar'].filter((name) => figure.subject.includes(name));
      expect(named.length, figure.subject).toBeGreaterThanOrEqual(2);
      expect(figure.svg.wide).toContain(figure.subject);
      expect(figure.svg.narrow).toContain(figure.subject);
    }
  });
});

test('a report with one main measure names it in no question', () => {
  const { figures } = reportOf({});
  expect(figures.find(({ id }) => id === 'apart')?.question).toBe(charts.apart.question);
});

test('a report shows the answer and the shots; what else was looked at stands with its details', () => {
  const on = (page: string): readonly string[] => reportCharts.filter((kind) => pageOf(kind) === page);
  expect(on('report')).toEqual(['apart', 'shots', 'landing']);
  expect([...on('report'), ...on('details')].toSorted()).toEqual([...reportCharts].toSorted());
  expect(pageOf('meetings')).toBe('pair');
});
