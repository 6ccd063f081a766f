import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { MetricFindings } from '../../src/findings/findings.ts';
import {
  printAverage,
  printDifference,
  printLimits,
  printingOf,
  stepOf,
} from '../../src/prose/printSteps.ts';
import { toCanonical } from '../../src/trade/units.ts';
import { metricOf, pairOf, tellingFor } from './tellings.ts';

const yd = (value: number): number => toCanonical(value, 'yd');

/** Carries of contenders with these means and this half-width of every interval, yards. */
function carries(means: readonly number[], halfWidth: number, matters = 5): MetricFindings {
  const ids = ['a', 'b', 'c', 'd'].slice(0, means.length);
  const mean = (id: string): number => means[ids.indexOf(id)] ?? Number.NaN;
  const pairs = ids.flatMap((a, index) =>
    ids.slice(index + 1).map((b) => {
      const estimate = yd(mean(a) - mean(b));
      return {
        ...pairOf({ metric: 'carry', verdict: 'clear' }),
        a,
        b,
        estimate,
        ci: [estimate - yd(halfWidth), estimate + yd(halfWidth)] as const,
      };
    }),
  );
  const base = metricOf({ metric: 'carry', verdict: 'clear' });
  const [summary] = base.byContender;
  if (summary === undefined) throw new Error('no summary');
  return {
    ...base,
    matters: yd(matters),
    resolution: yd(0.1),
    pairs,
    byContender: ids.map((id) => ({ ...summary, id, mean: yd(mean(id)) })),
  };
}

describe('one step a metric a report', () => {
  // A step is at most two fifths of the widest half-width; of a distance never under half a yard.
  test.each([
    [3.15, 1],
    [2.4, 0.5],
    [0.6, 0.5],
    [6.5, 2],
    [13, 5],
    [26, 10],
  ])('half-width %d yd: step %d', (halfWidth, step) => {
    expect(stepOf(halfWidth, 'carry').step).toBe(step);
  });

  test('never finer than the file', () => {
    expect(stepOf(0.004, 'smash', 0.01).step).toBe(0.01);
    expect(stepOf(0.4, 'descent_angle', 1).step).toBe(1);
  });

  test('metres have a step of their own', () => {
    const metric = carries([172.4, 160.7], 2.6);
    const telling = tellingFor([metric]);
    expect(printingOf(metric, { findings: telling.findings, system: 'yards' }).step.step).toBe(1);
    expect(printingOf(metric, { findings: telling.findings, system: 'metres' }).step.step).toBe(0.5);
  });
});

describe('printed averages, subtracted, give the printed difference', () => {
  // 172.4, 167.4 and 160.7 at whole yards would give 172 - 161 = 11 beside "about 12".
  test('one digit more where rounding would break it', () => {
    const metric = carries([172.4, 167.4, 160.7], 3);
    const printing = printingOf(metric, tellingFor([metric]));
    expect([172.4, 167.4, 160.7].map((mean) => printAverage(yd(mean), printing))).toEqual([
      '172.4',
      '167.4',
      '160.7',
    ]);
    expect(printDifference(yd(11.7), printing)).toBe('12');
  });

  test('none where it need not', () => {
    const metric = carries([172.1, 160.2], 3);
    const printing = printingOf(metric, tellingFor([metric]));
    expect(printAverage(yd(172.1), printing)).toBe('172');
  });

  // Five shots each: 145.24, 151.66 and 140.73 m, likely 10.93 m apart at most, in steps of 2.
  test('none finer than the next power of ten, however many pairs there are', () => {
    const means = [151.66, 145.24, 140.73].map((metres) => metres / 0.9144);
    const metric = carries(means, 7.5);
    const printing = printingOf(metric, { findings: tellingFor([metric]).findings, system: 'metres' });
    expect(printing.step.step).toBe(2);
    expect(means.map((mean) => printAverage(yd(mean), printing))).toEqual(['152', '145', '141']);
    expect(printDifference(yd(10.93 / 0.9144), printing)).toBe('10');
  });

  test('what our flight model calculates is no reading, and no finer than its average', () => {
    const metric = { ...carries([172, 160], 3), resolution: 0.001 };
    const reading = (own: MetricFindings): number => printingOf(own, tellingFor([own])).readingStep.step;
    expect(reading(metric)).toBe(0.01);
    expect(reading({ ...metric, readBy: 'flight-model' })).toBe(1);
  });

  test('always, to within half its step and a last digit of theirs', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 120, max: 280, noNaN: true }), { minLength: 2, maxLength: 4 }),
        fc.double({ min: 0.3, max: 30, noNaN: true }),
        (means, halfWidth) => {
          const metric = carries(means, halfWidth);
          const printing = printingOf(metric, tellingFor([metric]));
          const number = (text: string): number => Number(text.replaceAll(',', '').replace('−', '-'));
          const { step } = printing.step;
          for (const { a, b, estimate } of metric.pairs) {
            const [x, y] = [a, b].map((id) => {
              const mean = metric.byContender.find((one) => one.id === id)?.mean;
              return number(printAverage(mean ?? Number.NaN, printing));
            });
            const apart = Math.abs((x ?? Number.NaN) - (y ?? Number.NaN));
            const printed = number(printDifference(estimate ?? Number.NaN, printing));
            expect(Math.abs(apart - printed)).toBeLessThanOrEqual(
              step / 2 + printing.averageStep.step + 1e-6,
            );
            expect(step / printing.averageStep.step).toBeLessThanOrEqual(10 + 1e-6);
          }
        },
      ),
    );
  });
});

describe('limits', () => {
  const limits = (low: number, high: number, halfWidth = 3.15, matters = 4): readonly string[] => {
    const metric = carries([172, 160], halfWidth, matters);
    const { lower, upper } = printLimits([yd(low), yd(high)], printingOf(metric, tellingFor([metric])));
    return [lower, upper].map((limit) =>
      limit.kind === 'number' ? limit.text : `${limit.kind}${'text' in limit ? ` ${limit.text}` : ''}`,
    );
  };

  test.each([
    [8.56, 14.86, ['8', '15']],
    [1.83, 9.2, ['1', '10']],
    [0.3, 9.7, ['almost-nothing', '10']],
    [0.8, 9.7, ['almost-nothing', '10']],
    [4.2, 9, ['just-over 4', '9']],
    [-3.4, 3.5, ['just-under 4', 'just-under 4']],
    [-0.3, 10, ['almost-nothing', '10']],
    [-6.2, 7, ['7', '7']],
    [-9.2, -2.4, ['10', '2']],
  ])('%d to %d', (low, high, printed) => {
    expect(limits(low, high)).toEqual(printed);
  });

  test('rounded outwards, and never across 0 or what matters', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -40, max: 40, noNaN: true }),
        fc.double({ min: 0.01, max: 40, noNaN: true }),
        fc.double({ min: 1, max: 20, noNaN: true }),
        (low, width, matters) => {
          const high = low + width;
          const printed = limits(low, high, width / 2, Number(matters.toFixed(1)));
          const ends = [low, high];
          printed.forEach((text, index) => {
            const end = ends[index] ?? Number.NaN;
            const size = Number(text);
            if (Number.isNaN(size)) return;
            const outward = index === 1 ? end > 0 : end < 0;
            if (outward) expect(size).toBeGreaterThanOrEqual(Math.abs(end) - 1e-6);
            else expect(size).toBeLessThanOrEqual(Math.abs(end) + 1e-6);
            const m = Number(matters.toFixed(1));
            expect(Math.sign(size - m) * Math.sign(Math.abs(end) - m)).toBeGreaterThanOrEqual(0);
            expect(size).toBeGreaterThan(0);
          });
        },
      ),
    );
  });
});
