import { toCanonical } from '../../src/trade/units.ts';
import { contentFolder } from '../commands/contentFolder.ts';
import { flown } from '../demo/flown.ts';
import { normal, shuffled, uniform } from '../demo/random.ts';

/** As long as names may be, with what other formats read as their own. */
const names = [
  'Hawthorn & Co 90',
  'Blackthorn "Mid"',
  'Rowanberry <Max>',
  "Whitebeam 'Pro' ",
  'Goldenrod =Tour5',
  '+Honeysuckle Mk2',
].map((name) => name.trim());
const ids = names.map((_, index) => 'abcdef'.charAt(index));

interface Odd {
  readonly slug: string;
  readonly title: string;
  readonly contenders: number;
  readonly golfers: number;
  readonly rounds: number;
  /** How much faster than the first the ball leaves each, mph. */
  readonly ballSpeeds: readonly number[];
  /** How much wider than the first each strays. */
  readonly stray?: readonly number[];
  readonly launchOnly?: boolean;
  readonly oneAfterAnother?: boolean;
  readonly primary?: string;
  readonly price?: boolean;
  readonly extra: readonly string[];
}

const shopAlone =
  'interests: {paid_by: the shop, commission_or_gifts: none, seen_before: nobody outside the shop}';

/** What editors' files have to bear and the demo reports do not show. Every shot is invented; nothing here was measured. */
export const odd: readonly Odd[] = [
  {
    slug: 'launch-only-in-a-net',
    title: 'Three heads into a net, carry by our own flight model',
    contenders: 3,
    golfers: 1,
    rounds: 12,
    ballSpeeds: [0, -7, -0.5],
    launchOnly: true,
    price: true,
    extra: [shopAlone, 'modelled: carry', 'conditions: {place: "indoors, net at 3 m", surface: mat}'],
  },
  {
    slug: 'two-golfers-corrected',
    title: 'Four heads with long names, hit by two golfers and corrected twice',
    contenders: 4,
    golfers: 2,
    rounds: 8,
    ballSpeeds: [0, -1, 2, -4],
    extra: [
      shopAlone,
      "corrections: [{date: 2026-05-03, what: the loft of the second head, was: 9 degrees, now: 10.5 degrees}, {date: 2026-06-14, what: a golfer's hand, was: left, now: right}]",
      'exclusions: [{contender: a, shot: 7, rule: topped, reason: hit the mat first}, {contender: c, shot: 6, rule: "=misread", reason: "+no ball seen"}]',
    ],
  },
  {
    slug: 'range-balls-replaced',
    title: 'Two heads with range balls, replaced and corrected',
    contenders: 2,
    golfers: 1,
    rounds: 6,
    ballSpeeds: [0, -9],
    extra: [
      'status: superseded',
      'superseded_by: clear-and-priced',
      'corrections: [{date: 2026-05-20, what: the ball, was: a premium ball, now: a range ball}]',
      'conditions: {place: outdoors, surface: mat, ball: {model: range ball, state: used, same_for_all: yes}}',
      shopAlone,
    ],
  },
  {
    slug: 'four-shots-each',
    title: 'Three heads, four shots each',
    contenders: 3,
    golfers: 1,
    rounds: 4,
    ballSpeeds: [0, -3, 2],
    extra: [shopAlone],
  },
  {
    slug: 'five-in-blocks',
    title: 'Five heads one after another, asked for carry and direction',
    contenders: 5,
    golfers: 1,
    rounds: 9,
    ballSpeeds: [0, -1, -2, 4, 1],
    oneAfterAnother: true,
    primary: '[carry, side]',
    extra: [
      'interests: {paid_by: the distributors of all five heads, commission_or_gifts: a commission on every head sold and a day out, seen_before: the distributors}',
    ],
  },
  {
    slug: 'clear-and-priced',
    title: 'Two heads far apart',
    contenders: 2,
    golfers: 1,
    rounds: 20,
    ballSpeeds: [0, -9],
    stray: [0.4, 2.5],
    price: true,
    extra: [shopAlone, 'exclusions: [{contender: a, shot: 6, rule: topped, reason: hit the mat first}]'],
  },
  {
    slug: 'eight-golfers-six-heads',
    title: 'Six heads, eight golfers',
    contenders: 6,
    golfers: 8,
    rounds: 3,
    ballSpeeds: [0, -1, 2, -4, 1.5, -0.4],
    price: true,
    extra: [shopAlone, 'exclusions: [{contender: a, shot: 1, rule: misread, reason: no ball seen}]'],
  },
];

function front({ title, contenders, golfers, primary = 'carry', price = false, extra }: Odd): string {
  const sources = ['our stock', 'lent by its distributor', 'our stock', 'lent by a customer'];
  const each = names.slice(0, contenders).map((label, index) => {
    const cost = price ? `, price: {amount: ${90 + 75 * index}, currency: EUR, on: 2026-04-02}` : '';
    return `  ${ids[index] ?? ''}: {label: ${JSON.stringify(label)}, supplied_by: ${sources[index % 4] ?? ''}, sold_here: ${index % 3 === 2 ? 'used' : 'new'}${cost}}`;
  });
  return [
    '---',
    `title: ${JSON.stringify(title)}`,
    'date: 2026-04-02',
    'invented_data: yes',
    'question: Which of these heads carries farther?',
    'varied: head',
    'contenders:',
    ...each,
    `primary: ${primary}`,
    'matters: {carry: 5 m}',
    'session: shots.csv',
    'hitters:',
    ...Array.from(
      { length: golfers },
      (_, index) =>
        `  g${index + 1}: {role: customer, hand: ${index === 1 ? 'left' : 'right'}, consent: yes}`,
    ),
    ...extra,
    ...(extra.some((line) => line.startsWith('status:')) ? [] : ['status: published']),
    '---',
    '',
    'Hit in one morning.',
    '',
  ].join('\n');
}

function shots(report: Odd, seed: number): string {
  const { contenders, golfers, rounds, ballSpeeds, stray = [], launchOnly = false } = report;
  const next = uniform(20260402 + seed);
  const gauss = normal(next);
  const rows: { readonly contender: number; readonly cells: readonly string[] }[] = [];
  for (let golfer = 1; golfer <= golfers; golfer += 1) {
    for (let turn = 1; turn <= rounds; turn += 1) {
      for (const contender of shuffled(
        names.slice(0, contenders).map((_, at) => at),
        next,
      )) {
        const wide = stray[contender] ?? 1;
        const clubSpeed = 90 + golfer + gauss() * 0.8 * wide;
        const ballSpeedMph = clubSpeed * (1.45 + 0.01 * gauss() * wide) + (ballSpeeds[contender] ?? 0);
        const launch = {
          launchDeg: 12.5 + 0.8 * gauss() * wide,
          directionDeg: 1.5 * gauss() * wide,
          spinRpm: 2600 + 200 * gauss() * wide,
          axisDeg: 3 * gauss() * wide,
        };
        const { carryYd, sideYd } = flown({ ballSpeedMph, ...launch });
        rows.push({
          contender,
          cells: [
            `G${golfer}`,
            names[contender] ?? '',
            (toCanonical(clubSpeed, 'mph') * 3.6).toFixed(1),
            (toCanonical(ballSpeedMph, 'mph') * 3.6).toFixed(1),
            launch.launchDeg.toFixed(1),
            launch.directionDeg.toFixed(1),
            launch.spinRpm.toFixed(0),
            launch.axisDeg.toFixed(1),
            ...(launchOnly
              ? []
              : [toCanonical(carryYd, 'yd').toFixed(1), toCanonical(sideYd, 'yd').toFixed(1)]),
          ],
        });
      }
    }
  }
  if (report.oneAfterAnother) rows.sort((x, y) => x.contender - y.contender);
  const head =
    'Shot,Golfer,Club,Club Speed (km/h),Ball Speed (km/h),Launch Angle (deg),Launch Direction (deg),Spin Rate (rpm),Spin Axis (deg)';
  const quoted = (text: string): string => (/[",]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  return [
    head + (launchOnly ? '' : ',Carry (m),Side (m)'),
    ...rows.map(({ cells }, index) => [String(index + 1), ...cells].map(quoted).join()),
    '',
  ].join('\n');
}

/** The folder of its host that the shop stands in. */
export const oddBase = 'a-long-folder/of-tests';

/** A content folder of a shop that thinks in metres, with a long name and an address in a folder of its host. */
export function oddReports(): string {
  return contentFolder({
    'shop.yaml': [
      'name: Example Golf Workshop of the Northern Counties & Islands',
      `address: https://golf.example/${oddBase}/`,
      'reuse: {terms: "Charts may be reprinted unchanged, with their caption strip.", credit: Example Workshop}',
      'defaults: {units: metres}',
      '',
    ].join('\n'),
    ...Object.fromEntries(
      odd.flatMap((report, seed) => [
        [`reports/${report.slug}/report.md`, front(report)],
        [`reports/${report.slug}/shots.csv`, shots(report, seed)],
      ]),
    ),
  });
}
