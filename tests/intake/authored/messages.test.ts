import { expect, test } from 'vitest';
import { problemsWith } from './example.ts';

/** What is wrong, the keys changed against the smallest report, and every problem in full: where | kind | expected | found | to do. */
const cases: readonly (readonly [string, Readonly<Record<string, string | null>>, readonly string[]])[] = [
  [
    'an unknown key near a known one',
    { sumary: 'x' },
    ['12:1 sumary | unknown-key | "summary" | sumary | Did you mean "summary"?'],
  ],
  [
    'an unknown key near none',
    { weather: 'fine' },
    [
      '12:1 weather | unknown-key | one of title, date, published, summary, status, withdrawn, superseded_by, aliases, invented_data, question, varied, held, contenders, primary, better, matters, plan, session, rows, order_sheet, columns, modelled, hitters, conditions, exclusions, interests, claims, corrections, replies, seen | weather | Remove the line, or use one of the keys above.',
    ],
  ],
  [
    'a required answer that is not there',
    { question: null },
    [
      '1:1 question | key-missing | what the test set out to answer, in one sentence | - | Add a line "question:" with the answer.',
    ],
  ],
  [
    'a required answer left blank',
    { question: '' },
    [
      '4:1 question | key-missing | what the test set out to answer, in one sentence | - | Write the answer after "question:".',
    ],
  ],
  [
    'a required answer missing further in',
    { hitters: '{one: {consent: yes}}' },
    [
      '9:11 hitters.one.role | key-missing | who hit, as a role: staff fitter, customer, professional | - | Add "role:" and its answer to hitters.one.',
    ],
  ],
  [
    'interests missing',
    { interests: null },
    [
      '1:1 interests | interests-missing | who paid, what was given, and who saw the report before it was published | - | Add a block "interests:" that answers paid_by, commission_or_gifts, seen_before; "none" and "nobody" are answers.',
    ],
  ],
  [
    'interests half answered',
    { interests: '{paid_by: the shop, seen_before:}' },
    [
      '10:1 interests.commission_or_gifts | interests-missing | whether there is a commission, sponsorship or gift, and which; "none" if there is none | - | Add "commission_or_gifts:" and its answer to interests.',
      '10:32 interests.seen_before | interests-missing | who outside the shop saw the report, or had a say in it, before it was published; "nobody" if so | - | Write the answer after "seen_before:".',
    ],
  ],
  [
    'a date that is none',
    { date: '2026-02-30' },
    [
      '3:7 date | value-invalid | a date as year-month-day, such as 2026-04-11 | 2026-02-30 | Write the date as year-month-day with two digits for month and day; the day must exist.',
    ],
  ],
  [
    'a date in another order',
    { date: '11/04/2026' },
    [
      '3:7 date | value-invalid | a date as year-month-day, such as 2026-04-11 | 11/04/2026 | Write the date as year-month-day with two digits for month and day; the day must exist.',
    ],
  ],
  [
    'a status nearly right',
    { status: 'publishd' },
    [
      '11:9 status | value-invalid | draft, published, withdrawn or superseded | publishd | Did you mean "published"?',
    ],
  ],
  [
    'withdrawn without a reason',
    { status: 'withdrawn' },
    [
      '1:1 withdrawn | key-missing | the day and the reason: {date: 2026-04-11, reason: ...} | - | Add a line "withdrawn:" with the answer.',
    ],
  ],
  [
    'superseded by nothing',
    { status: 'superseded' },
    [
      '1:1 superseded_by | key-missing | the slug of the report that replaces this one | - | Add a line "superseded_by:" with the answer.',
    ],
  ],
  [
    'text where a block is asked for',
    { interests: 'none' },
    [
      '10:12 interests | value-invalid | a block with the keys supplied, paid_by, commission_or_gifts, seen_before, sentence | none | Write each answer under its key, on an indented line or in { }.',
    ],
  ],
  [
    'a list where text is asked for',
    { title: '[one, two]' },
    [
      '2:8 title | value-invalid | the title of the report | a list of 2 | Write the title of the report as text after the colon.',
    ],
  ],
  [
    'one contender',
    { contenders: '{alder: {label: A, supplied_by: us, sold_here: no}}' },
    [
      '6:1 contenders | value-invalid | two to six contenders | 1 | Add the contender that this one is compared with.',
    ],
  ],
  [
    'an id with capitals and blanks',
    {
      contenders:
        '{Alder 9: {label: A, supplied_by: us, sold_here: no}, birch: {label: B, supplied_by: us, sold_here: no}}',
    },
    [
      '6:14 contenders.Alder 9 | value-invalid | an id of small letters, digits and hyphens, such as alder or birch-2 | Alder 9 | Use small letters, digits and single hyphens only; the name for readers goes into "label".',
    ],
  ],
  [
    'a contender with nothing',
    { contenders: '{alder:, birch: {label: B, supplied_by: us, sold_here: no}}' },
    [
      '6:14 contenders.alder | key-missing | a block with the keys label, short, article, match, build, supplied_by, sold_here, price | - | Write the answer after "alder:".',
    ],
  ],
  [
    'a short name too long',
    {
      contenders:
        '{alder: {label: A, supplied_by: us, sold_here: no, short: seventeen letters}, birch: {label: B, supplied_by: us, sold_here: no}}',
    },
    [
      '6:71 contenders.alder.short | value-invalid | a short name of 16 characters at most | seventeen letters | Shorten it; it is used in charts where the label is too long.',
    ],
  ],
  [
    'two contenders of one name',
    {
      contenders:
        '{alder: {label: A, supplied_by: us, sold_here: no}, birch: {label: a, supplied_by: us, sold_here: no}}',
    },
    [
      '6:80 contenders.birch.label | value-invalid | a name that no other contender has | a | Change one of the two; alder goes by that name already.',
    ],
  ],
  [
    'sold here or not',
    {
      contenders:
        '{alder: {label: A, supplied_by: us, sold_here: maybe}, birch: {label: B, supplied_by: us, sold_here: no}}',
    },
    [
      '6:60 contenders.alder.sold_here | value-invalid | new, used, both or no | maybe | Write new, used, both or no.',
    ],
  ],
  [
    'a price with a comma',
    {
      contenders:
        '{alder: {label: A, supplied_by: us, sold_here: no, price: {amount: "1,099", currency: EUR, on: 2026-04-01}}, birch: {label: B, supplied_by: us, sold_here: no}}',
    },
    [
      '6:80 contenders.alder.price.amount | value-invalid | the price in digits | 1,099 | Write digits with a decimal point where needed, without a currency sign and without commas.',
    ],
  ],
  [
    'a build sheet item mistyped',
    {
      contenders:
        '{alder: {label: A, supplied_by: us, sold_here: no, build: {lofft: 9}}, birch: {label: B, supplied_by: us, sold_here: no}}',
    },
    ['6:72 contenders.alder.build.lofft | unknown-key | "loft" | lofft | Did you mean "loft"?'],
  ],
  [
    'a build sheet item of its own',
    {
      contenders:
        '{alder: {label: A, supplied_by: us, sold_here: no, build: {polish: matt}}, birch: {label: B, supplied_by: us, sold_here: no}}',
    },
    [
      '6:72 contenders.alder.build.polish | unknown-key | an item of a build sheet, such as head, loft, shaft, length or grip | polish | Move it under "also:", which takes any key: {also: {polish: ...}}.',
    ],
  ],
  [
    'a listed contender without a file',
    { contenders: '[alder, birch]' },
    [
      '6:14 contenders[1] | contender-file-missing | a file contenders/alder.yaml | alder | Write contenders/alder.yaml with label, supplied_by and sold_here, or describe alder in the report.',
      '6:21 contenders[2] | contender-file-missing | a file contenders/birch.yaml | birch | Write contenders/birch.yaml with label, supplied_by and sold_here, or describe birch in the report.',
    ],
  ],
  [
    'a contender listed twice',
    { contenders: '[alder, alder]' },
    [
      '6:14 contenders[1] | contender-file-missing | a file contenders/alder.yaml | alder | Write contenders/alder.yaml with label, supplied_by and sold_here, or describe alder in the report.',
      '6:21 contenders[2] | contender-file-missing | a file contenders/alder.yaml | alder | Write contenders/alder.yaml with label, supplied_by and sold_here, or describe alder in the report.',
      '6:21 contenders[2] | value-invalid | each contender once | alder | Remove one of the two entries.',
    ],
  ],
  [
    'an unknown metric near a known one',
    { primary: 'cary' },
    [
      '7:10 primary | unknown-metric | a metric, such as carry, ball_speed or spin_rate | cary | Did you mean "carry"?',
    ],
  ],
  [
    'an unknown metric near none',
    { primary: 'feel' },
    [
      '7:10 primary | unknown-metric | a metric, such as carry, ball_speed or spin_rate | feel | Write one of club_speed, ball_speed, smash, launch_angle, launch_direction, spin_rate, spin_axis, back_spin, side_spin, attack_angle, club_path, face_angle, face_to_path, dynamic_loft, spin_loft, strike_across, strike_up, carry, total, side, curve, apex, descent_angle, hang_time.',
    ],
  ],
  [
    'three primaries',
    { primary: '[carry, ball speed, spin rate]' },
    [
      '7:10 primary | value-invalid | one metric, or a list of two at most | carry, ball_speed, spin_rate | Choose the one that the question asks for; the others are shown as found along the way.',
    ],
  ],
  [
    'one primary twice',
    { primary: '[ball speed, ball_speed]' },
    [
      '7:10 primary | value-invalid | one metric, or a list of two at most | ball_speed, ball_speed | Name each metric once.',
    ],
  ],
  [
    'better than what',
    { better: 'highest' },
    ['12:9 better | value-invalid | more, less or neither | highest | Write more, less or neither.'],
  ],
  [
    'a distance without a unit',
    { matters: '{carry: 5}' },
    [
      '12:18 matters.carry | unit-missing | a number with a unit, such as 5 yd or 4.5 m | 5 | Write the unit after the number: m, yd or ft.',
    ],
  ],
  [
    'a speed without a unit',
    { matters: '{ball speed: 2}' },
    [
      '12:23 matters.ball speed | value-invalid | a number with a unit, such as 2 mph or 1 m/s | 2 | Write the unit after the number: m/s, mph or km/h.',
    ],
  ],
  [
    'a unit of something else',
    { matters: '{carry: 5 mph}' },
    [
      '12:18 matters.carry | value-invalid | a distance in m, yd or ft, since that is what carry is | 5 mph | Write carry as 5 yd or 4.5 m.',
    ],
  ],
  [
    'a quantity in words',
    { matters: '{carry: five yards}' },
    [
      '12:18 matters.carry | value-invalid | a number with a unit, such as 5 yd or 4.5 m | five yards | Write carry as 5 yd or 4.5 m.',
    ],
  ],
  [
    'a gap of nothing',
    { matters: '{carry: 0 yd}' },
    [
      '12:18 matters.carry | value-invalid | a gap above zero | 0 yd | Write the smallest gap in carry that a customer should care about.',
    ],
  ],
  [
    'a gap below zero',
    { matters: '{carry: -5 yd}' },
    [
      '12:18 matters.carry | value-invalid | a number with a unit, such as 5 yd or 4.5 m, not below zero | -5 yd | Write carry as 5 yd or 4.5 m.',
    ],
  ],
  [
    'one metric under two spellings',
    { matters: '{ball speed: 2 mph, ball_speed: 3 mph}' },
    [
      '12:30 matters.ball_speed | value-invalid | each once | ball_speed | Keep one of "ball speed" and "ball_speed".',
    ],
  ],
  [
    'a file above the folder',
    { session: '../shots.csv' },
    [
      '8:10 session | path-outside-report | a file in the folder of the report, such as shots.csv | ../shots.csv | Put the file beside report.md and write its name alone.',
    ],
  ],
  [
    'a file by its absolute path',
    { session: '[shots.csv, /etc/shots.csv]' },
    [
      '8:22 session[2] | path-outside-report | a file in the folder of the report, such as shots.csv | /etc/shots.csv | Put the file beside report.md and write its name alone.',
    ],
  ],
  [
    'a file with backslashes',
    { session: 'day1\\shots.csv' },
    [
      '8:10 session | path-outside-report | a file in the folder of the report, such as shots.csv | day1\\shots.csv | Put the file beside report.md and write its name alone.',
    ],
  ],
  [
    'rows in some order',
    { rows: 'shuffled' },
    ['12:7 rows | value-invalid | not-in-hit-order | shuffled | Write not-in-hit-order.'],
  ],
  [
    'a column in a wrong unit',
    { columns: '{carry: {heading: Dist, unit: mph}}' },
    ['12:40 columns.carry.unit | value-invalid | a unit of carry: m, yd or ft | mph | Write m, yd or ft.'],
  ],
  [
    'a column without its heading',
    { columns: '{carry: {unit: m}}' },
    [
      '12:11 columns.carry.heading | key-missing | the heading as it stands in the CSV | - | Add "heading:" and its answer to columns.carry.',
    ],
  ],
  [
    'no hitter',
    { hitters: '{}' },
    [
      '9:10 hitters | value-invalid | at least one hitter | - | Add who hit: {one: {role: staff fitter, consent: yes}}.',
    ],
  ],
  [
    'a hitter who did not agree',
    { hitters: '{one: {role: customer, consent: no}}' },
    [
      '9:42 hitters.one.consent | value-invalid | yes, or yes and the day: yes, 2026-04-11 | no | Ask the hitter; only shots of hitters who agreed may be published. Inside { } write "yes, 2026-04-11" in quotes.',
    ],
  ],
  [
    'yes or no',
    { hitters: '{one: {role: customer, consent: yes, saw_club: perhaps}}' },
    [
      '9:57 hitters.one.saw_club | value-invalid | yes or no | perhaps | Write yes or no; leave the line out when it was not recorded.',
    ],
  ],
  [
    'a temperature without a unit',
    { conditions: '{temperature: 21}' },
    [
      '12:27 conditions.temperature | value-invalid | the temperature with its unit, such as 21 °C | 21 | Write the unit after the number.',
    ],
  ],
  [
    'a class of reading that is none',
    { conditions: '{monitor: {columns: {carry: modeled}}}' },
    [
      '12:41 conditions.monitor.columns.carry | value-invalid | measured, derived, modelled or estimated | modeled | Did you mean "modelled"?',
    ],
  ],
  [
    'an excluded shot without a rule',
    { exclusions: '[{contender: alder, shot: 3, reason: no spin}]' },
    [
      '12:14 exclusions[1].rule | key-missing | the rule by which the shot is left out | - | Add "rule:" and its answer to exclusions[1].',
    ],
  ],
  [
    'an excluded shot of nobody',
    { exclusions: '[{contender: aldr, shot: 3, rule: misread, reason: no spin}]' },
    [
      '12:26 exclusions[1].contender | unknown-contender | one of alder, birch | aldr | Did you mean "alder"?',
    ],
  ],
  [
    'an excluded shot by an unknown hitter',
    { exclusions: '[{contender: alder, shot: 3, hitter: two, rule: misread, reason: x}]' },
    [
      '12:50 exclusions[1].hitter | unknown-hitter | one of one | two | Write an id as it stands above, or add it there.',
    ],
  ],
  [
    'a limit without a limit',
    { exclusions: '[{metric: smash, reason: mishit}]' },
    [
      '12:14 exclusions[1].below | key-missing | a limit: below or above, with its unit | - | Add "below:" and its answer to exclusions[1].',
    ],
  ],
  [
    'a shot number in words',
    { exclusions: '[{contender: alder, shot: third, rule: misread, reason: x}]' },
    [
      '12:39 exclusions[1].shot | value-invalid | the number of the shot in the file | third | Write a whole number in digits.',
    ],
  ],
  [
    'a claim on an unknown contender',
    { claims: '[{say: x, metric: carry, more: alder, than: cedar}]' },
    [
      '12:53 claims[1].than | unknown-contender | one of alder, birch | cedar | Write an id as it stands above, or add it there.',
    ],
  ],
  [
    'a claim on one contender',
    { claims: '[{say: x, metric: carry, more: alder, than: alder}]' },
    [
      '12:53 claims[1].than | value-invalid | another contender | alder | Name the contender that it is compared with.',
    ],
  ],
  [
    'a claim without direction',
    { claims: '[{say: x, metric: carry, than: birch}]' },
    [
      '12:10 claims[1].more | key-missing | one of more, less, tighter and straighter, naming the contender that has it | - | Write one of them, such as "more: alder" with "than: birch".',
    ],
  ],
  [
    'a claim in two directions',
    { claims: '[{say: x, metric: carry, more: alder, less: birch, than: birch}]' },
    [
      '12:53 claims[1].less | value-invalid | one of more, less, tighter and straighter, naming the contender that has it | more and less | Write one of them, such as "more: alder" with "than: birch".',
      '12:66 claims[1].than | value-invalid | another contender | birch | Name the contender that it is compared with.',
    ],
  ],
  [
    'a claim of a size of spread',
    { claims: '[{say: x, metric: carry, tighter: alder, than: birch, by_at_least: 2 yd}]' },
    [
      '12:76 claims[1].by_at_least | value-invalid | no size in a claim about spread | 2 yd | Remove the line: whether a spread is tighter can be judged, by how much cannot.',
    ],
  ],
  [
    'a claim without a metric',
    { claims: '[{say: x, more: alder, than: birch}]' },
    [
      '12:10 claims[1].metric | key-missing | the metric that the sentence is about | - | Add "metric:" and its answer to claims[1].',
    ],
  ],
  [
    'a claim in the wrong unit',
    { claims: '[{say: x, metric: carry, more: alder, than: birch, by_at_least: 2 mph}]' },
    [
      '12:73 claims[1].by_at_least | value-invalid | a distance in m, yd or ft, since that is what carry is | 2 mph | Write carry as 5 yd or 4.5 m.',
    ],
  ],
  [
    'a plan with a count in words',
    { plan: '{shots_per_contender: twelve}' },
    [
      '12:29 plan.shots_per_contender | value-invalid | a number of shots | twelve | Write a whole number in digits.',
    ],
  ],
  [
    'a correction half written',
    { corrections: '[{date: 2026-05-01, what: loft}]' },
    [
      '12:15 corrections[1].now | key-missing | what stands there now | - | Add "now:" and its answer to corrections[1].',
      '12:15 corrections[1].was | key-missing | what stood there | - | Add "was:" and its answer to corrections[1].',
    ],
  ],
];

test.each(cases)('%s', (_, changes, problems) => {
  expect(problemsWith(changes)).toEqual(problems);
});
