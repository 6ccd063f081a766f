import { describe, expect, test } from 'vitest';
import { claimOf, claimsOf } from '../../src/prose/claims.ts';
import { saySupport, tellClaim } from '../../src/prose/english/claims.ts';
import { around, madeReport, reportOf, threeHeads } from '../findings/reportOf.ts';

const claims = (...entries: readonly string[]): string =>
  `\n${entries.map((entry) => `  - {${entry}}`).join('\n')}`;
const farther = (of: string, than: string, rest = ''): string =>
  `say: ${of} carries farther than ${than}, metric: carry, more: ${of}, than: ${than}${rest}`;
const mayBeUnproven = ', allow_unproven: yes';

/** Every claim as the page prints it: what was said, in which size it was judged, how it stands, what is supported. */
const printed = (invented: Parameters<typeof reportOf>[0]): string[] => {
  const { findings, telling } = reportOf(invented);
  return claimsOf(findings).map((claim) => {
    const { said, restated, standing, supports } = tellClaim(claim, telling);
    return [said, restated, standing, supports].filter((words) => words !== '').join(' ');
  });
};

const problemsOf = (invented: Parameters<typeof madeReport>[0]): string[] =>
  madeReport(invented).problems.map(
    ({ kind, severity, line, column, expected, found, cure }) =>
      `${severity} ${kind} ${line}:${column} | ${expected} | ${found} | ${cure}`,
  );

describe('a claim as the page prints it', () => {
  test('supported, overstated, and the size it was judged in', () => {
    const lines = printed({
      front: {
        claims: claims(
          farther('alder', 'cedar'),
          farther('alder', 'cedar', ', by_at_least: 10 yd'),
          `say: Cedar falls short of Alder, metric: carry, less: cedar, than: alder`,
          farther('birch', 'cedar', `, by_at_least: 2 yd`),
        ),
      },
    });
    expect(lines).toEqual([
      'Alder carries farther than cedar. Supported. The shots support this: Alder carried 7 to 17 yards farther than Cedar.',
      'Alder carries farther than cedar. Judged as at least 10 yards. Overstated. The shots support this: Alder carried 7 to 17 yards farther than Cedar.',
      'Cedar falls short of Alder. Supported. The shots support this: Cedar carried 7 to 17 yards less far than Alder.',
      'Birch carries farther than cedar. Judged as at least 2 yards. Overstated. The shots support this: Birch carried 1 to 11 yards farther than Cedar.',
    ]);
  });

  test('not shown says how far apart they may be, either way', () => {
    const shots = {
      ...threeHeads,
      'Carry (yd)': { alder: around(231), birch: around(229), cedar: around(225) },
    };
    expect(printed({ shots, front: { claims: claims(farther('alder', 'birch', mayBeUnproven)) } })).toEqual([
      'Alder carries farther than birch. Not shown. We cannot tell whether Alder or Birch carried farther: anything from 7 yards for Alder to 3 for Birch.',
    ]);
  });

  test('no difference that matters', () => {
    const shots = {
      'Carry (yd)': { alder: around(230.1, 0.5), birch: around(230, 0.5), cedar: around(225) },
    };
    expect(printed({ shots, front: { claims: claims(farther('alder', 'birch', mayBeUnproven)) } })).toEqual([
      'Alder carries farther than birch. Not shown. Alder and Birch carried alike: any difference is likely under 5 yards.',
    ]);
  });

  test('a difference that is real and too small to matter', () => {
    const shots = {
      'Carry (yd)': { alder: around(232, 0.2), birch: around(230, 0.2), cedar: around(225, 0.2) },
    };
    expect(printed({ shots, front: { claims: claims(farther('alder', 'birch')) } })).toEqual([
      'Alder carries farther than birch. Supported. The shots support this: Alder carried 1 to 3 yards farther than Birch, too little to matter.',
    ]);
  });

  test('hit one after another: the difference is named, and its cause left open, in one sentence', () => {
    const lines = printed({
      order: 'one after another',
      front: { claims: claims(farther('alder', 'cedar', mayBeUnproven)) },
    });
    expect(lines).toEqual([
      'Alder carries farther than cedar. Not shown. Alder went farther than Cedar, but Alder was hit first and Cedar last, so we cannot say that it was the head.',
    ]);
  });

  test('seen, but not what the test set out to check: on a measure not chosen before', () => {
    const shots = {
      ...threeHeads,
      'Ball Speed (mph)': { alder: around(150, 0.2), birch: around(145, 0.2), cedar: around(140, 0.2) },
    };
    const say = 'say: Alder is faster, metric: ball_speed, more: alder, than: birch';
    expect(printed({ shots, front: { claims: claims(say) } })).toEqual([
      'Alder is faster. Seen, but not what this test set out to check. The shots support this: Alder had a ball speed 4.0 to 6.0 mph higher than Birch.',
    ]);
  });

  test('spread: more consistent with both spreads, or why nothing can be said', () => {
    const shots = {
      'Carry (yd)': {
        alder: around(230, 0.3),
        birch: around(230, 1.2).toReversed(),
        cedar: around(230, 1.3),
      },
    };
    const tighter = (of: string, than: string): string =>
      `say: ${of} is steadier, metric: carry, tighter: ${of}, than: ${than}${mayBeUnproven}`;
    expect(
      printed({ shots, front: { claims: claims(tighter('alder', 'birch'), tighter('birch', 'cedar')) } }),
    ).toEqual([
      'Alder is steadier. Supported. Alder was more consistent in carry than Birch, with a standard deviation of 2 yards (likely under 4) against 6 yards (likely 4 to 10).',
      'Birch is steadier. Not shown. There is no clear difference in consistency of carry between Birch and Cedar.',
    ]);
    const few = {
      'Carry (yd)': { alder: around(230, 0.3).slice(0, 8), birch: around(230), cedar: around(230) },
    };
    expect(printed({ shots: few, front: { claims: claims(tighter('alder', 'birch')) } })).toEqual([
      'Alder is steadier. Not shown. Consistency of carry with Alder and Birch was not judged: that takes 12 shots each, and one has eight.',
    ]);
  });

  test('straighter: nearer the line', () => {
    const shots = {
      ...threeHeads,
      'Side (yd)': {
        alder: around(0, 0.2),
        birch: around(20, 0.2).map((own, index) => (index % 2 === 0 ? own : -own)),
        cedar: around(0, 0.2),
      },
    };
    const say = 'say: Alder is straighter, straighter: alder, than: birch';
    expect(printed({ shots, front: { claims: claims(say) } })).toEqual([
      'Alder is straighter. Seen, but not what this test set out to check: of two such measures, fewer than one would show a difference by chance. Alder finished nearer the line than Birch, likely by 15 to 20 yards.',
    ]);
  });

  test('too few shots', () => {
    const shots = { 'Carry (yd)': { alder: [240, 241, 242, 243], birch: around(230), cedar: around(225) } };
    expect(printed({ shots, front: { claims: claims(farther('alder', 'birch', mayBeUnproven)) } })).toEqual([
      'Alder carries farther than birch. Not shown. We did not judge Alder: four shots are too few.',
    ]);
  });

  test('metres where the shop prints metres', () => {
    const shop = 'name: Example Shop\ndefaults: {units: metres}';
    expect(printed({ shop, front: { claims: claims(farther('alder', 'cedar')) } })).toEqual([
      'Alder carries farther than cedar. Supported. The shots support this: Alder carried 6 to 16 metres farther than Cedar.',
    ]);
  });
});

describe('a difference that was seen, and something beside it that holds the claim back', () => {
  const { findings, telling } = reportOf({ front: { claims: claims(farther('alder', 'cedar')) } });
  const [claim] = findings.claims;

  test.each([
    ['mixed-with-swing', 'the swing differed too, so we cannot say that it was the head'],
    ['depends-on-left-out', 'the answer depends on the shots left out'],
    ['rests-on-one-shot', 'one stray shot decides it'],
    ['near-device', "the difference may be no larger than the monitor's own error"],
    ['uneven-readings', 'readings are missing more often for one than for the other'],
  ] as const)('%s', (overlay, why) => {
    if (claim === undefined) throw new Error('no claim');
    const own = {
      ...findings,
      metrics: findings.metrics.map((metric) => ({
        ...metric,
        pairs: metric.pairs.map((pair) => ({ ...pair, overlays: [overlay] })),
      })),
    };
    const support = (standing: 'not-shown' | 'borne-out'): string =>
      saySupport(claimOf({ ...claim, standing }, own), telling);
    const seen = 'Alder carried 7 to 17 yards farther than Cedar';
    expect(support('not-shown')).toBe(`${seen}, but ${why}.`);
    expect(support('borne-out')).toBe(`The shots support this: ${seen}.`);
  });
});

describe('a claim that stops the build', () => {
  test('contradicted: the message says what the shots say', () => {
    expect(problemsOf({ front: { claims: claims(farther('cedar', 'alder')) } })).toEqual([
      'error claim-contradicted 14:11 | a claim that the shots do not speak against | "cedar carries farther than alder" | ' +
        'Take the claim out. Ready to take in its place: {{ answer carry cedar alder }}, which prints "Alder carried farther than Cedar: about 12 yards, likely 7 to 17." ' +
        'The shots support it as a claim; write under "claims": - {say: "Alder carried farther than Cedar", metric: carry, more: alder, than: cedar}.',
    ]);
  });

  test('contradicted by size', () => {
    expect(
      problemsOf({ front: { claims: claims(farther('alder', 'cedar', ', by_at_least: 20 yd')) } }),
    ).toEqual([
      'error claim-contradicted 14:11 | a claim that the shots do not speak against | "alder carries farther than cedar" | ' +
        'Take the claim out. Ready to take in its place: {{ answer carry alder cedar }}, which prints "Alder carried farther than Cedar: about 12 yards, likely 7 to 17." ' +
        'The shots support it as a claim; write under "claims": - {say: "Alder carried farther than Cedar", metric: carry, more: alder, than: cedar}.',
    ]);
  });

  test('a contradicted claim stops even where unproven ones may pass', () => {
    expect(
      madeReport({ front: { claims: claims(farther('cedar', 'alder', mayBeUnproven)) } }).report,
    ).toBeNull();
  });

  test('not shown, unless it may be unproven', () => {
    const shots = { 'Carry (yd)': { alder: around(231), birch: around(229), cedar: around(225) } };
    const sized = farther('alder', 'birch', ', by_at_least: 3 yd');
    expect(problemsOf({ shots, front: { claims: claims(sized) } })).toEqual([
      'error claim-not-shown 14:11 | a claim that the shots show, here a difference of 3 yards or more | "alder carries farther than birch" | ' +
        'Take the claim out, or write "allow_unproven: yes": then it is printed as not shown. Ready to take in its place: {{ answer carry alder birch }}, ' +
        'which prints "We cannot tell whether Alder or Birch carried farther: anything from 7 yards for Alder to 3 for Birch."',
    ]);
    expect(problemsOf({ shots, front: { claims: claims(sized + mayBeUnproven) } })).toEqual([]);
  });

  test('about a column that is not there', () => {
    expect(
      problemsOf({
        front: { claims: claims('say: Alder spins less, metric: spin_rate, less: alder, than: birch') },
      }),
    ).toEqual([
      'error claim-unmeasured 14:11 | a claim about something in the session file: carry | "Alder spins less", and no column holds spin rate | ' +
        'Take the claim out, or add the column to the session file.',
    ]);
  });

  test.each([
    ['Alder is more forgiving than Cedar', 'forgiveness was'],
    ['Alder lowers your handicap', 'handicaps were'],
    ['Alder lasts longer than Cedar', 'durability was'],
    ['Golfers score better with Alder', 'scores were'],
    ['Alder finds more fairways', 'hitting fairways or greens was'],
  ])('about an outcome that was never measured: %s', (say, outcome) => {
    const [problem, ...others] = problemsOf({
      front: { claims: claims(`say: ${say}, metric: carry, more: alder, than: cedar`) },
    });
    expect(others).toEqual([]);
    expect(problem).toBe(
      `error claim-unmeasured 14:11 | a claim about what the shots show | "${say}", and ${outcome} not measured | ` +
        `Say what was measured, or leave it out: no shot in the file tells of ${outcome.replace(/ \w+$/, '')}.`,
    );
  });

  test.each([
    ['Alder is straighter than Cedar', 'straighter'],
    ['Alder spins less than Cedar', 'spins less'],
    ['Alder carries farther and is more consistent than Cedar', 'more consistent'],
    ['Alder is better than Cedar', 'better than'],
    ['Cedar carries farther than Alder', 'farther'],
    ['Alder is shorter than Cedar', 'shorter'],
  ])('in words that are not what it claims: %s', (say, word) => {
    const found = problemsOf({
      front: { claims: claims(`say: ${say}, metric: carry, more: alder, than: cedar`) },
    });
    expect(found).toEqual([
      `error claim-says-other 14:11 | words that say what the claim says: metric: carry, more: alder, than: cedar | "${word}" in "${say}" | ` +
        'Reword it, or make another claim of it. The shots say: Alder carried 7 to 17 yards farther than Cedar.',
    ]);
  });

  test.each([
    'Alder carries farther than Cedar',
    'Compared with Cedar, Alder carries farther',
    'Cedar is shorter than Alder',
    'Alder has more carry than either Birch or Cedar',
    'With Alder the ball flew longer than with Cedar',
    'Alder goes 7 yards past Cedar',
    'Cedar does not carry farther than Alder',
  ])('in words that are: %s', (say) => {
    expect(
      problemsOf({ front: { claims: claims(`say: "${say}", metric: carry, more: alder, than: cedar`) } }),
    ).toEqual([]);
  });

  test('a withdrawn report is not held to its claims any more', () => {
    const front = {
      status: 'withdrawn',
      withdrawn: '{date: 2026-05-01, reason: wrong ball}',
      claims: claims(farther('cedar', 'alder')),
    };
    expect(problemsOf({ front })).toEqual([]);
  });
});
