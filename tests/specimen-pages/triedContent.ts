import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { encodePng } from '../../src/kit/encodePng.ts';
import { toCanonical } from '../../src/trade/units.ts';
import { flown } from '../demo/flown.ts';
import { inventedColours, inventedLogo } from './inventedLogo.ts';
import { normal, shuffled, uniform } from '../demo/random.ts';

/** Names as long as they may be: 16 characters each. */
const names = [
  'Hawthorn Long 90',
  'Blackthorn Mid 8',
  'Rowanberry Max 7',
  'Whitebeam Pro 11',
  'Goldenrod Tour 5',
  'Honeysuckle Mk 2',
] as const;

/** How much faster than the first the ball leaves each, mph: one clearly behind, some alike. */
const ballSpeeds = [0, -1, -1.2, -5, 1.5, -4.6];
const sources = [
  'our stock',
  'lent by its distributor',
  'our stock',
  'lent by a customer',
  'our stock',
  'our stock',
];

interface Tried {
  readonly slug: string;
  readonly title: string;
  readonly date: string;
  readonly contenders: number;
  readonly varied: string;
  /** Further lines of the front matter. */
  readonly extra: readonly string[];
  /** Golfers, one where nothing is said; the monitor then tells them by name. */
  readonly golfers?: number;
  /** Names of what is compared, where they are not those above. */
  readonly labels?: readonly string[];
  /** The main measures, where it is not carry alone. */
  readonly primary?: string;
  /** Who paid, where it was not the shop alone. */
  readonly paidBy?: string;
  /** What the first costs and how much more each next one, in euros. */
  readonly prices?: readonly [first: number, step: number];
  /** What the shop wrote. */
  readonly narrative?: string;
}

const paragraph =
  'The golfer warmed up with an old iron, and the order was drawn by lot before each round. Nothing was adjusted ' +
  'between shots, and the same glove was worn throughout. ';

/** Some ten pages of text with everything that markdown may hold. */
const longNarrative = [
  '## How the morning went',
  '![A plain panel, lighter towards its right edge](panel.png "Nothing was photographed")',
  ...Array.from({ length: 20 }, () => paragraph.repeat(4)),
  '### Was sonst auffiel: Größe, Ähnlichkeit, ¿qué más?',
  '| Kopf | Feel | Sound | Donaudampfschifffahrtsgesellschaftskapitän | Remarks |',
  '|---|:--:|--:|---|---|',
  ...Array.from({ length: 5 }, (_, row) => `| ${row + 1} | firm | dull | none | ${paragraph}|`),
  '',
  ...Array.from({ length: 6 }, () => `- ${paragraph}`),
  '',
  `> ${paragraph}`,
  '1. first\n2. second\n   - of which this',
  'https://example.test/an/address/that/nothing/breaks/because/it/has/no/spaces/at/all/and/goes/on',
  ...Array.from({ length: 20 }, () => paragraph.repeat(4)),
]
  .join('\n\n')
  .replaceAll('|\n\n|', '|\n|');

/** What pages have to bear and the demo reports do not show. Every shot is invented; nothing here was measured. */
const tried: readonly Tried[] = [
  {
    slug: 'two-heads',
    title: 'Two driver heads, one shaft',
    date: '2026-03-02',
    contenders: 2,
    varied: 'head',
    extra: [
      'status: published',
      'corrections: [{date: 2026-03-09, what: the loft of the second head, was: 9 degrees, now: 10.5 degrees}]',
      'replies: [{from: the distributor, date: 2026-03-12, text: "We would have used another shaft & say so."}]',
    ],
  },
  {
    slug: 'five-heads',
    title: 'Five driver heads, one shaft',
    date: '2026-04-02',
    contenders: 5,
    varied: 'head',
    extra: [
      'status: published',
      'claims: [{say: The first carries at least 12 yards farther than the fourth., metric: carry, more: a, than: d, by_at_least: 12 yd, allow_unproven: yes}]',
    ],
  },
  {
    slug: 'six-shafts',
    title: 'Six driver shafts, one head',
    date: '2026-05-02',
    contenders: 6,
    varied: 'shaft',
    extra: ['status: published'],
    prices: [149, 60],
  },
  {
    slug: 'eight-golfers',
    title: 'Four driver shafts, eight golfers',
    date: '2026-05-20',
    contenders: 4,
    varied: 'shaft',
    golfers: 8,
    extra: ['status: published'],
  },
  {
    slug: 'two-names',
    title: 'Größe gegen Länge: ¿cuál llega más lejos?',
    date: '2026-05-28',
    contenders: 2,
    varied: 'head',
    labels: ['Ñandú Größe 10.5', 'Çà et là ½ n° 8'],
    extra: ['status: published'],
    narrative: longNarrative,
  },
  {
    slug: 'two-measures',
    title: 'Three driver heads, ball speed as well',
    date: '2026-05-30',
    contenders: 3,
    varied: 'head',
    labels: ['Sandpiper Long 9', 'Oystercatcher XL', 'Redshank Wide 10'],
    primary: '[carry, ball_speed]',
    paidBy: 'the maker of Sandpiper Long 9 and Redshank Wide 10',
    extra: ['status: published'],
  },
  {
    slug: 'two-heads-before',
    title: 'Two driver heads, first look',
    date: '2026-01-02',
    contenders: 2,
    varied: 'head',
    extra: ['status: superseded', 'superseded_by: two-heads'],
  },
  {
    slug: 'taken-back',
    title: 'Two driver heads, another ball',
    date: '2026-02-02',
    contenders: 2,
    varied: 'head',
    extra: [
      'status: withdrawn',
      'withdrawn: {date: 2026-02-20, reason: the monitor had been set to another ball}',
    ],
  },
];

const namesOf = ({ labels }: Tried): readonly string[] => labels ?? names;

function hittersOf({ golfers = 1 }: Tried): string {
  const tie = 'hand: right, consent: yes, link_to_shop';
  return golfers === 1
    ? `one: {role: staff fitter, ${tie}: employed by the shop}`
    : Array.from({ length: golfers }, (_, at) => `g${at + 1}: {role: customer, ${tie}: none}`).join(', ');
}

function front(one: Tried): string {
  const { title, date, contenders, varied, extra, prices, narrative } = one;
  const { primary = 'carry', paidBy = 'the shop' } = one;
  const each = namesOf(one)
    .slice(0, contenders)
    .map((label, index) => {
      const id = 'abcdef'.charAt(index);
      const price =
        prices === undefined
          ? ''
          : `, price: {amount: ${prices[0] + index * prices[1]}, currency: EUR, on: ${date}}`;
      return `  ${id}: {label: ${label}, supplied_by: ${sources[index] ?? ''}, sold_here: ${index % 3 === 2 ? 'used' : 'new'}${price}}`;
    });
  return [
    '---',
    `title: "${title}"`,
    `date: ${date}`,
    'invented_data: yes',
    `question: Which of these ${varied}s carries farther for a middling swing?`,
    `varied: ${varied}`,
    'contenders:',
    ...each,
    `primary: ${primary}`,
    'matters: {carry: 5 yd}',
    'session: shots.csv',
    `hitters: {${hittersOf(one)}}`,
    `interests: {paid_by: ${paidBy}, commission_or_gifts: none, seen_before: nobody outside the shop}`,
    ...extra,
    '---',
    '',
    narrative ?? 'Twelve rounds in one morning, in an order drawn by lot.',
    '',
  ].join('\n');
}

function shots(one: Tried): string {
  const { contenders, golfers = 1 } = one;
  const next = uniform(20260102 + contenders);
  const gauss = normal(next);
  const rows: string[][] = [];
  const turns = golfers === 1 ? 12 : 6 * golfers;
  for (let turn = 0; turn < turns; turn++) {
    const golfer = turn % golfers;
    for (const index of shuffled(
      names.slice(0, contenders).map((_, at) => at),
      next,
    )) {
      const clubSpeed = 94 - (golfers - 1) + 2 * golfer + gauss();
      const ballSpeed = clubSpeed * (1.45 + 0.012 * gauss()) + (ballSpeeds[index] ?? 0);
      const launch = {
        launchDeg: 12.5 + gauss(),
        directionDeg: 1.5 * gauss(),
        spinRpm: 2600 + 220 * gauss(),
      };
      const axisDeg = 3 * gauss();
      const { carryYd, sideYd } = flown({ ballSpeedMph: ballSpeed, ...launch, axisDeg });
      rows.push([
        String(rows.length + 1),
        ...(golfers === 1 ? [] : [`g${golfer + 1}`]),
        namesOf(one)[index] ?? '',
        (toCanonical(clubSpeed, 'mph') * 3.6).toFixed(1),
        (toCanonical(ballSpeed, 'mph') * 3.6).toFixed(1),
        launch.launchDeg.toFixed(1),
        launch.directionDeg.toFixed(1),
        launch.spinRpm.toFixed(0),
        axisDeg.toFixed(1),
        toCanonical(carryYd, 'yd').toFixed(1),
        toCanonical(sideYd, 'yd').toFixed(1),
      ]);
    }
  }
  const heading = `Shot,${golfers === 1 ? '' : 'Golfer,'}Club,Club Speed (km/h),Ball Speed (km/h),Launch Angle (deg),Launch Direction (deg),Spin Rate (rpm),Spin Axis (deg),Carry (m),Side (m)`;
  return `${[heading, ...rows.map((row) => row.join(','))].join('\n')}\n`;
}

/** A picture of nothing. */
function inventedPicture(width: number, height: number): Uint8Array {
  const rgba = new Uint8Array(4 * width * height);
  for (let at = 0; at < width * height; at += 1)
    rgba.fill(60 + 10 * Math.floor(((at % width) * 16) / width), 4 * at, 4 * at + 4);
  return encodePng({ width, height, rgba });
}

/** Writes a shop that thinks in metres, with these reports, into `root`; what was there before goes. */
export function writeTriedContent(root: string): void {
  rmSync(root, { recursive: true, force: true });
  const write = (path: string, text: string | Uint8Array): void => {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  };
  write(
    'shop.yaml',
    [
      'name: Example Golf Workshop',
      'contact: corrections@example.test',
      'defaults: {units: metres}',
      'brand:',
      '  logo: logo.svg',
      '  logo_dark: logo dark.svg',
      '  accent: {light: 8a4b08, dark: e0a860}',
      '  site: https://workshop.example/',
      '  booking: https://workshop.example/visit?from=reports',
      '  contact: +44 20 7946 0123',
      '',
    ].join('\n'),
  );
  write('logo.svg', inventedLogo(inventedColours.light));
  write('logo dark.svg', inventedLogo(inventedColours.dark));
  write('reports/two-names/panel.png', inventedPicture(1200, 500));
  for (const one of tried) {
    write(`reports/${one.slug}/report.md`, front(one));
    write(`reports/${one.slug}/shots.csv`, shots(one));
  }
}
