import { describe, expect, test } from 'vitest';
import type { DrawnFigure } from '../../src/charts/figure.ts';
import type { Report } from '../../src/kit/report.ts';
import { disclosure } from '../../src/prose/disclosure.ts';
import { around, csvOf, reportOf, threeHeads } from '../findings/reportOf.ts';
import { answerSentences, chanceSentence, reachSentences } from './said.ts';
import { metricOf, pairOf, tellingFor, type Told } from './tellings.ts';

const figureOf = ({ figures }: Report, id: string): DrawnFigure => {
  const figure = figures.find((own) => own.id === id);
  if (figure?.kind !== 'drawn') throw new Error(`no ${id}`);
  return figure;
};

describe('what a page says of one thing agrees with what it says of another', () => {
  test('the shots that were hit, where the counts differ', () => {
    const uneven = metricOf({ metric: 'carry', verdict: 'size-unsure', shots: [4, 11] });
    expect(reachSentences(uneven, tellingFor([uneven])).join(' ')).toContain('With 4 to 11 shots each, ');
    const even = metricOf({ metric: 'carry', verdict: 'size-unsure' });
    expect(reachSentences(even, tellingFor([even])).join(' ')).toContain('With 12 shots each, ');
  });

  test('chance says of which measure', () => {
    const smash = metricOf({ metric: 'smash', verdict: 'level' });
    expect(chanceSentence(smash, tellingFor([smash]))).toMatch(
      /^Two identical heads would typically come out about .* apart in smash factor by chance, and more than /,
    );
  });

  test('a drift that shows is not followed by the words for one that does not', () => {
    const caution = 'Seeing no drift does not prove there was none.';
    expect(figureOf(reportOf({}), 'order').found).toContain(caution);
    const rising = (average: number): readonly number[] =>
      around(average, 0.3).map((own, turn) => own + 2 * turn);
    const drifting = reportOf({
      shots: { 'Carry (yd)': { alder: rising(220), birch: rising(221), cedar: rising(219) } },
    });
    const { found, shows } = figureOf(drifting, 'order');
    expect(shows).toMatch(
      /^Alder: carry rose by about \d+ yards in ten shots, likely \d+ to \d+\. Birch: carry rose/,
    );
    expect(found).not.toContain(caution);
  });

  test('two golfers together are both, three are all three', () => {
    const rows = (golfers: readonly string[]): string =>
      [
        'Golfer,Club,Carry (yd)',
        ...golfers.flatMap((golfer) =>
          around(220).flatMap((own) => [
            `${golfer},alder,${own}`,
            `${golfer},birch,${own + 9}`,
            `${golfer},cedar,${own}`,
          ]),
        ),
        '',
      ].join('\n');
    const hitters = (golfers: readonly string[]): string =>
      `{${golfers.map((golfer) => `${golfer}: {role: customer, consent: yes}`).join(', ')}}`;
    const of = (golfers: readonly string[]): string =>
      figureOf(reportOf({ csv: rows(golfers), front: { hitters: hitters(golfers) } }), 'hitters').description;
    expect(of(['one', 'two'])).toContain('Both: ');
    expect(of(['one', 'two', 'three'])).toContain('All three: ');
  });

  test('what every sheet answers is not said to be missing from what was held', () => {
    const built = (loft: string): string =>
      `supplied_by: us, sold_here: new, build: {loft: ${loft}, length: 45 in}`;
    const contenders = (last: string): string =>
      `{alder: {label: Alder, ${built('9°')}}, birch: {label: Birch, ${built('10°')}}, cedar: {label: Cedar, ${last}}}`;
    const missing = (last: string): readonly string[] => {
      const report = reportOf({ csv: csvOf(threeHeads ?? {}), front: { contenders: contenders(last) } });
      const held = disclosure({ ...report, version: '0' }).find(({ title }) =>
        title.startsWith('What was the same'),
      );
      return held?.items.filter(({ value }) => value === null).map(({ label }) => label) ?? [];
    };
    const all = missing(built('11°'));
    expect(all).toContain('Grip');
    expect(all).not.toContain('Stated loft');
    expect(all).not.toContain('Length');
    expect(missing('supplied_by: us, sold_here: new, build: {length: 45 in}')).toContain('Stated loft');
  });

  test('a cause that leaves several gaps open is given once', () => {
    const told: Told = {
      metric: 'carry',
      verdict: 'size-unsure',
      open: true,
      overlays: ['order-few-visits'],
    };
    const metric = metricOf(told);
    const three = {
      ...metric,
      byContender: ['a', 'b', 'c'].flatMap((id) =>
        metric.byContender.slice(0, 1).map((own) => ({ ...own, id })),
      ),
      pairs: [
        pairOf(told),
        pairOf({ ...told, pair: { a: 'a', b: 'c' } }),
        pairOf({ ...told, verdict: 'level', pair: { a: 'b', b: 'c', ahead: 'b' } }),
      ],
    };
    expect(answerSentences(three, tellingFor([three]))).toEqual([
      'Alder went farther than Birch and Cedar, but each was hit in only a few spells, so we cannot say that it was the head.',
      'We saw no difference in carry between Birch and Cedar, though so few spells could hide one.',
    ]);
  });

  test('a head that was not judged says so once in the chart, and in its table for every pair', () => {
    const short = reportOf({
      shots: {
        'Carry (yd)': { alder: around(237), birch: around(231).toReversed(), cedar: around(225).slice(0, 4) },
      },
    });
    const { svg, description, table, drawn, recorded } = figureOf(short, 'apart');
    expect([drawn, recorded]).toEqual([3, 3]);
    const sentence = 'We did not judge Cedar: four shots are too few.';
    const times = (text: string): number => text.split(sentence).length - 1;
    expect(times(description)).toBe(1);
    expect(description).not.toContain('No figure');
    expect(times(svg.wide)).toBe(1);
    expect(table.rows.filter((row) => row.includes(sentence))).toHaveLength(2);
  });
});
