import { describe, expect, test } from 'vitest';
import type { Part } from '../../../src/flight/attribution.ts';
import type { PartId } from '../../../src/flight/attributionPlan.ts';
import { yardsWords } from '../../../src/prose/english/charts/yards.ts';
import { partName, sayPart, sayYards } from '../../../src/prose/english/yards.ts';
import type { Telling } from '../../../src/prose/telling.ts';
import { yardsPart } from '../../../src/prose/yardsSplit.ts';
import { toCanonical } from '../../../src/trade/units.ts';
import { metricOf, tellingFor } from '../tellings.ts';

const yd = (value: number): number => toCanonical(value, 'yd');
const part = (value: number, [low, high]: readonly [number, number], finding: boolean): Part => ({
  value: yd(value),
  range: [yd(low), yd(high)],
  bySet: [],
  settled: true,
  why: [],
  finding,
});

/** Carry known to a yard or so: finer than any flight model is right. */
const telling = (varied: string, system: Telling['system'] = 'yards'): Telling =>
  tellingFor(
    [metricOf({ metric: 'carry', verdict: 'clear', pair: { estimate: yd(12), ci: [yd(11), yd(13)] } })],
    { varied, system },
  );

type Told = readonly [PartId, number, readonly [number, number], boolean];

const said = (
  gap: number,
  parts: readonly Told[],
  varied = 'ball',
  by: Parameters<typeof sayYards>[1] = null,
): string =>
  sayYards(
    {
      parts: parts.map(([id, value, range, finding]) => yardsPart(id, part(value, range, finding))),
      gap: yd(gap),
      ...{ ahead: 'Heron', behind: 'Wren' },
    },
    by,
    telling(varied),
  );

describe('where the yards come from', () => {
  const ball: readonly Told[] = [
    ['smash', 11.2, [9.2, 13.1], true],
    ['spin-rate', 0.4, [-1.2, 2.3], false],
  ];

  test('in a test of balls the speed off the face is the ball, of clubs it is told as it was measured', () => {
    expect(said(11.7, ball)).toBe(
      "By the model, about 11 of Heron's 12 yards come from more ball speed for the same swing. The rest is too uncertain to split.",
    );
    expect(said(11.7, ball, 'head')).toBe(
      "By the model, about 11 of Heron's 12 yards come from more ball speed for the club speed. The rest is too uncertain to split.",
    );
    expect(partName('smash', telling('ball'))).toBe('ball speed for the same swing');
    expect(partName('smash', telling('head'))).toBe('smash factor (ball speed for the club speed)');
  });

  test('several parts, and one that works the other way', () => {
    expect(
      said(20, [
        ['club-speed', 12, [9, 15], true],
        ['launch-angle', 8.2, [6, 10], true],
        ['spin-rate', -6.1, [-8, -5], true],
      ]),
    ).toBe(
      "By the model, about 12 of Heron's 20 yards come from more club speed and about 8 from its launch angle. " +
        'Spin alone would put Wren about 6 yards ahead of Heron.',
    );
  });

  test('a part larger than the difference is no share of it', () => {
    expect(said(7, [['club-speed', 12, [9, 15], true]], 'head')).toBe(
      'By the model, club speed alone would put Heron about 12 yards ahead of Wren.',
    );
  });

  test('where nothing is a finding no part has a size, neither in the sentence nor beside it', () => {
    const small: readonly Told[] = [['smash', 1.5, [0.7, 2.3], false]];
    expect(said(1.6, small)).toBe('The difference is too small to split reliably.');
    const own = yardsPart('smash', part(1.5, [0.7, 2.3], false));
    expect(sayPart(own, ['Heron', 'Wren'], telling('ball'))).toBe(
      'too little or too uncertain to name: between almost nothing and 3 yards for Heron',
    );
  });

  test('each part with its range, nothing under a yard', () => {
    const words = (value: number, range: readonly [number, number], finding: boolean): string =>
      sayPart(yardsPart('smash', part(value, range, finding)), ['Heron', 'Wren'], telling('ball'));
    expect(words(11.2, [9.2, 13.1], true)).toBe('about 11 yards for Heron, likely 9 to 14');
    expect(words(-11.2, [-13.1, -9.2], true)).toBe('about 11 yards for Wren, likely 9 to 14');
    expect(words(0.2, [-1.4, 2.6], false)).toBe(
      'too little or too uncertain to name: anything from 3 yards for Heron to 2 for Wren',
    );
    expect(words(-0.2, [-2.6, 1.4], false)).toBe(
      'too little or too uncertain to name: anything from 3 yards for Wren to 2 for Heron',
    );
  });

  test('whose carry it was', () => {
    expect(said(11.7, ball, 'ball', 'monitor')).toMatch(
      /^The carry was calculated by the monitor itself, so this only shows how a flight model splits it\. By the model, /,
    );
    expect(said(11.7, ball, 'ball', 'flight-model')).toMatch(
      /^The carry was calculated by our flight model, so /,
    );
  });

  test('in metres by its own step', () => {
    const own = [yardsPart('smash', part(11.2, [9.2, 13.1], true))];
    expect(
      sayYards(
        { parts: own, gap: yd(11.7), ahead: 'Heron', behind: 'Wren' },
        null,
        telling('ball', 'metres'),
      ),
    ).toBe("By the model, about 10 of Heron's 11 metres come from more ball speed for the same swing.");
  });

  test('the caption names the one ahead, also where it was the second of the pair', () => {
    const caption = (sign: 1 | -1): string => {
      const own = part(sign * 11.2, sign === 1 ? [9.2, 13.1] : [-13.1, -9.2], true);
      const attribution = {
        state: 'attributed' as const,
        level: 0.95,
        draws: 2000,
        gap: { value: yd(sign * 11.7), range: [yd(sign === 1 ? 9 : -15), yd(sign === 1 ? 15 : -9)] as const },
        parts: [{ ...own, id: 'smash' as const }],
        unexplained: own,
        constant: [],
        sets: [],
        leftOut: [],
      };
      const here = telling('ball');
      const [metric] = here.findings.metrics;
      return metric === undefined
        ? ''
        : (yardsWords(attribution, metric, { a: 'Heron', b: 'Wren' }, here).found[0] ?? '');
    };
    expect(caption(1)).toContain("about 11 of Heron's 12 yards come from more ball speed");
    expect(caption(-1)).toBe(caption(1));
  });
});
