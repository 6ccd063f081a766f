import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { hittersFigure } from '../../src/charts/hittersFigure.ts';
import type { HitterGap, PairFindings } from '../../src/findings/findings.ts';
import {
  golferWords,
  hittersApart,
  hitterSentences,
  hittersMeaning,
  newHitterSentence,
  whoGainedSentence,
} from '../../src/prose/hitterSentences.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { toCanonical } from '../../src/trade/units.ts';
import { around, reportOf } from '../findings/reportOf.ts';

const yd = (yards: number): number => toCanonical(yards, 'yd');

/** Twelve turns each; the golfers in the order of their averages with alder and birch, yards. */
function severalGolfers(averages: readonly (readonly [alder: number, birch: number])[]) {
  const rows = averages.flatMap(([alder, birch], golfer) =>
    around(0).flatMap((own, turn) => {
      const other = around(0).toReversed()[turn] ?? 0;
      return [
        `${golfer + 1},alder,${(alder + own).toFixed(1)}`,
        `${golfer + 1},birch,${(birch + other).toFixed(1)}`,
      ];
    }),
  );
  const hitters = averages.map((_, golfer) => `'${golfer + 1}': {role: customer, consent: yes}`).join(', ');
  return reportOf({
    csv: ['Golfer,Club,Carry (yd)', ...rows, ''].join('\n'),
    front: {
      hitters: `{${hitters}}`,
      contenders:
        '{alder: {label: Alder, supplied_by: us, sold_here: new}, birch: {label: Birch, supplied_by: us, sold_here: new}}',
    },
  });
}

function firstPair({ findings, telling }: ReturnType<typeof reportOf>) {
  const [metric] = findings.metrics;
  const [pair] = metric?.pairs ?? [];
  if (metric === undefined || pair === undefined) throw new Error('no pair');
  return { metric, pair, telling };
}

describe('two to five golfers, each by himself', () => {
  test('side by side, in fixed words, and no word about others', () => {
    const { metric, pair, telling } = firstPair(
      severalGolfers([
        [240, 225],
        [231, 230],
        [220, 205],
      ]),
    );
    expect(hitterSentences(pair, metric, telling)).toEqual([
      'Golfer 1: about 15 yards farther with Alder than with Birch; 11 to 19 would fit.',
      'Golfer 2: cannot tell; 3 yards farther with Birch to 5 yards farther with Alder would fit.',
      'Golfer 3: about 15 yards farther with Alder than with Birch; 11 to 19 would fit.',
      'Farther with Alder for golfer 1 and golfer 3, but not for golfer 2: their gaps surely differ.',
    ]);
    expect(golferWords([metric], telling)).toEqual({
      open: hitterSentences(pair, metric, telling),
      folded: [],
    });
    expect(hittersMeaning(telling)).toBe(
      'Three golfers hit, each counted alike: the answer is about them, not about other golfers.',
    );
  });

  test('clear for one and not for the other is no difference between them', () => {
    const { metric, pair, telling } = firstPair(
      severalGolfers([
        [236, 230],
        [233, 230],
      ]),
    );
    const lines = hitterSentences(pair, metric, telling);
    expect(lines[0]).toMatch(
      /^Golfer 1: about 6 yards farther with Alder than with Birch; \d+ to \d+ would fit\.$/,
    );
    expect(lines[1]).toMatch(/^Golfer 2: cannot tell; /);
    expect(lines.some((line) => /differ/.test(line))).toBe(false);
    expect(hittersApart(pair, metric, telling)).toBeNull();
  });

  test('opposite ways', () => {
    const { metric, pair, telling } = firstPair(
      severalGolfers([
        [230, 245],
        [245, 230],
      ]),
    );
    expect(hittersApart(pair, metric, telling)).toBe(
      'Farther with Alder for golfer 2, but not for golfer 1: their gaps surely differ.',
    );
  });

  test('many pairs: in the open only whose gaps surely differ and, once, for whom it holds', () => {
    const { findings, telling } = reportOf({
      csv: [
        'Golfer,Club,Carry (yd)',
        ...['alder', 'birch', 'cedar'].flatMap((club, place) =>
          around(0).flatMap((own) => [
            `1,${club},${(220 + own).toFixed(1)}`,
            `2,${club},${(220 + 15 * place + own).toFixed(1)}`,
          ]),
        ),
        '',
      ].join('\n'),
      front: { hitters: "{'1': {role: customer, consent: yes}, '2': {role: customer, consent: yes}}" },
    });
    const [metric] = findings.metrics;
    if (metric === undefined) throw new Error('no carry');
    const { open, folded } = golferWords([metric], telling);
    const figure = hittersFigure(metric, [], telling);
    if (figure.kind !== 'drawn') throw new Error('no chart');
    expect(figure.found.slice(1)).toEqual([
      'This is for these two golfers; other golfers cannot be judged from two.',
    ]);
    expect(open).toContain(
      'Farther with Cedar for golfer 2, but not for golfer 1: their gaps surely differ.',
    );
    expect(open.some((line) => /would fit/.test(line))).toBe(false);
    expect(folded.map(({ pair }) => pair).sort()).toEqual([
      'Alder and Birch',
      'Alder and Cedar',
      'Birch and Cedar',
    ]);
    for (const { sentences } of folded) {
      expect(sentences.filter((line) => /^Golfer [12]: .*would fit\.$/.test(line))).toHaveLength(2);
    }
  });

  test('nothing about golfers in general under six: no count of who gained, no range for another', () => {
    const { metric, pair, telling } = firstPair(
      severalGolfers([
        [240, 225],
        [231, 230],
        [220, 205],
        [220, 210],
        [221, 210],
      ]),
    );
    expect(whoGainedSentence(pair, metric, telling)).toBeNull();
    expect(newHitterSentence(pair, metric, telling)).toBeNull();
    expect(hitterSentences(pair, metric, telling).join(' ')).not.toMatch(/another golfer|golfers like/i);
  });

  test('one golfer has no such sentences', () => {
    const { metric, pair, telling } = firstPair(reportOf({}));
    expect(hitterSentences(pair, metric, telling)).toEqual([]);
    expect(golferWords([metric], telling)).toEqual({ open: [], folded: [] });
    expect(hittersMeaning(telling)).toBe(
      'One golfer hit: another may see a gap of another size, or the other way.',
    );
  });
});

/** Ten golfers, four brands of ball (McClave and Sincich, Statistics; figures from memory). */
describe('six golfers or more', () => {
  const [report] = loadSite(resolve('tests/cases/ten-golfers/content')).reports;
  if (report === undefined) throw new Error('tests/cases/ten-golfers has no report');
  const { telling } = report;
  const [metric] = report.findings.metrics;
  const pairOf = (a: string, b: string): PairFindings => {
    const pair = metric?.pairs.find((own) => own.a === a && own.b === b);
    if (pair === undefined) throw new Error('no pair');
    return pair;
  };

  // Counted by hand in the table of the textbook; 2 x 0.5^10 is 2 in 1,000 tests.
  test('all ten one way', () => {
    if (metric === undefined) throw new Error('no carry');
    expect(whoGainedSentence(pairOf('a', 'c'), metric, telling)).toBe(
      '10 of 10 golfers averaged farther in carry with Brand C than with Brand A (clearly so for none). ' +
        'With no difference, 10 or more one way comes in fewer than 1 of 100 tests.',
    );
  });

  // Binomial tails of ten golfers by hand: eight or more one way, 2 x 56 / 1024 = 11 in 100.
  test('eight of ten one way is not much', () => {
    if (metric === undefined) throw new Error('no carry');
    expect(whoGainedSentence(pairOf('a', 'd'), metric, telling)).toBe(
      '8 of 10 golfers averaged farther in carry with Brand A than with Brand D (clearly so for none). ' +
        'With no difference, 8 or more one way comes in 11 of 100 tests.',
    );
  });

  // R 4.2.2 (reference/cases/ten-golfers.R): -12.71 to 24.26 m, which is -13.9 to 26.5 yards.
  test('what another golfer would see', () => {
    if (metric === undefined) throw new Error('no carry');
    expect(newHitterSentence(pairOf('a', 'd'), metric, telling)).toMatch(
      /^Another golfer like these, in a test of this length, would see anything from 14 yards farther with Brand D to 27 yards farther with Brand A\.$/,
    );
    expect(hittersMeaning(telling)).toBe('10 golfers hit: the answer is about golfers like these.');
    const { open, folded } = golferWords([metric], telling);
    expect(open.filter((line) => /averaged farther/.test(line))).toHaveLength(1);
    expect(folded).toHaveLength(5);
  });

  test('as even as can be', () => {
    if (metric === undefined) throw new Error('no carry');
    const gap = (hitter: string, estimate: number): HitterGap => ({ hitter, estimate, ci: null });
    const even: PairFindings = {
      ...pairOf('a', 'd'),
      byHitter: [1, 2, 3, -1, -2, -3].map((yards, index) => gap(String(index), yd(yards))),
      whoGained: { more: 3, of: 6, clearlyMore: 0, clearlyLess: 0, byLuck: 1, share: [0.1, 0.9] },
    };
    expect(whoGainedSentence(even, metric, telling)).toBe(
      '3 of 6 golfers averaged farther in carry with Brand A than with Brand D (clearly so for none). No count could be more even.',
    );
  });
});
