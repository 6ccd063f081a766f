import { describe, expect, test } from 'vitest';
import type { Shot } from '../../src/intake/session.ts';
import { differenceTable, everyShot } from '../../src/prose/english/allNumbers.ts';
import { toCanonical } from '../../src/trade/units.ts';
import { metricOf, tellingFor } from './tellings.ts';

const yd = (yards: number): number => toCanonical(yards, 'yd');
const carry = metricOf(
  {
    metric: 'carry',
    verdict: 'clear',
    turned: true,
    pair: { estimate: yd(-12), ci: [yd(-15), yd(-9)], p: 0.00031 },
  },
  { resolution: yd(0.1) },
);

describe('differences with p', () => {
  test('are counted towards the one ahead, with the level that p is held against', () => {
    expect(differenceTable(carry, tellingFor([carry]))).toEqual({
      caption:
        'Differences in average carry (yd). Positive: the first-named farther. p is held against 0.05.',
      head: ['Pair', 'Best estimate (yd)', 'Likely range, from', 'to', 'p', 'Answer'],
      rows: [['Birch and Alder', '12', '9', '15', 'under 0.001', 'Clear difference']],
    });
  });

  test('say for how many pairs p allows', () => {
    const three = {
      ...carry,
      judgedTogether: 3,
      pairs: carry.pairs.map((pair) => ({ ...pair, level: 0.975 })),
    };
    expect(differenceTable(three, tellingFor([three])).caption).toContain(
      'p is held against 0.025 and allows for all three pairs.',
    );
  });

  test('of pairs that were not judged say why', () => {
    const few = metricOf({ metric: 'carry', verdict: 'not-judged', shots: [12, 4] });
    expect(differenceTable(few, tellingFor([few])).rows).toEqual([
      ['Alder and Birch', '–', '–', '–', '–', 'We did not judge Birch: four shots are too few.'],
    ]);
  });
});

describe('every shot', () => {
  const shot = (order: number, rest: Partial<Shot>): Shot => ({
    contender: 'a',
    hitter: 'one',
    round: null,
    order,
    shotNo: order,
    time: null,
    values: { carry: yd(150.3) },
    excluded: null,
    place: { file: 'shots.csv', line: order + 1 },
    ...rest,
  });
  const shots = [
    shot(1, {}),
    shot(2, { contender: 'b', values: { carry: null } }),
    shot(3, { excluded: { rule: 'misread', reason: 'no ball seen' } }),
  ];

  test('has each reading as the file has it, a dash where there is none, and why it was left out', () => {
    expect(everyShot({ shots }, tellingFor([carry]))).toEqual({
      caption: 'Every shot in the order it was hit',
      head: ['Shot', 'Head', 'Carry (yd)', 'Left out'],
      rows: [
        ['1', 'Alder', '150.3', 'no'],
        ['2', 'Birch', '–', 'no'],
        ['3', 'Alder', '150.3', 'misread: no ball seen'],
      ],
    });
  });

  test('names the golfer where several hit', () => {
    const telling = tellingFor([carry], { design: { hitters: 2 } });
    const { head, rows } = everyShot({ shots }, telling);
    expect(head.slice(0, 3)).toEqual(['Shot', 'Golfer', 'Head']);
    expect(rows[0]?.slice(0, 3)).toEqual(['1', 'golfer one', 'Alder']);
  });
});
