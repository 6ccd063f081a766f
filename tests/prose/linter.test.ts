import { describe, expect, test } from 'vitest';
import type { Problem } from '../../src/problems/problem.ts';
import { around, madeReport } from '../findings/reportOf.ts';

/** Two claims stand (Alder over Cedar in carry, Alder over Birch in ball speed), one does not. */
const claims = `
  - {say: Alder carries farther than Cedar, metric: carry, more: alder, than: cedar}
  - {say: Alder is faster than Birch off the face, metric: ball_speed, more: alder, than: birch}
  - {say: Birch carries farther than Cedar, metric: carry, more: birch, than: cedar, allow_unproven: yes}`;

const shots = {
  'Carry (yd)': { alder: around(237), birch: around(229).toReversed(), cedar: around(226) },
  'Ball Speed (mph)': { alder: around(150, 0.2), birch: around(146, 0.2), cedar: around(145, 0.2) },
  'Spin Rate (rpm)': { alder: around(2610, 20), birch: around(2690, 20), cedar: around(2800, 20) },
};

const front = {
  claims,
  held: '{shaft: one 60 g stiff shaft moved across, length: 45.25 in, loft: 9°}',
  conditions:
    '{place: "indoors, net at 4 m", surface: mat, monitor: {kind: camera, stated_accuracy: {carry: 2 yd}}}',
};

const problemsOf = (
  narrative: string,
  rest: { shop?: string; front?: Readonly<Record<string, string>> } = {},
): readonly Problem[] =>
  madeReport({ shots, narrative, ...rest, front: { ...front, ...rest.front } }).problems;

const kindsOf = (narrative: string): string[] => problemsOf(narrative).map(({ kind }) => kind);

/** Ordinary paragraphs of fitters, our own; nothing in them is to be remarked on. */
const ordinary: readonly string[] = [
  'We hit twelve turns in one afternoon. In every turn each head was hit once, and the golfer did not see the numbers until the end.',
  'The session took longer than planned, so we stopped for tea after the sixth turn. Nobody hurried.',
  'Alder carried farther than Cedar from the first turn to the last.',
  'For this golfer {{ answer carry alder birch }}. We had not expected that.',
  'Cedar was shorter than Alder, which is what its owner hoped we would not find.',
  'All three heads were hit with one 60 g shaft, 45.25 inches long, and a loft of 9°.',
  'The net hangs 4 m from the tee, so the ball is in the air for a blink only.',
  'Alder averaged {{ mean carry alder }} and Cedar {{ mean carry cedar }}; the chart below shows every shot. {{ chart shots }}',
  'The two averages were 237 yards and 226 yards. Whether the next golfer sees the same we cannot say.',
  'Does a newer head always carry farther? One test cannot answer that.',
  'We do not say that Birch is longer than Cedar: these shots cannot tell.',
  'Neither Birch nor Cedar went farther than the other by enough to matter.',
  'The golfer felt that Birch came off faster, and said so before the numbers were shown.',
  'We wanted to know whether the higher launch of one head would cost it distance. It is still an open question.',
  'A shorter tee suited this golfer, who normally tees it lower than we do.',
  'Golfers with a higher handicap may strike it less evenly, and may see another gap altogether.',
  'Our objective was a fair order of hitting, and the objective of the next test is a second golfer.',
  'Each head was cleaned with a dry cloth between turns. The score lines of one were worn, and we left them so.',
  'This test says nothing about forgiveness, and nothing about scores.',
  'We sell all three heads, so we are not independent; the interest is printed above.',
  'You will find every shot in the table below, and you will see that they overlap.',
  'If you like the look of Birch, nothing here speaks against it.',
  'We always use the same mat, and we never take the first five swings into the averages.',
  'The ball was new for everyone who hit, and nobody outside the shop saw the page first.',
  'Faster greens in the afternoon had nothing to do with it: we hit indoors.',
  'The monitor is stated to be right to about 2 yards in carry.',
  'Spin averaged about 2,600 rpm with Alder, a number that suits this swing.',
  '## How it went\n\n- warm-up: ten balls with a club not in the test\n- then twelve turns\n- a break of 15 minutes in the middle',
  '| Head | What we noted |\n| --- | --- |\n| Alder | a dull sound |\n| Cedar | paint worn at the toe |',
  "We no longer stock the older sleeve. The price on the shelf is lower than the one on the maker's list.",
  'Run `npm run check` to see `Birch is longer than Alder by 90 yards` refused.\n\n```\nAlder beats Birch, guaranteed.\n```',
  'Alder was faster than Birch off the face on nearly every turn.',
  'Cedar carried farther than Alder on two of twelve turns.',
  'Where Cedar flew farther than Alder, the strike was nearer the middle.',
  'The best shot with Cedar went farther than the worst with Alder.',
  'The golfer won a cup last year. The monitor beat us at first: it wanted a new battery.',
  'Nobody can promise you more from twelve shots.',
  'The longest part of the day was setting up the net.',
  'Spin averaged about 2 600 rpm with Alder, typed with a blank.',
  'All three heads come with a two-year guarantee.',
  'No winner is implied, and no loser either.',
  'A gap by itself proves nothing.',
  'In the first place we wanted to know how far it flies.',
  'We stopped sooner than planned, because of rain.',
  'The two averages were two hundred and thirty-seven yards and two hundred and twenty-six yards.',
  '| Head | Average carry (yd) | Price |\n| --- | --- | --- |\n| Alder | 237 | 449 |\n| Cedar | 226 | 199 |',
  'The golfer felt that spin dropped on the way from Cedar to Alder.',
  'The guarantee on the shaft runs for two years.',
  'The mat is 1.5 m wide and lies flat.',
  'We tested at 21 °C and 120 m above the sea.',
  'We do not know whether the ball would stop sooner on grass.',
  'His best round this year was played with an older club.',
  'Cedar is heavier than Alder by a few grams.',
  'Whoever wants the raw numbers finds them at the foot of the page.',
];

/** Paragraphs that say more than the shots bear, each with what is to be remarked on. */
const overdone: readonly (readonly [paragraph: string, kind: string])[] = [
  ['Birch carried farther than Cedar in almost every turn.', 'comparative-unclaimed'],
  ['Alder is farther than Birch, and that is that.', 'comparative-unclaimed'],
  ['Cedar carried farther than Alder when it mattered.', 'comparative-contradicted'],
  ['Alder went longer than Birch.', 'comparative-unclaimed'],
  ['Birch was the straightest of the three.', 'comparative-unclaimed'],
  ['Cedar gave a tighter group than we had seen all week.', 'comparative-unclaimed'],
  ['With Birch the ball spins less, so it runs out.', 'comparative-unclaimed'],
  ['Cedar launched higher than the two new heads.', 'comparative-unclaimed'],
  ['Birch came off the face faster than Cedar.', 'comparative-unclaimed'],
  ['Birch adds yards and gains ball speed over the old head.', 'comparative-unclaimed'],
  ['Birch has more carry in it than people think.', 'comparative-unclaimed'],
  ['Birch is better than Cedar in every way that counts.', 'comparative-unclaimed'],
  ['Of the three heads Birch flew the best.', 'comparative-unclaimed'],
  ['Birch was more consistent than the other two.', 'comparative-unclaimed'],
  ['The longest head by some way was Birch.', 'comparative-unclaimed'],
  ['Birch is a longer head than Cedar.', 'comparative-unclaimed'],
  ['Birch is longer than Cedar.', 'comparative-unclaimed'],
  ['The new heads are steadier than the old one.', 'comparative-unclaimed'],
  ['Birch is the longest.', 'comparative-unclaimed'],
  ['Expect more distance from Birch.', 'comparative-unclaimed'],
  ['Birch picks up 12 yards on Cedar.', 'comparative-unclaimed'],
  ['Dispersion was tighter with Birch.', 'comparative-unclaimed'],
  ['Simply the best head we have hit.', 'comparative-unclaimed'],
  ['Birch clearly has the edge over Cedar.', 'comparative-unclaimed'],
  ['Cedar fell short of Birch on average.', 'comparative-unclaimed'],
  ['There was no difference between Birch and Cedar.', 'comparative-unclaimed'],
  ['Birch and Cedar are equal.', 'comparative-unclaimed'],
  ['The results are significant.', 'absolute-word'],
  ['Birch comes with a guarantee of more carry.', 'absolute-word'],
  ['Birch is worth every penny.', 'contest-word'],
  ['First place: Birch.', 'contest-word'],
  ['Birch took first place.', 'contest-word'],
  ['Birch is a no-brainer.', 'contest-word'],
  ['It may be time for an upgrade.', 'contest-word'],
  ['Shots with Birch stop quicker on a firm green.', 'outcome-unmeasured'],
  ['The next one will finish nearer the pin.', 'outcome-unmeasured'],
  ['Alder averaged two hundred and fifty-one yards.', 'number-differs'],
  ['Alder gave us thirty-three yards on the day.', 'number-unmatched'],
  ['A gap of fifty yards opened.', 'number-differs'],
  ['| Head | Carry (yd) |\n| --- | --- |\n| Alder | 251 |', 'number-unmatched'],
  ['| Head | Carry |\n| --- | --- |\n| Alder | 251 yards |', 'number-unmatched'],
  ['| Head | Spin, rpm |\n| :-- | --: |\n| Alder | 3,400 |', 'number-unmatched'],
  ['Spin dropped on the way from Alder to Birch.', 'comparative-unclaimed'],
  ['Carry grew from Cedar to Birch.', 'comparative-unclaimed'],
  ['Birch corrects your slice.', 'promise-made'],
  ['Birch is an upgrade for anyone with an older head.', 'contest-word'],
  ['Our pick: Birch.', 'contest-word'],
  ['Alder averaged 251 yards.', 'number-differs'],
  ['The gap was a good 20 yards on average.', 'number-differs'],
  ['Ball speed rose to 155.3 mph with Alder.', 'number-unmatched'],
  ['Cedar spun at 3,400 rpm.', 'number-unmatched'],
  ['The head sits 2.5° open at address.', 'number-unmatched'],
  ['Fifteen yards is what this golfer found.', 'number-unmatched'],
  ['The numbers prove it.', 'absolute-word'],
  ['Alder is without doubt the one to hit.', 'absolute-word'],
  ['Alder always carries past the bunker.', 'absolute-word'],
  ['With the right shaft you will gain ground.', 'promise-made'],
  ['Put it in the bag and your drives will find the middle.', 'promise-made'],
  ['Alder beats Birch.', 'contest-word'],
  ['The winner is plain to see.', 'contest-word'],
  ['Alder crushes the old head.', 'contest-word'],
  ['Alder is the more forgiving head.', 'outcome-unmeasured'],
  ['Golfers score lower with a head like this.', 'outcome-unmeasured'],
  ['The face is durable and wears well.', 'outcome-unmeasured'],
  ['Birch leaves Cedar for dead.', 'contest-word'],
  ['Birch is in a class of its own.', 'contest-word'],
  ['Nothing comes close to Birch.', 'contest-word'],
  ['Birch is the one to buy.', 'contest-word'],
  ['Birch is a clear step up from Cedar.', 'contest-word'],
  ['The numbers speak for themselves: Birch.', 'contest-word'],
  ['Birch rockets past Cedar.', 'contest-word'],
  ['Birch is second to none.', 'contest-word'],
  ['Birch edges Cedar.', 'contest-word'],
  ['Birch came out on top.', 'contest-word'],
  ['Birch is worth the extra money.', 'contest-word'],
  ['You cannot go wrong with Birch.', 'promise-made'],
  ['Birch will knock strokes off your round.', 'promise-made'],
  ['Expect ten extra yards with Birch.', 'promise-made'],
  ['Buy Birch and you hit it past your friends.', 'promise-made'],
  ['No golfer will be disappointed.', 'promise-made'],
  ['Your slice will be gone.', 'promise-made'],
  ['Birch holds its line better in the wind.', 'outcome-unmeasured'],
  ['Cedar lags behind Birch.', 'comparative-unclaimed'],
  ['Carry climbs by 9 yards from Cedar to Birch.', 'comparative-unclaimed'],
  ['This was an unbiased test.', 'independence-claimed'],
  ['We tested them independently, as we do with everything.', 'independence-claimed'],
  ['Here is an objective look at three heads.', 'independence-claimed'],
];

describe('the linter of the narrative', () => {
  test('there are at least thirty paragraphs of either kind', () => {
    expect(Math.min(ordinary.length, overdone.length)).toBeGreaterThanOrEqual(30);
  });

  test.each(ordinary)('passes: %s', (paragraph) => {
    expect(problemsOf(paragraph).map(({ kind, found }) => `${kind}: ${found}`)).toEqual([]);
  });

  test('takes an average for no comparison', () => {
    expect(kindsOf('Alder carried 251 yards on average.')).toEqual(['number-differs']);
  });

  test.each(overdone)('remarks on: %s', (paragraph, kind) => {
    expect(kindsOf(paragraph)).toContain(kind);
  });

  test('warnings do not stop the build; with "strict: yes" in shop.yaml they do', () => {
    const narrative = 'Alder beats Birch.';
    expect(madeReport({ shots, front, narrative }).report).not.toBeNull();
    const strict = madeReport({ shots, front, narrative, shop: 'name: Example Shop\nstrict: yes' });
    expect(strict.report).toBeNull();
    expect(strict.problems.map(({ kind, severity }) => [kind, severity])).toEqual([
      ['contest-word', 'error'],
    ]);
  });

  test('line and column are those of the file', () => {
    const narrative = 'First line.\n\nSecond paragraph, and here\nAlder beats Birch, they say.';
    const [problem] = problemsOf(narrative);
    // Front matter of fifteen lines between dashes, and an empty one.
    const lines = madeReport({ shots, front, narrative }).report?.source.body.firstLine ?? 0;
    expect([problem?.file, problem?.line, problem?.column]).toEqual([
      'reports/invented/report.md',
      lines + 1 + 3,
      7,
    ]);
  });

  test('independence may be claimed by who has no interest', () => {
    const contenders =
      '{alder: {label: Alder, supplied_by: bought by us, sold_here: no}, birch: {label: Birch, supplied_by: bought by us, sold_here: no}, ' +
      'cedar: {label: Cedar, supplied_by: bought by us, sold_here: no}}';
    expect(problemsOf('This was an unbiased test.', { front: { contenders } })).toEqual([]);
    expect(problemsOf('This was an unbiased test.').map(({ kind }) => kind)).toEqual([
      'independence-claimed',
    ]);
  });
});

const inWords = (narrative: string): string[] =>
  problemsOf(narrative).map(({ expected, found, cure }) => `expected ${expected}; found ${found}. ${cure}`);

describe('a reference that is not closed', () => {
  const narrative =
    'Alder averaged {{ mean carry alder }}.\n\nCedar averaged\n{{ mean carry cedar, and that is that.';

  test('is an error with its place', () => {
    const { report, problems } = madeReport({ shots, front, narrative });
    expect(report).toBeNull();
    const first = madeReport({ shots, front, narrative: '' }).report?.source.body.firstLine ?? 0;
    expect(problems).toMatchObject([
      {
        kind: 'reference-unclosed',
        severity: 'error',
        file: 'reports/invented/report.md',
        line: first + 1 + 3,
        column: 1,
        expected: 'two closing braces in the same paragraph: {{ mean carry alder }}',
        found: '{{ mean carry cedar, and that is that.',
        cure: 'Close the reference with }}, or write the braces as code: `{{`.',
      },
    ]);
  });

  test.each([
    ['in a table', '| Head | Carry |\n| --- | --- |\n| Alder | {{ mean carry alder |'],
    ['closed in the next paragraph only', 'Alder: {{ mean carry\n\nalder }}'],
    ['twice in a paragraph', 'Alder {{ mean and Cedar {{ mean'],
    ['after one that is closed', '{{ mean carry alder }} and {{ mean carry cedar'],
  ])('%s', (_where, text) => {
    expect(kindsOf(text)).toEqual(['reference-unclosed']);
  });

  test('as code it is no reference', () => {
    expect(kindsOf('Write `{{` before a reference.\n\n```\n{{ mean\n```')).toEqual([]);
  });
});

describe('long narratives', () => {
  test('beyond 200,000 characters one is not read, and the message says what to do', () => {
    const narrative = 'One word more. '.repeat(14_000);
    const found = problemsOf(narrative);
    expect(
      found.map(({ kind, severity, expected, found: got, cure }) => [kind, severity, expected, got, cure]),
    ).toEqual([
      [
        'narrative-too-long',
        'error',
        'at most 200,000 characters below the front matter',
        '210,002 characters',
        'Tell it in fewer words. Shots belong into the session file, and long notes into a page of their own that the report links to.',
      ],
    ]);
  });

  test.each([
    ['numbers', '251.5 yards ', 'number-unmatched', 16_000],
    ['comparisons', 'Birch went farther than Cedar ', 'comparative-unclaimed', 6_000],
    ['references', '{{ nothing }} ', 'unknown-reference', 13_000],
  ])(
    '%s by the thousand without one stop are all found',
    (_, one, kind, count) => {
      const found = problemsOf(one.repeat(count)).filter((problem) => problem.kind === kind);
      // A cut of a sentence that never stops may part a comparison from what it compares.
      expect(found.length).toBeGreaterThan(0.98 * count);
      expect(found.length).toBeLessThanOrEqual(count);
      expect(found.at(-1)?.column).toBe(
        (count - 1) * one.length + (kind === 'comparative-unclaimed' ? 12 : 1),
      );
    },
    120_000,
  );

  test.each([
    ['asterisks', '*'],
    ['brackets', '['],
    ['closing brackets', ')'],
    ['one long word', 'x'],
    ['one long number', '7'],
    ['numbers of three digits', '123 '],
    ['names', 'Alder '],
    ['words that may begin a comparison', 'gained '],
    ['links that never end', '[a]('],
    ['tables', 'a|b\n-|-\n\n'],
  ])(
    '190,000 characters of %s are read',
    (_, one) => {
      expect(kindsOf(one.repeat(190_000 / one.length))).toEqual([]);
    },
    120_000,
  );

  test('a long sentence without a stop is read to its end', () => {
    const filler = 'and then we waited for a while '.repeat(200);
    expect(kindsOf(`We waited ${filler}and Birch carried farther than Cedar.`)).toEqual([
      'comparative-unclaimed',
    ]);
  });
});

/** Alder and Birch lead in carry, and are named. */
const leadersOffered =
  ' Ready to take in its place: {{ answer carry alder birch }}, which prints "Alder carried farther than Birch, by how much is uncertain: likely 3 to 13 yards." ' +
  'The shots support it as a claim; write under "claims": - {say: "Alder carried farther than Birch", metric: carry, more: alder, than: birch}.';

describe('the messages of the linter', () => {
  test('a comparison nobody claims: which reference would say it', () => {
    expect(inWords('With Birch the ball spins less than with Cedar.')).toEqual([
      'expected a comparison that a claim of the report supports, or one from the findings; ' +
        'found "spins less" in "With Birch the ball spins less than with Cedar.". ' +
        'Ready to take in its place: {{ answer spin_rate birch cedar }}, which prints "Cedar spun about 120 rpm more than Birch, too little to matter ' +
        '(one of two measures looked at; fewer than one of them shows such a difference by chance)." ' +
        'The shots support it as a claim; write under "claims": - {say: "Birch spun less than Cedar", metric: spin_rate, less: birch, than: cedar}.',
    ]);
  });

  test('a comparison whose claim does not stand: what the shots support', () => {
    expect(inWords('Birch carried farther than Cedar.')).toEqual([
      'expected a comparison that a claim of the report supports, or one from the findings; ' +
        'found "farther" in "Birch carried farther than Cedar.". ' +
        'The claim "Birch carries farther than Cedar" does not stand. Ready to take in its place: {{ answer carry birch cedar }}, ' +
        'which prints "We cannot tell whether Birch or Cedar carried farther: anything from 8 yards for Birch to 2 for Cedar."',
    ]);
  });

  test('two called alike that the shots cannot tell apart', () => {
    expect(inWords('There was no difference between Birch and Cedar.')).toEqual([
      'expected two called alike only where the shots show it: seeing no difference does not show that there is none; ' +
        'found "no difference" in "There was no difference between Birch and Cedar.". The shots say: We cannot tell whether Birch or Cedar carried farther: anything from 8 yards for Birch to 2 for Cedar.',
    ]);
  });

  test('a number from nowhere', () => {
    expect(inWords('With Alder 251 yards came up.')).toEqual([
      'expected a number that the shots or the front matter give; found "251 yards" in "With Alder 251 yards came up.". ' +
        'Let the value come from the shots: {{ mean carry alder }} prints 237 yards; or write it where it was recorded, in the front matter.',
    ]);
  });

  test.each([
    [
      'The numbers prove it.',
      'expected words that leave room for doubt, as any test of some shots does; found "prove" in "The numbers prove it.". Say what these shots showed: "in this test", "for this golfer".' +
        leadersOffered,
    ],
    [
      'You will gain ground.',
      'expected what this golfer saw, not what a reader will see; found "You will gain" in "You will gain ground.". Say what happened in the test: "this golfer carried it ...". Another golfer may differ.' +
        leadersOffered,
    ],
    [
      'Alder crushes Birch.',
      'expected plain words for a comparison; found "crushes" in "Alder crushes Birch.". Say in what, and by how much.' +
        leadersOffered,
    ],
    [
      'Alder is forgiving.',
      'expected what the shots can show; found "forgiving" in "Alder is forgiving.". Leave it out, or say that forgiveness was not part of the test.',
    ],
    [
      'Our test is unbiased.',
      'expected no word for independence from a shop that sells, borrows or is paid for what it tests; found "unbiased" in "Our test is unbiased.". Take the word out: the report prints the interest itself.',
    ],
  ])('%s', (narrative, message) => {
    expect(inWords(narrative)[0]).toBe(message);
  });

  test('a long sentence is quoted in part', () => {
    const [message] = inWords(
      'On the whole, and after all that we have seen in these two long and rainy afternoons, Alder crushes Birch.',
    );
    expect(message).toContain(
      'found "crushes" in "On the whole, and after all that we have seen in these two l...".',
    );
  });
});

describe('a narrative that says the opposite of its data', () => {
  test.each([
    [
      'Cedar carried farther than Alder.',
      'farther',
      'Alder carried farther than Cedar: about 11 yards, likely 6 to 16',
    ],
    [
      'Alder flew shorter than Cedar.',
      'shorter',
      'Alder carried farther than Cedar: about 11 yards, likely 6 to 16',
    ],
    [
      'The ball came off faster with Birch than with Alder.',
      'faster',
      'Alder had a higher ball speed than Birch: about 4.0 mph, likely 3.0 to 5.0',
    ],
    [
      'Alder has more spin than Cedar.',
      'more spin',
      'Cedar spun about 200 rpm more than Alder, too little to matter',
    ],
    [
      'Spin dropped on the way from Alder to Cedar.',
      'Spin dropped',
      'Cedar spun about 200 rpm more than Alder, too little to matter',
    ],
  ])('does not build: %s', (narrative, word, bears) => {
    const { report, problems } = madeReport({ shots, front, narrative });
    expect(report).toBeNull();
    const [problem, ...others] = problems.filter(({ severity }) => severity === 'error');
    expect(others).toEqual([]);
    expect(problem?.kind).toBe('comparative-contradicted');
    expect(problem?.found).toContain(`"${word}" in "`);
    expect(problem?.cure).toContain(`The shots support: ${bears}`);
  });

  test('what the shots leave open is a warning only', () => {
    expect(
      madeReport({ shots, front, narrative: 'Cedar carried farther than Birch.' }).report,
    ).not.toBeNull();
  });
});

describe('the answers that stand on pages', () => {
  const at = (changes: Readonly<Record<string, string>>): string[] =>
    problemsOf('', { front: changes }).map(({ kind, columnName }) => `${kind} ${columnName}`);

  test('title and summary are read as the narrative is', () => {
    expect(
      at({
        title: 'Alder beats Birch',
        summary: 'Birch carries farther than Cedar. Alder averaged 251 yards.',
      }),
    ).toEqual(['contest-word title', 'comparative-unclaimed summary', 'number-differs summary']);
    expect(
      at({ title: 'Which head carries farther?', summary: 'Three heads, one shaft, one golfer.' }),
    ).toEqual([]);
  });

  test('a claim may compare and name its own size, not another, and makes no contest of it', () => {
    const say = (words: string, size = ''): Readonly<Record<string, string>> => ({
      claims: `\n  - {say: "${words}", metric: carry, more: alder, than: cedar${size}}`,
    });
    expect(at(say('Alder carries at least 4 yards farther than Cedar', ', by_at_least: 4 yd'))).toEqual([]);
    expect(at(say('Alder carries at least 27 yards farther than Cedar', ', by_at_least: 4 yd'))).toEqual([
      'number-unmatched claims[1].say',
    ]);
    expect(at(say('Alder crushes Cedar'))).toEqual(['contest-word claims[1].say']);
    expect(at(say('You will love Alder'))).toEqual(['promise-made claims[1].say']);
  });
});

describe('numbers in prose', () => {
  test.each([
    ['a mean, rounded', '237 yards', true],
    ['a mean, to a tenth', '237.0 yards', true],
    ['the same in metres', '216.7 m', true],
    ['the next tenth', '237.2 yards', false],
    ['a mean off by one', '235 yards', false],
    ['roughly', 'about 235 yards', true],
    ['a least reading', '230 yards', true],
    ['a range from the shots', '230 to 245 yards', true],
    ['a range whose end is made up', '230 to 252 yards', false],
    ['a number in words', 'eleven yards', true],
    ['the gap that matters', '5 yards', true],
    ['a number of the front matter', '45.25 inches', true],
    ['an angle of the front matter', '9 degrees', true],
    ['another angle', '11 degrees', false],
    ['spin as pages print it, in steps of 50', '2,600 rpm', true],
    ['spin without a comma', '2600rpm', true],
    ['temperature is no reading of a shot', '19 °C', true],
    ['money and minutes are none either', '240 pounds and 15 minutes', true],
    ['shots are counted, not measured', '12 shots', true],
    ['a speed in kilometres an hour', '241.4 km/h', true],
    ['a hyphen between number and unit', 'a 237-yard average', true],
  ])('%s: %s', (_what, written, known) => {
    expect(kindsOf(`We noted ${written} there.`)).toEqual(known ? [] : ['number-unmatched']);
  });
});

describe('names', () => {
  const honest: readonly string[] = [
    'Birch Max 9°',
    'Alder Pro',
    'Alder LS 10.5',
    'Birch X',
    'Cedar 2',
    'No. 1',
    'Longer shaft',
    'Shorter by half an inch',
    'Long',
    'Longest setting',
    'Higher loft, 10.5°',
    'Lighter head',
    'Fast 60 stiff',
    'Best-selling ball',
    'Best fit setting',
    "Golfer's own driver",
    'Champion 9°',
    'Used, about 40 rounds',
    'Fresh grooves',
    'Worn grooves',
    'Waterproof cover',
    'Tour 64 g',
    'Hi-Launch 9',
    'Draw setting',
    'New ball',
    'Range ball',
  ];

  test('that are honest pass, as label and as short name', () => {
    const found = honest.flatMap((label) =>
      problemsOf('', {
        front: {
          claims: '[]',
          contenders:
            `{alder: {label: ${JSON.stringify(label)}, supplied_by: our stock, sold_here: new}, ` +
            `birch: {label: Quince, short: ${JSON.stringify(label.slice(0, 14) + ' Q')}, supplied_by: our stock, sold_here: new}, ` +
            'cedar: {label: Cedar head, supplied_by: our used stock, sold_here: used}}',
        },
      }).map(({ kind, found: what }) => `${label}: ${kind} ${what}`),
    );
    expect(found).toEqual([]);
  });

  const named = (label: string): readonly Problem[] =>
    problemsOf('', {
      front: {
        claims: '[]',
        contenders:
          `{alder: {label: ${JSON.stringify(label)}, supplied_by: our stock, sold_here: new}, ` +
          'birch: {label: Birch 9°, supplied_by: our stock, sold_here: new}, ' +
          'cedar: {label: Cedar 9°, supplied_by: our used stock, sold_here: used}}',
      },
    });

  test.each([
    ['Alder, proven best by far,', ['absolute-word', 'contest-word']],
    ['The best head', ['contest-word']],
    ['Alder, the longest driver', ['contest-word']],
    ['Guaranteed Alder', ['absolute-word']],
    ['Alder (you will gain yards)', ['promise-made']],
    ['The winner', ['contest-word']],
  ])('that praise are errors: %s', (label, kinds) => {
    expect(named(label).map(({ kind, severity }) => [kind, severity])).toEqual(
      kinds.map((kind) => [kind, 'error']),
    );
  });

  test('are placed, quoted, and told what to do', () => {
    const [first, second] = named('Alder, proven best by far,');
    expect(first).toMatchObject({
      columnName: 'contenders.alder.label',
      found: '"proven" in "Alder, proven best by far,"',
    });
    expect(second).toMatchObject({
      columnName: 'contenders.alder.label',
      expected: 'a name that says what it is, and not how good: it stands in every answer',
      found: '"best" in "Alder, proven best by far,"',
      cure: 'Take the praise out of the name; what the shots support is said by the answers themselves.',
    });
    const short = 'label: Alder 9°, short: Best by far';
    const contenders = `{alder: {${short}, supplied_by: our stock, sold_here: new}, birch: {label: Birch 9°, supplied_by: our stock, sold_here: new}, cedar: {label: Cedar 9°, supplied_by: our used stock, sold_here: used}}`;
    expect(
      problemsOf('', { front: { claims: '[]', contenders } }).map(({ columnName }) => columnName),
    ).toEqual(['contenders.alder.short', 'contenders.alder.short']);
    expect(problemsOf('', { front: { varied: 'best head' } })).toMatchObject([
      { kind: 'contest-word', severity: 'error', columnName: 'varied' },
    ]);
  });
});

describe('the question', () => {
  test.each([
    'Does either new head carry farther than the used one?',
    'Which of these heads carries farther for a middling swing?',
    'Does one of three shafts in the same driver head carry farther for golfers of different speed?',
    'How much spin does a 56-degree wedge lose from wet rough as its grooves wear?',
    'How much farther does Alder carry than Cedar?',
    'Is a dearer ball always longer?',
    'Is Alder really the best of the three for this golfer?',
    'Which head is the most forgiving?',
    'Does the range ball fall short of a new one with a 7-iron?',
    'Is either head better from the turf?',
    'Does any of the five new heads carry farther than the one that we already sell the most of?',
    'What does half an inch of length do to ball speed?',
    'Can a 4-hybrid replace a long iron for 180 yards?',
    'Whether Alder carries farther than Birch',
  ])('may ask: %s', (question) => {
    expect(problemsOf('', { front: { question: JSON.stringify(question) } })).toEqual([]);
  });

  test.each([
    ['Birch carries farther than Cedar', 'warning'],
    ['Why is Alder the best by far?', 'error'],
    ['You will gain ten yards with Alder.', 'warning'],
  ])('may not answer: %s', (question, severity) => {
    const found = problemsOf('', { front: { claims: '[]', question: JSON.stringify(question) } });
    expect(found.length).toBeGreaterThan(0);
    expect(found.every((problem) => problem.columnName === 'question')).toBe(true);
    expect(found[0]?.severity).toBe(severity);
  });
});

describe('what is told beside the shots', () => {
  test('is read for words to be careful with', () => {
    const found = problemsOf('', {
      front: {
        held: '{shaft: one proven 60 g shaft, length: 45.25 in, loft: 9°, also: {headcover: a must-have}}',
        conditions: '{place: "indoors, the best bay by far", surface: mat}',
        interests: '{paid_by: the shop, commission_or_gifts: none, seen_before: an impartial friend}',
      },
    });
    expect(found.map(({ kind, severity, columnName }) => [kind, severity, columnName])).toEqual([
      ['absolute-word', 'warning', 'held.shaft'],
      ['contest-word', 'warning', 'held.also.headcover'],
      ['absolute-word', 'warning', 'conditions.place'],
      ['independence-claimed', 'warning', 'interests.seen_before'],
    ]);
  });

  test('passes as fitters write it', () => {
    const held =
      '{shaft: one 60 g stiff shaft moved across, length: 45.25 in, loft: 9°, condition: "used, wears a new grip", notes: "longer hosel than Birch; lofts never measured by us"}';
    expect(problemsOf('', { front: { held } })).toEqual([]);
  });
});
