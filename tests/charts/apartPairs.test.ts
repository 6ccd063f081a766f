import { describe, expect, test } from 'vitest';
import { apartPairs } from '../../src/charts/apartPairs.ts';
import type { Figure } from '../../src/charts/figure.ts';
import { surestFirst } from '../../src/prose/pairAnswer.ts';
import { around, reportOf } from '../findings/reportOf.ts';
import { placedTexts } from './inspectSvg.ts';

const names = ['Alder', 'Birch', 'Cedar', 'Dogwood', 'Elm'];

/** As many heads as there are averages; the same twelve shots round each, turned so that no two rows match. */
const headsAt = (averages: readonly number[]) =>
  reportOf({
    front: {
      contenders: `{${averages.map((_, at) => `${names[at]?.toLowerCase()}: {label: ${names[at]}, supplied_by: our stock, sold_here: new}`).join(', ')}}`,
    },
    shots: {
      'Carry (yd)': Object.fromEntries(
        averages.map((average, at) => {
          const own = around(average, 0.4);
          return [names[at]?.toLowerCase() ?? '', [...own.slice(at), ...own.slice(0, at)]];
        }),
      ),
    },
  });

const carryOf = (report: ReturnType<typeof headsAt>) => {
  const metric = report.findings.metrics.find(({ id }) => id === 'carry');
  if (metric === undefined) throw new Error('no carry');
  return metric;
};

const drawnNames = (figures: readonly Figure[]): readonly string[] => {
  const figure = figures.find(({ id }) => id === 'apart');
  if (figure?.kind !== 'drawn') throw new Error('not drawn');
  return placedTexts(figure.svg.wide).flatMap(({ text }) =>
    names.some((name) => text.startsWith(`${name} over `) || text.startsWith(`${name} and `)) ? [text] : [],
  );
};

describe('the pairs that a chart draws', () => {
  test('up to six are all of them, the surest answer first', () => {
    const metric = carryOf(headsAt([225, 240, 226, 232]));
    expect(apartPairs(metric)).toEqual(surestFirst(metric));
    expect(apartPairs(metric)).toHaveLength(6);
  });

  test('of more, those of the one that leads; the table has the rest', () => {
    const report = headsAt([225, 260, 226, 232, 236]);
    const metric = carryOf(report);
    expect(metric.leading).toEqual(['birch']);
    const drawn = apartPairs(metric);
    expect(drawn).toHaveLength(4);
    for (const { a, b } of drawn) expect([a, b]).toContain('birch');
    const figure = report.figures.find(({ id }) => id === 'apart');
    expect(figure).toMatchObject({ drawn: 4, recorded: 10 });
    expect(figure?.kind === 'drawn' && figure.table.rows).toHaveLength(10);
  });

  test('of two that lead, their own pair as well as those of the better one', () => {
    const metric = carryOf(headsAt([225, 260, 226, 259, 236]));
    expect(new Set(metric.leading)).toEqual(new Set(['birch', 'dogwood']));
    const drawn = apartPairs(metric).map(({ a, b }) => [a, b].toSorted().join(' '));
    expect(drawn.toSorted()).toEqual(['alder birch', 'birch cedar', 'birch dogwood', 'birch elm']);
  });

  test('where nobody is clearly behind, those of the best on average alone', () => {
    const metric = carryOf(headsAt([230, 230.5, 230, 231, 230]));
    expect(metric.leading).toHaveLength(5);
    const drawn = apartPairs(metric);
    expect(drawn).toHaveLength(4);
    for (const { a, b } of drawn) expect([a, b]).toContain('dogwood');
  });
});

test('the one ahead is named first, whichever is listed first; without anyone ahead both are named alike', () => {
  const { figures } = headsAt([225, 240, 225.2]);
  expect(drawnNames(figures)).toEqual(['Birch over Alder', 'Birch over Cedar', 'Cedar and Alder']);
});
