import { contentFolder } from '../commands/contentFolder.ts';

/** How one of the invented reports below differs from the others. */
export interface Made {
  readonly slug: string;
  readonly date: string;
  readonly golfer: string;
  /** Yards that alder carries farther. */
  readonly gap: number;
  readonly extra?: string;
  readonly held?: string;
  readonly oneAfterAnother?: boolean;
  readonly status?: string;
}

/** Seven reports of two heads that share build sheets, of which four may be put together. */
export const made: readonly Made[] = [
  { slug: 'first', date: '2026-01-10', golfer: 'g1', gap: 9 },
  { slug: 'second', date: '2026-02-10', golfer: 'g2', gap: 5 },
  {
    slug: 'third',
    date: '2026-03-10',
    golfer: 'g3',
    gap: 7,
    extra: 'corrections: [{date: 2026-04-01, what: "A typing error & its <cure>", was: "7 yd", now: "6 yd"}]',
  },
  { slug: 'fourth', date: '2026-04-10', golfer: 'g4', gap: 2 },
  { slug: 'other-shaft', date: '2026-05-10', golfer: 'g5', gap: 30, held: '{shaft: another shaft}' },
  { slug: 'in-blocks', date: '2026-06-10', golfer: 'g6', gap: 25, oneAfterAnother: true },
  {
    slug: 'gone',
    date: '2026-06-20',
    golfer: 'g7',
    gap: 40,
    status: 'withdrawn',
    extra: 'withdrawn: {date: 2026-06-25, reason: the monitor was out of order}',
  },
];

const swing = [0, -5.3, 3.1, -1.9, 4.4, -2.2, 1.3, -4.1, 2.6, 0.9];

function shots({ gap, oneAfterAnother = false }: Made): string {
  const carry = (turn: number, shift: number): string =>
    (220 + (swing[(turn * 7 + shift) % 10] ?? 0)).toFixed(1);
  const rows = swing.flatMap((_, turn) => [
    ['Alder', (Number(carry(turn, 0)) + gap).toFixed(1)],
    ['Birch', carry(turn, 3)],
  ]);
  const ordered = oneAfterAnother ? rows.toSorted(([x = ''], [y = '']) => (x < y ? -1 : 1)) : rows;
  return [
    'Shot,Head,Carry (yd)',
    ...ordered.map(([head, value], index) => `${index + 1},${head},${value}`),
    '',
  ].join('\n');
}

function front(report: Made): string {
  const { date, golfer, slug, extra = '', held = '{shaft: one 60 g shaft}', status = 'published' } = report;
  return [
    '---',
    `title: "Two heads: ${slug}"`,
    `date: ${date}`,
    'question: Does the new head carry farther than the old one?',
    'varied: head',
    `held: ${held}`,
    'contenders: [birch, alder]',
    'primary: carry',
    'matters: {carry: 5 yd}',
    'session: shots.csv',
    `hitters: {${golfer}: {role: staff fitter, hand: right, consent: yes}}`,
    'interests: {paid_by: the shop, commission_or_gifts: none, seen_before: nobody outside the shop}',
    'invented_data: yes',
    `status: ${status}`,
    ...(extra === '' ? [] : [extra]),
    '---',
    '',
  ].join('\n');
}

const sheetOf = (label: string): string =>
  `label: ${label}\nsupplied_by: our stock\nsold_here: new\nbuild: {head: ${label} head, loft: 9°}\n`;

/** A content folder with the reports above and a shop that stands in a folder of its host. */
export function manyReports(shop = 'name: Shop & Sons\naddress: https://golf.example/tests/\n'): string {
  return contentFolder({
    'shop.yaml': shop,
    'contenders/alder.yaml': sheetOf('Alder'),
    'contenders/birch.yaml': sheetOf('Birch'),
    ...Object.fromEntries(
      made.flatMap((report) => [
        [`reports/${report.slug}/report.md`, front(report)],
        [`reports/${report.slug}/shots.csv`, shots(report)],
      ]),
    ),
  });
}
