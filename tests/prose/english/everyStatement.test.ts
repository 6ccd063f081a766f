import { describe, expect, test } from 'vitest';
import type {
  ClaimStanding,
  MetricFindings,
  PairFindings,
  StandingId,
} from '../../../src/findings/findings.ts';
import { checksOf } from '../../../src/prose/checks.ts';
import { claimOf } from '../../../src/prose/claims.ts';
import { sayChecks } from '../../../src/prose/english/checks.ts';
import { saySupport } from '../../../src/prose/english/claims.ts';
import { comparisonOf } from '../../../src/prose/english/comparisons.ts';
import { sayGolfers } from '../../../src/prose/english/golfers.ts';
import { golfersOf } from '../../../src/prose/golfers.ts';
import { unitFor, unitWord, withUnit, type UnitSystem } from '../../../src/prose/readerUnits.ts';
import type { Telling } from '../../../src/prose/telling.ts';
import { metricIds, metrics, type MetricId } from '../../../src/trade/metrics.ts';
import { metricOf, tellingFor, waysToComeOut, type Told } from '../tellings.ts';

/** What is said of one thing: the sentences of one statement. */
type Said = readonly string[];

const systems: readonly UnitSystem[] = ['yards', 'metres'];

/** Everything that a pair can be checked by, whatever its answer, in sizes of what matters. */
function everythingChecked(m: number): Partial<PairFindings> {
  const at = (estimate: number, low: number, high: number) => ({
    estimate: estimate * m,
    ci: [low * m, high * m] as const,
  });
  return {
    holds: [
      { check: 'usual-strikes', state: 'agrees', ...at(2.2, 1.1, 3.3) },
      { check: 'by-rounds', state: 'narrow', ...at(1.2, -0.1, 2.5) },
      { check: 'drift-taken-out', state: 'fails', ...at(-0.4, -1.7, 0.9) },
    ],
    leaveOneOut: [-0.2 * m, 2.6 * m],
    withLeftOut: { ...at(-0.9, -1.9, 0.1), verdict: 'too-close' },
    device: { accuracy: m / 4, ci: [-0.4 * m, 4.1 * m], near: true },
    atEqualSpeed: at(-0.7, -2.3, 0.9),
    driftNeeded: 6 * m,
    byHitter: [
      { hitter: 'one', estimate: 1.4 * m, ci: [0.4 * m, 2.4 * m] },
      { hitter: 'two', estimate: -1.1 * m, ci: [-2.1 * m, 0.2 * m] },
      { hitter: 'three', estimate: 0.3 * m, ci: null },
    ],
    hittersDiffer: [{ x: 'one', y: 'two' }],
  };
}

/** Every statement of this part about one pair. */
function everyStatement(metric: MetricFindings, telling: Telling): readonly Said[] {
  const { findings } = telling;
  return [
    ...checksOf(metric, findings).flatMap((own) => sayChecks(own, telling)),
    ...golfersOf(metric, findings).flatMap(({ statements }) =>
      statements.map((one) => [sayGolfers(one, telling)]),
    ),
    ...claimsAbout(metric).map((claim) => [saySupport(claimOf(claim, findings), telling)]),
  ].filter((said) => said.length > 0);
}

/** Claims of every kind about its one pair, either way, as they would stand. */
function claimsAbout({ id, pairs: [pair] }: MetricFindings): readonly ClaimStanding[] {
  if (pair === undefined) return [];
  const { a, b, estimate, ci } = pair;
  const sides = [
    { of: a, than: b, sign: 1 },
    { of: b, than: a, sign: -1 },
  ];
  return sides.flatMap(({ of, than, sign }) =>
    (['more', 'less', 'tighter'] as const).map((direction): ClaimStanding => {
      const way = direction === 'less' ? -sign : sign;
      const standing: StandingId = 'not-shown';
      return {
        say: 'It is so',
        standing,
        metric: id,
        direction,
        of,
        than,
        byAtLeast: 0,
        planned: true,
        gap:
          direction === 'tighter' || estimate === null || ci === null
            ? null
            : { estimate: way * estimate, ci: way > 0 ? ci : [-ci[1], -ci[0]] },
        spread: null,
      };
    }),
  );
}

const number = String.raw`[\d,]*\d(?:\.\d+)?`;

/** What is wrong with a statement as a sentence that someone might cut out; empty where nothing is. */
function faultsOf(said: Said, metric: MetricId, system: UnitSystem): readonly string[] {
  const [first = ''] = said;
  const { verb, verbs, base } = comparisonOf(metric);
  const unit = unitWord(unitFor(metric, system));
  const one = withUnit('1', unitFor(metric, system)).slice(2);
  const units = unit === '' ? '' : `(?:${unit}|${one})`;
  const unitless = said.filter((sentence) => {
    const found = new RegExp(number).exec(sentence.replace('12 shots', ''));
    if (found === null || unit === '') return false;
    const rest = sentence.replace('12 shots', '').slice(found.index);
    return !new RegExp(`^${number}(?: (?:to|and)(?: just (?:over|under))? ${number})? ${units}`).test(rest);
  });
  const text = said.join(' ');
  // Of one that was not judged the reason is told, whatever the other is.
  const notJudged = first.startsWith('We did not judge');
  const measures = [
    metrics[metric].name,
    ` ${verb} `,
    ` ${verbs} `,
    ` ${base} `,
    ...(metric === 'carry' ? [' went '] : []),
  ];
  const faults: readonly (readonly [string, boolean])[] = [
    ['not both names', !notJudged && !(first.includes('Alder') && first.includes('Birch'))],
    ['no measure', !notJudged && !measures.some((words) => first.includes(words))],
    ['a number without its unit', unitless.length > 0],
    ['a unit twice', unit !== '' && new RegExp(`${units} ${units}`).test(text)],
    ['a hole', /undefined|null|NaN|Infinity|\[object/.test(text)],
    ['stops or blanks', / {2}|\.\.|,,|;;| [.,;:]|,\.|:\.|\( | \)/.test(text)],
    ['no sentence', said.some((sentence) => !/^[A-Z\d].*[.!?]$/.test(sentence))],
    [
      'old words',
      /would fit|\bturns?\b|\bhitter|contender|the other way|surely|\bbears?\b|\bgap\b/i.test(text),
    ],
  ];
  return faults.flatMap(([fault, found]) => (found ? [`${fault}: ${text}`] : []));
}

describe('every statement names its measure and pair, and no number lacks its unit', () => {
  test.each(waysToComeOut)('$name', ({ told, design }) => {
    const faults = metricIds.flatMap((metric) =>
      systems.flatMap((system) =>
        [false, true].flatMap((turned) =>
          [1, 3].flatMap((hitters) => {
            const whole: Told = {
              metric,
              ...told,
              turned,
              pair: { ...everythingChecked(metrics[metric].matters), ...told.pair },
            };
            const own = metricOf(whole);
            const telling = tellingFor([own], {
              system,
              design: {
                ...design,
                hitters,
                golfers: ['one', 'two', 'three'].map((id) => ({ id, clubSpeed: null, shots: 12 })),
              },
            });
            return everyStatement(own, telling).flatMap((said) => faultsOf(said, metric, system));
          }),
        ),
      ),
    );
    expect([...new Set(faults)]).toEqual([]);
  });

  test('a fault is found where there is one', () => {
    const faults = (sentence: string): readonly string[] =>
      faultsOf([sentence], 'carry', 'yards').map((fault) => fault.split(':')[0] ?? '');
    expect(faults('The carry difference between Alder and Birch is likely 6 to 18 yards.')).toEqual([]);
    expect(faults('The carry difference between Alder and Birch is likely 6 to 18.')).toEqual([
      'a number without its unit',
    ]);
    expect(faults('The carry difference between Alder and Birch is 6 yards yards.')).toEqual([
      'a unit twice',
    ]);
    expect(faults('The difference between Alder and Birch is 6 yards.')).toEqual(['no measure']);
    expect(faults('Alder carried 6 yards farther.')).toEqual(['not both names']);
  });
});
