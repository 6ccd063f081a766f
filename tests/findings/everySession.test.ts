import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/findings/analyse.ts';
import type { Findings, PairFindings } from '../../src/findings/findings.ts';
import { isGap, verdictOf } from '../../src/findings/verdict.ts';
import { primaryMetrics } from '../../src/prose/answers.ts';
import { answerSentences, cautionSentences, pairSentences, reachSentences } from '../prose/said.ts';
import { toldChecks } from '../../src/prose/english/checks.ts';
import { inputFor, yd, type Swing } from './sessions.ts';

/** Readings as files have them: rounded to a coarse step, so that ties and flat columns come often; some missing. */
const reading = (base: number, step: number): fc.Arbitrary<number | null> =>
  fc.oneof(
    { weight: 1, arbitrary: fc.constant(null) },
    { weight: 6, arbitrary: fc.integer({ min: -3, max: 3 }).map((steps) => base + steps * step) },
    { weight: 3, arbitrary: fc.integer({ min: -400, max: 400 }).map((steps) => base + (steps * step) / 10) },
    { weight: 1, arbitrary: fc.integer({ min: -9, max: 2 }).map((steps) => base + steps * 5 * step) },
  );

interface Options {
  readonly hitters: number;
  readonly most: number;
}

/** How far apart contenders are by themselves, in yards. */
const lead: Readonly<Record<string, number>> = { a: 6, b: 0, c: 14, d: 1 };

const swing = ({ hitters }: Options, contenders = 'abcd'): fc.Arbitrary<Swing> =>
  fc.constantFrom(...contenders).chain((contender) =>
    fc.record({
      contender: fc.constant(contender),
      hitter: fc.integer({ min: 1, max: hitters }).map((index) => `h${index}`),
      values: fc.record({
        carry: reading(yd(200 + (lead[contender] ?? 0)), yd(1)),
        side: reading(0, yd(1)),
        hang_time: reading(6, 0.1),
      }),
      leftOut: fc.integer({ min: 0, max: 9 }).map((drawn) => drawn === 0),
    }),
  );

const byContender = (x: Swing, y: Swing): number =>
  x.contender < y.contender ? -1 : x.contender > y.contender ? 1 : 0;

/** Short and long, with few contenders and many; as drawn, one after another, in turn, or flat in one column. */
function session(options: Options): fc.Arbitrary<readonly Swing[]> {
  const drawn = fc.constantFrom('ab', 'abc', 'abcd').chain((contenders) =>
    fc.oneof(
      fc.array(swing(options, contenders), { minLength: 2, maxLength: 16 }),
      fc.array(swing(options, contenders), {
        minLength: Math.floor(options.most / 2),
        maxLength: options.most,
      }),
    ),
  );
  return fc.oneof(
    drawn,
    drawn.map((swings) => swings.toSorted(byContender)),
    drawn.map((swings) => swings.map((own, index) => ({ ...own, contender: 'abcd'.charAt(index % 3) }))),
    drawn.map((swings) => swings.map((own) => ({ ...own, values: { ...own.values, carry: yd(200) } }))),
  );
}

function numbersIn(found: unknown): readonly number[] {
  if (typeof found === 'number') return [found];
  if (Array.isArray(found)) return found.flatMap(numbersIn);
  return typeof found === 'object' && found !== null ? Object.values(found).flatMap(numbersIn) : [];
}

/** What must hold of any findings whatever the shots were. */
function expectSound(findings: Findings): void {
  expect(numbersIn(findings).every(Number.isFinite)).toBe(true);
  // JSON keeps all of it: no undefined, no minus zero lost, nothing but plain data
  expect(JSON.parse(JSON.stringify(findings))).toEqual(findings);
  for (const metric of findings.metrics) {
    for (const pair of metric.pairs) expectSoundPair(pair, metric.matters, findings);
    for (const id of metric.leading ?? []) expect(metric.byContender.map(({ id: own }) => own)).toContain(id);
    expect(metric.leading?.length).not.toBe(0);
  }
}

function expectSoundPair(pair: PairFindings, matters: number, { design, contenders }: Findings): void {
  const { estimate, ci, verdict, overlays, credit, holds } = pair;
  expect(pair.a).not.toBe(pair.b);
  expect(contenders.map(({ id }) => id)).toEqual(expect.arrayContaining([pair.a, pair.b]));
  expect(new Set(overlays).size).toBe(overlays.length);
  expect([estimate === null, ci === null, pair.p === null, pair.method === null]).toEqual(
    Array(4).fill(verdict === 'not-judged'),
  );
  if (estimate === null || ci === null) return;
  expect(ci[0]).toBeLessThanOrEqual(estimate);
  expect(ci[1]).toBeGreaterThanOrEqual(estimate);
  const ofInterval = verdictOf(estimate, ci, matters);
  const ofGolfers = ofInterval === 'small' ? 'maybe-small' : 'too-close';
  const held = overlays.includes('golfers-apart') ? ofGolfers : ofInterval;
  expect(verdict).toBe(overlays.includes('visits-alike') ? 'too-close' : held);
  const openBecause = overlays.filter((overlay) => /^(order-|one-after)/.test(overlay));
  expect(openBecause).toHaveLength(credit === 'open' ? 1 : 0);
  if (design.order === 'unknown') expect(credit).toBe('open');
  // Where golfers are the unit, a pair whose orders even out between them is credited.
  if (design.order === 'one-after-another' && design.unit === 'shot') expect(credit).toBe('open');
  if (verdict === 'too-close') expect(holds).toEqual([]);
  if (overlays.includes('rests-on-one-shot')) expect(isGap(verdict)).toBe(true);
  if (credit === 'open') expect(holds.map(({ check }) => check)).not.toContain('drift-taken-out');
}

function expectWords(findings: Findings): void {
  const telling = {
    findings,
    system: 'yards' as const,
    scalesIn: 'yards' as const,
    noun: 'head',
    nouns: 'heads',
    nameOf: (id: string) => id.toUpperCase(),
    the: (id: string) => id.toUpperCase(),
    golfer: (id: string) => `golfer ${id}`,
  };
  const words = primaryMetrics(findings).flatMap((metric) => [
    ...answerSentences(metric, telling),
    ...pairSentences(metric, telling),
    ...reachSentences(metric, telling),
    ...toldChecks(metric, telling).flatMap(({ lines }) => lines),
    ...cautionSentences(telling),
  ]);
  for (const sentence of words) {
    expect(sentence).toMatch(/^[A-Z].*\.$/);
    expect(sentence).not.toMatch(/undefined|null|NaN|Infinity| {2}|\.\./);
  }
}

describe.each([
  [1, 60, 150],
  [2, 60, 60],
  [4, 80, 40],
  [7, 90, 60],
])('any session of %i golfers', (hitters, most, numRuns) => {
  test('is analysed, into findings that hang together and sentences that read', () => {
    fc.assert(
      fc.property(session({ hitters, most }), (swings) => {
        const findings = analyse(inputFor(swings, { contenders: ['a', 'b', 'c', 'd'] }), []);
        expectSound(findings);
        expectWords(findings);
      }),
      { numRuns },
    );
  }, 120_000);
});

test('any stated order, two primaries, modelled readings with a stated accuracy', () => {
  fc.assert(
    fc.property(
      session({ hitters: 1, most: 40 }),
      fc.constantFrom('random', 'rotation', 'mini-blocks', 'one-after-another', 'unknown'),
      fc.double({ min: 0.001, max: 20, noNaN: true }),
      (swings, statedOrder, matters) => {
        const input = inputFor(swings, {
          statedOrder,
          primaries: ['carry', 'hang_time'],
          classes: { carry: 'modelled' },
          accuracy: { carry: 2, hang_time: 0.1 },
          matters: { carry: matters },
        });
        expectSound(analyse(input, []));
      },
    ),
    { numRuns: 100 },
  );
}, 120_000);

test('launch, spin and swing read as well, some of it missing or flat', () => {
  const launches = fc.record({
    ball_speed: reading(65, 0.5),
    launch_angle: reading(12, 0.5),
    launch_direction: reading(0, 1),
    spin_rate: reading(2600, 100),
    club_speed: reading(44, 0.5),
    attack_angle: reading(2, 0.5),
    club_path: reading(0, 0.5),
    face_to_path: reading(0, 0.5),
  });
  const swings = fc.array(fc.tuple(swing({ hitters: 1, most: 40 }), launches), {
    minLength: 2,
    maxLength: 45,
  });
  fc.assert(
    fc.property(swings, fc.boolean(), (drawn, inTurn) => {
      const own = drawn.map(([one, launch], index) => ({
        ...one,
        contender: inTurn ? 'ab'.charAt(index % 2) : one.contender,
        values: { ...one.values, ...launch },
      }));
      const findings = analyse(inputFor(own), []);
      expectSound(findings);
      expectWords(findings);
    }),
    { numRuns: 25, endOnFailure: true },
  );
}, 120_000);

test('the sessions drawn here come to every verdict, credit and most overlays', () => {
  const seen = new Set<string>();
  for (const drawn of fc.sample(session({ hitters: 1, most: 60 }), { seed: 1, numRuns: 400 })) {
    for (const { pairs } of analyse(inputFor(drawn, { contenders: ['a', 'b', 'c', 'd'] }), []).metrics) {
      for (const { verdict, credit, overlays } of pairs)
        for (const word of [verdict, credit, ...overlays]) seen.add(word);
    }
  }
  const expected = [
    'clear',
    'size-unsure',
    'maybe-small',
    'level',
    'too-close',
    'not-judged',
    'open',
    'contender',
  ];
  expect([...seen]).toEqual(
    expect.arrayContaining([...expected, 'one-after-another', 'few-shots', 'depends-on-left-out']),
  );
}, 120_000);

test('the same session gives the same findings', () => {
  fc.assert(
    fc.property(session({ hitters: 2, most: 40 }), (swings) => {
      expect(analyse(inputFor(swings), [])).toEqual(analyse(inputFor(swings), []));
    }),
    { numRuns: 30 },
  );
}, 120_000);

test('no shots, one shot, one contender', () => {
  const swings: Swing[] = [{ contender: 'a', values: { carry: yd(200) } }];
  for (const own of [[], swings, [...swings, ...swings]]) {
    expectSound(analyse(inputFor(own, { contenders: ['a', 'b'] }), []));
    expectSound(analyse(inputFor(own, { contenders: ['a'] }), []));
  }
});
