import { describe, expect, test } from 'vitest';
import type { DrawnFigure } from '../../src/charts/figure.ts';
import type { MetricFindings, PairFindings } from '../../src/findings/findings.ts';
import type { Report } from '../../src/kit/report.ts';
import { primaryMetrics } from '../../src/prose/answers.ts';
import { sayAnswerAlone } from '../../src/prose/english/answers.ts';
import { sayNumbers, sayPair } from '../../src/prose/english/pairInWords.ts';
import { answerOf } from '../../src/prose/answers.ts';
import { pairAnswer } from '../../src/prose/pairAnswer.ts';
import { printingOf } from '../../src/prose/printSteps.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { generatedContent } from './content.ts';

/** Reader's units of one SI unit, converted here by hand (NIST SP 811, appendix B.8), not by the code under test. */
const perSi: Readonly<Record<string, Readonly<Record<'yards' | 'metres', number>>>> = {
  carry: { yards: 1 / 0.9144, metres: 1 },
  spin_rate: { yards: 1, metres: 1 },
  smash: { yards: 1, metres: 1 },
  descent_angle: { yards: 1, metres: 1 },
};

const number = (text: string): number => Number(text.replaceAll(',', '').replace('−', '-'));
const numbersIn = (text: string): readonly number[] =>
  [...text.matchAll(/\d[\d,]*(?:\.\d+)?/g)].map(([digits]) => number(digits));
const near = (x: number, y: number): boolean => Math.abs(x - y) < 1e-6;

/** Of printed numbers, the coarsest of 1, 2 and 5 times a power of ten that they are all multiples of. */
function stepOf(printed: readonly number[]): number {
  const steps = [4, 3, 2, 1, 0, -1, -2, -3, -4].flatMap((power) =>
    [5, 2, 1].map((digit) => digit * 10 ** power),
  );
  return steps.find((step) => printed.every((value) => near(value, Math.round(value / step) * step))) ?? 0;
}

function drawn({ figures }: Report, chart: 'apart' | 'shots', metric: MetricFindings): DrawnFigure {
  const found = figures.find(
    (figure): figure is DrawnFigure =>
      figure.kind === 'drawn' &&
      (figure.id === chart || figure.id.startsWith(`${chart}-`)) &&
      figure.about.of !== 'report' &&
      figure.about.metric === metric.id,
  );
  if (found === undefined) throw new Error(`no ${chart} of ${metric.id}`);
  return found;
}

const faultsOf = (report: Report): readonly string[] => {
  const { telling, findings } = report;
  return primaryMetrics(findings).flatMap((metric) => {
    if (metric.pairs.every(({ estimate }) => estimate === null)) return [];
    const unit = perSi[metric.id]?.[telling.system] ?? Number.NaN;
    const rows = drawn(report, 'apart', metric).table.rows;
    const averages = new Map(
      drawn(report, 'shots', metric).table.rows.map(([name = '', , , average = '']) => [
        name,
        number(average),
      ]),
    );
    const judged = metric.pairs.flatMap((pair, index) => {
      const { estimate, ci } = pair;
      return estimate === null || ci === null ? [] : [{ pair, estimate, ci, row: rows[index] ?? [] }];
    });
    // The step that all printed differences and limits of the metric are multiples of; words stand for no multiple.
    const step = stepOf(
      judged.flatMap(({ row: [, ...cells] }) =>
        cells.slice(0, 3).flatMap((cell) => (/^(?:just|almost)/.test(cell) ? [] : [Math.abs(number(cell))])),
      ),
    );
    // What cells tell may be a multiple of it.
    const own = printingOf(metric, telling).step.step;
    const finest = 10 ** (Math.ceil(Math.log10(own) - 1e-9) - 1);
    const where = (pair: PairFindings): string => `${report.source.slug} ${metric.id} ${pair.a} ${pair.b}`;
    return judged.flatMap(({ pair, estimate, ci, row: [, difference = '', from = '', to = ''] }) => {
      const [a, b] = [pair.a, pair.b].map((id) => averages.get(telling.nameOf(id)) ?? Number.NaN);
      const answer = pairAnswer(pair, metric, findings.design);
      const truth = answer.difference;
      const says = [sayPair(answer, telling), sayNumbers(answer, telling)];
      const means = [pair.a, pair.b].map((id) => metric.byContender.find((one) => one.id === id)?.mean);
      const subtracts = near((means[0] ?? Number.NaN) - (means[1] ?? Number.NaN), estimate);
      const apart = Math.abs((a ?? Number.NaN) - (b ?? Number.NaN));
      const allowed = new Set(
        [number(difference), metric.matters * unit, ...limitsOf(from, to)].map((value) => value.toFixed(4)),
      );
      return [
        ...(subtracts && Math.abs(apart - Math.abs(number(difference))) > step / 2 + finest + 1e-6
          ? [`${where(pair)}: averages ${a} and ${b}, difference ${difference}`]
          : []),
        ...[a, b].flatMap((average = Number.NaN) =>
          !near(average / finest, Math.round(average / finest))
            ? [`${where(pair)}: average ${average} finer than a power of ten below the step ${own}`]
            : [],
        ),
        ...(Math.abs(Math.abs(number(difference)) - Math.abs(estimate * unit)) > step / 2 + 1e-6
          ? [`${where(pair)}: ${difference} for ${estimate * unit}`]
          : []),
        ...outward(from, to, truth?.ci.map((end) => end * unit) ?? ci, step).map(
          (fault) => `${where(pair)}: ${fault}`,
        ),
        // What sentences say of the pair are the numbers of its row, those of what matters, or none.
        ...says.flatMap((words) =>
          numbersIn(words)
            .filter(
              (value) =>
                !allowed.has(value.toFixed(4)) &&
                !isCount(value, words) &&
                // What matters, stated in the other unit, is printed with two digits.
                Number((metric.matters * unit).toPrecision(2)) !== value,
            )
            .map(
              (value) =>
                `${where(pair)}: ${value} in "${words}" is in no cell of ${difference}, ${from}, ${to}`,
            ),
        ),
      ];
    });
  });
};

/** Counts of shots and checks stand in sentences too. */
function isCount(value: number, words: string): boolean {
  return Number.isInteger(value) && value < 100 && new RegExp(`\\b${value} (?:shots?|of our)\\b`).test(words);
}

function limitsOf(from: string, to: string): readonly number[] {
  return [from, to].flatMap((text) => numbersIn(text));
}

/** Limits lie at or beyond the true ones, on the same side of 0, and on the step of the differences. */
function outward(from: string, to: string, ci: readonly number[], step: number): readonly string[] {
  const ends = [
    { text: from, truth: ci[0] ?? Number.NaN, lower: true },
    { text: to, truth: ci[1] ?? Number.NaN, lower: false },
  ];
  return ends.flatMap(({ text, truth, lower }) => {
    const [size] = numbersIn(text);
    if (size === undefined || /just/.test(text)) return [];
    if (text === 'almost 0') return Math.abs(truth) < step + 1e-6 ? [] : [`${text} for ${truth}`];
    const printed = text.startsWith('−') ? -size : size;
    const beyond = lower ? truth - printed : printed - truth;
    if (beyond < -1e-6 || beyond > step + 1e-6) return [`${text} for ${truth}`];
    if (step > 0 && !near(printed / step, Math.round(printed / step)) && stepOf([printed]) < step)
      return [`${text} is finer than the step ${step}`];
    return [];
  });
}

/** Two hundred tests, a quarter of them of a shop that thinks in metres. */
describe.each([
  ['yards', 150],
  ['metres', 50],
] as const)('generated tests in %s', (units, count) => {
  const site = loadSite(generatedContent(count, units));

  test('all can be built', () => {
    expect(site.problems.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(site.reports).toHaveLength(count);
  });

  test('one step a metric; averages subtract to differences, no finer than they need be; limits outward; one quantity, one print', () => {
    expect(site.reports.flatMap(faultsOf)).toEqual([]);
  });

  test('every verdict is among them', () => {
    const verdicts = new Set(
      site.reports.flatMap(({ findings }) =>
        primaryMetrics(findings).flatMap(({ pairs }) => pairs.map(({ verdict }) => verdict)),
      ),
    );
    if (units === 'yards') expect(verdicts.size).toBe(7);
    else expect(verdicts.size).toBeGreaterThan(5);
  });

  test('answers stand alone: what was tested, by how many, in at most a few sentences', () => {
    for (const { findings, telling } of site.reports) {
      for (const metric of primaryMetrics(findings)) {
        const told = sayAnswerAlone(answerOf(metric, findings), telling);
        expect(told.length).toBeLessThanOrEqual(6);
        if (metric.pairs.some(({ status }) => status !== 'not-judged'))
          expect(told[0]).toMatch(
            /^In a test of heads(?: by (?:one|\w+) golfers?|, on average over \w+ golfers), /,
          );
      }
    }
  });
});
