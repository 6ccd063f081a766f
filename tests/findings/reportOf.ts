import { defineSource } from '../../src/intake/authored/source.ts';
import { readShop } from '../../src/intake/authored/readShop.ts';
import { readShotFile } from '../../src/intake/shots/readShotFile.ts';
import type { Ledger } from '../../src/intake/ledger.ts';
import type { Report } from '../../src/kit/report.ts';
import { makeReport, type MadeReport } from '../../src/site/makeReport.ts';
import type { WrittenReport } from '../../src/site/writtenReport.ts';

/** An invented report: some answers changed, added or (null) left out of a small front matter, and its shots. */
interface Invented {
  readonly front?: Readonly<Record<string, string | null>>;
  readonly narrative?: string;
  readonly shop?: string;
  /** Columns besides `Club` and `Shot`: heading, then a contender's readings in hit order. */
  readonly shots?: Readonly<Record<string, Readonly<Record<string, readonly number[]>>>>;
  readonly order?: 'in turn' | 'one after another';
  readonly csv?: string;
}

/** Twelve deviations from an average, in yards; invented. */
export const scatter = [-7, 4, 1, -3, 8, -1, 5, -6, 2, -4, 3, -2] as const;

export const around = (average: number, spread = 1): readonly number[] =>
  scatter.map((own) => average + own * spread);

/** Alder 12 yards ahead of Cedar, Birch 9 ahead of nobody for sure: twelve shots each. */
export const threeHeads: Invented['shots'] = {
  'Carry (yd)': {
    alder: around(237),
    birch: around(231).toReversed(),
    cedar: [...around(225).slice(6), ...around(225).slice(0, 6)],
  },
};

const smallest: Readonly<Record<string, string>> = {
  title: 'Three driver heads, one shaft',
  date: '2026-04-11',
  question: 'Does either new head carry farther than the used one?',
  varied: 'head',
  contenders:
    '{alder: {label: Alder 9°, short: Alder, supplied_by: our stock, sold_here: new}, ' +
    'birch: {label: Birch 9°, short: Birch, supplied_by: lent by its distributor, sold_here: new}, ' +
    'cedar: {label: Cedar 9°, short: Cedar, supplied_by: our used stock, sold_here: used}}',
  primary: 'carry',
  matters: '{carry: 5 yd}',
  session: 'shots.csv',
  hitters: '{one: {role: staff fitter, hand: right, consent: yes}}',
  interests: '{paid_by: the shop, commission_or_gifts: none, seen_before: nobody outside the shop}',
  status: 'published',
};

export const reportFile = 'reports/invented/report.md';

/** The text of `report.md`. */
export function reportText({ front = {}, narrative = '' }: Pick<Invented, 'front' | 'narrative'>): string {
  const answers = Object.entries({ ...smallest, ...front }).filter(([, value]) => value !== null);
  return ['---', ...answers.map(([key, value]) => `${key}: ${value}`), '---', '', narrative, ''].join('\n');
}

/** The session file of some columns of readings. */
export function csvOf(shots: NonNullable<Invented['shots']>, order: Invented['order'] = 'in turn'): string {
  const headings = Object.keys(shots);
  const clubs = Object.keys(Object.values(shots)[0] ?? {});
  const count = (club: string): number => Object.values(shots)[0]?.[club]?.length ?? 0;
  const turns = clubs.flatMap((club) => Array.from({ length: count(club) }, (_, turn) => ({ club, turn })));
  const hit = order === 'in turn' ? turns.toSorted((x, y) => x.turn - y.turn) : turns;
  const rows = hit.map(({ club, turn }, index) =>
    [club, index + 1, ...headings.map((heading) => shots[heading]?.[club]?.[turn]?.toFixed(1) ?? '')].join(
      ',',
    ),
  );
  return [['Club', 'Shot', ...headings].join(','), ...rows, ''].join('\n');
}

/** The invented report as it lies in its folder, read. */
export function writtenReport(invented: Invented): WrittenReport {
  const csv = invented.csv ?? csvOf(invented.shots ?? threeHeads ?? {}, invented.order);
  const shop = invented.shop === undefined ? null : readShop('shop.yaml', invented.shop).shop;
  const { source, problems } = defineSource({
    slug: 'invented',
    file: reportFile,
    text: reportText(invented),
    files: [{ name: 'shots.csv', sha256: 'a'.repeat(64) }],
    shop,
    contenders: new Map(),
  });
  const options = source === null ? {} : { columns: source.front.columns, varied: source.front.varied };
  const file = readShotFile('reports/invented/shots.csv', new TextEncoder().encode(csv), options);
  return {
    slug: 'invented',
    file: reportFile,
    source,
    unfinished: false,
    shotFiles: [file],
    problems: [...problems, ...file.problems],
  };
}

/** Made last: a report never changes, and many tests ask for the same one. */
const made = new Map<string, MadeReport>();
const mostKept = 50;

export function madeReport(invented: Invented, ledger: Ledger | null = null): MadeReport {
  const key = JSON.stringify([invented, ledger], (_, value: unknown) =>
    typeof value === 'number' && !Number.isFinite(value) ? String(value) : value,
  );
  const before = made.get(key);
  const report = before ?? makeReport(writtenReport(invented), ledger);
  made.delete(key);
  made.set(key, report);
  for (const [oldest] of made) {
    if (made.size <= mostKept) break;
    made.delete(oldest);
  }
  return report;
}

/** The report itself; fails with its problems where there is none. */
export function reportOf(invented: Invented, ledger: Ledger | null = null): Report {
  const { report, problems } = madeReport(invented, ledger);
  if (report === null)
    throw new Error(problems.map(({ kind, found, cure }) => `${kind}: ${found}. ${cure}`).join('\n'));
  return report;
}
