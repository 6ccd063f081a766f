import { describe, expect, test } from 'vitest';
import { claimCount, claimLines } from '../../src/prose/claimSentence.ts';
import { around, madeReport, reportOf, threeHeads } from '../findings/reportOf.ts';

const claims = (...entries: readonly string[]): string =>
  `\n${entries.map((entry) => `  - {${entry}}`).join('\n')}`;
const farther = (of: string, than: string, rest = ''): string =>
  `say: ${of} carries farther than ${than}, metric: carry, more: ${of}, than: ${than}${rest}`;
const mayBeUnproven = ', allow_unproven: yes';

const printed = (invented: Parameters<typeof reportOf>[0]): string[] =>
  claimLines(reportOf(invented).telling).map(({ said, standing, bears }) => `${said} ${standing} ${bears}`);

const problemsOf = (invented: Parameters<typeof madeReport>[0]): string[] =>
  madeReport(invented).problems.map(
    ({ kind, severity, line, column, expected, found, cure }) =>
      `${severity} ${kind} ${line}:${column} | ${expected} | ${found} | ${cure}`,
  );

describe('a claim as the page prints it', () => {
  test('borne out, weaker than said, not shown', () => {
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
      'Alder carries farther than cedar. Borne out. The shots bear: farther, 7 to 17 yards.',
      'Alder carries farther than cedar. Weaker than said. The shots bear: farther, 7 to 17 yards.',
      'Cedar falls short of Alder. Borne out. The shots bear: shorter, 7 to 17 yards.',
      'Birch carries farther than cedar. Weaker than said. The shots bear: farther, 1 to 11 yards.',
    ]);
  });

  test('not shown says what would fit, both ways', () => {
    const shots = {
      ...threeHeads,
      'Carry (yd)': { alder: around(231), birch: around(229), cedar: around(225) },
    };
    expect(printed({ shots, front: { claims: claims(farther('alder', 'birch', mayBeUnproven)) } })).toEqual([
      'Alder carries farther than birch. Not shown. The shots bear: no gap that they can tell, anything from 3 yards shorter to 7 yards farther would fit.',
    ]);
  });

  test('level: no gap that matters', () => {
    const shots = {
      'Carry (yd)': { alder: around(230.1, 0.5), birch: around(230, 0.5), cedar: around(225) },
    };
    expect(printed({ shots, front: { claims: claims(farther('alder', 'birch', mayBeUnproven)) } })).toEqual([
      'Alder carries farther than birch. Not shown. The shots bear: no gap that matters, any gap is under 5 yards.',
    ]);
  });

  test('a gap that is real and too small to matter', () => {
    const shots = {
      'Carry (yd)': { alder: around(232, 0.2), birch: around(230, 0.2), cedar: around(225, 0.2) },
    };
    expect(printed({ shots, front: { claims: claims(farther('alder', 'birch')) } })).toEqual([
      'Alder carries farther than birch. Borne out. The shots bear: farther, 1.1 to 2.9 yards, too little to matter.',
    ]);
  });

  test('hit one after another: the gap is named, and its cause left open, in one sentence', () => {
    const lines = printed({
      order: 'one after another',
      front: { claims: claims(farther('alder', 'cedar', mayBeUnproven)) },
    });
    expect(lines).toEqual([
      'Alder carries farther than cedar. Not shown. The shots bear: farther, 7 to 17 yards; but all shots with Alder came before those with Cedar, so the cause is open.',
    ]);
  });

  test('seen, not planned: what was borne out on a metric not chosen before', () => {
    const shots = {
      ...threeHeads,
      'Ball Speed (mph)': { alder: around(150, 0.2), birch: around(145, 0.2), cedar: around(140, 0.2) },
    };
    const say = 'say: Alder is faster, metric: ball_speed, more: alder, than: birch';
    expect(printed({ shots, front: { claims: claims(say) } })).toEqual([
      'Alder is faster. Seen, not planned. The shots bear: faster off the face, 4.1 to 5.9 mph.',
    ]);
  });

  test('spread: steadier with both spreads, or why nothing can be said', () => {
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
      'Alder is steadier. Borne out. The shots bear: steadier, 1.4 yards of spread against 6 yards.',
      'Birch is steadier. Not shown. The shots bear: no gap in spread that they can tell.',
    ]);
    const few = {
      'Carry (yd)': { alder: around(230, 0.3).slice(0, 8), birch: around(230), cedar: around(230) },
    };
    expect(printed({ shots: few, front: { claims: claims(tighter('alder', 'birch')) } })).toEqual([
      'Alder is steadier. Not shown. The shots bear: nothing about spread, as that takes 12 shots with each and there are eight.',
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
      'Alder is straighter. Seen, not planned. The shots bear: nearer the line, 18.5 to 20.0 yards.',
    ]);
  });

  test('too few shots', () => {
    const shots = { 'Carry (yd)': { alder: [240, 241, 242, 243], birch: around(230), cedar: around(225) } };
    expect(printed({ shots, front: { claims: claims(farther('alder', 'birch', mayBeUnproven)) } })).toEqual([
      'Alder carries farther than birch. Not shown. The shots bear: nothing, four shots are too few to judge.',
    ]);
  });

  test('metres where the shop prints metres', () => {
    const shop = 'name: Example Shop\ndefaults: {units: metres}';
    expect(printed({ shop, front: { claims: claims(farther('alder', 'cedar')) } })).toEqual([
      'Alder carries farther than cedar. Borne out. The shots bear: farther, 7 to 15 metres.',
    ]);
  });

  test('all counted', () => {
    const { telling } = reportOf({
      front: { claims: claims(farther('alder', 'cedar'), farther('alder', 'cedar', ', by_at_least: 10 yd')) },
    });
    expect(claimCount(telling)).toBe('Two claims: one borne out and one weaker than said.');
    expect(claimCount(reportOf({}).telling)).toBe('');
  });
});

describe('a claim that stops the build', () => {
  test('contradicted: the message says what the shots would bear', () => {
    expect(problemsOf({ front: { claims: claims(farther('cedar', 'alder')) } })).toEqual([
      'error claim-contradicted 14:11 | a claim that the shots do not speak against | "cedar carries farther than alder" | ' +
        'The shots bear: Alder farther than Cedar, 7 to 17 yards. Say that, or take the claim out.',
    ]);
  });

  test('contradicted by size', () => {
    expect(
      problemsOf({ front: { claims: claims(farther('alder', 'cedar', ', by_at_least: 20 yd')) } }),
    ).toEqual([
      'error claim-contradicted 14:11 | a claim that the shots do not speak against | "alder carries farther than cedar" | ' +
        'The shots bear: farther, 7 to 17 yards. Say that, or take the claim out.',
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
      'error claim-not-shown 14:11 | a claim that the shots show, here a gap of 3 yards or more | "alder carries farther than birch" | ' +
        'The shots bear: no gap that they can tell, anything from 3 yards shorter to 7 yards farther would fit. Say that, or take the claim out; ' +
        'with "allow_unproven: yes" it is printed as not shown.',
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
        'Reword it, or make another claim of it. The shots bear: farther, 7 to 17 yards.',
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
