import { buildKey } from '../findings/buildKey.ts';
import { sheetItems, type Sheet } from '../intake/authored/sheet.ts';
import { primaryMetrics } from '../prose/answers.ts';
import { sayPair } from '../prose/english/pairInWords.ts';
import { pairAnswers } from '../prose/pairAnswer.ts';
import { capitalised } from '../prose/words.ts';
import { heldParts } from './buildItems.ts';
import { fewestReports, pairRecords, pairSlug } from './pairRecords.ts';
import type { Report } from './report.ts';

type Front = Report['source']['front'];

/** What one report says of a contender. */
interface ContenderEntry {
  readonly report: Report;
  readonly answers: readonly string[];
}

type Lines = readonly (readonly [item: string, value: string])[];

/** One build of a contender with the reports that hit it, newest first. */
interface BuildRecord {
  /** Its own build sheet, with what all in those reports shared of its kind. */
  readonly sheet: Lines;
  /** What else was the same for all, such as the shaft in tests of heads. */
  readonly hitWith: Lines;
  readonly entries: readonly ContenderEntry[];
}

/** All that is known of a contender whose build is recorded in two reports or more. */
export interface ContenderRecord {
  readonly id: string;
  readonly label: string;
  readonly builds: readonly BuildRecord[];
  /** The contenders it was compared with in two reports or more, each with the slug of the pair's page. */
  readonly met: readonly { readonly label: string; readonly pair: string }[];
}

/** The reports that hit it, build by build. */
export const reportsHitting = ({ builds }: ContenderRecord): readonly Report[] =>
  builds.flatMap(({ entries }) => entries.map(({ report }) => report));

/** Ids of contenders that have a page of their own, `reports` being all that give anything away. */
export function idsWithPages(reports: readonly Report[]): ReadonlySet<string> {
  const counts = new Map<string, number>();
  for (const { source } of reports.filter(({ source: { front } }) => front.status !== 'withdrawn'))
    for (const id of new Set(builtIn(source.front).map((one) => one.id)))
      counts.set(id, (counts.get(id) ?? 0) + 1);
  return new Set([...counts].flatMap(([id, count]) => (count >= fewestReports ? [id] : [])));
}

/** Contenders of a report that have a page of their own, see `idsWithPages`. */
export function contendersWithPages(
  { source: { front } }: Report,
  withPages: ReadonlySet<string>,
): readonly { readonly id: string; readonly label: string }[] {
  return builtIn(front).filter(({ id }) => withPages.has(id));
}

/** The contenders whose build is recorded. */
const builtIn = (front: Front): Front['contenders'] =>
  front.contenders.filter((one) => buildKey(one, front) !== null);

interface Gathering {
  label: string;
  readonly builds: Map<string, BuildRecord>;
  readonly met: Map<string, string>;
}

/** Every contender whose build is recorded in two reports or more, by its id. `reports` stand newest first. */
export function contenderRecords(reports: readonly Report[]): ReadonlyMap<string, ContenderRecord> {
  const all = new Map<string, Gathering>();
  for (const report of reports.filter(({ source }) => source.front.status !== 'withdrawn')) {
    const { front } = report.source;
    const held = heldParts(front.held, front.varied);
    const known = front.contenders.flatMap((one) => {
      const key = buildKey(one, front);
      return key === null ? [] : [{ one, key }];
    });
    for (const { one, key } of known) {
      const own = all.get(one.id) ?? { label: one.label, builds: new Map(), met: new Map() };
      all.set(one.id, own);
      const build = own.builds.get(key);
      const entry = { report, answers: answersAbout(one.id, report) };
      own.builds.set(key, {
        sheet: build?.sheet ?? [...linesOf(one.build ?? {}), ...linesOf(held.own)],
        hitWith: build?.hitWith ?? linesOf(held.hitWith),
        entries: [...(build?.entries ?? []), entry],
      });
      for (const { one: other } of known)
        if (other.id !== one.id && !own.met.has(other.id)) own.met.set(other.id, other.label);
    }
  }
  const pairs = pairRecords(reports);
  const records = [...all].map(([id, { label, builds, met }]): ContenderRecord => ({
    id,
    label,
    builds: [...builds.values()],
    met: [...met]
      .map(([other, name]) => ({ label: name, pair: pairSlug(id, other) }))
      .filter(({ pair }) => pairs.has(pair)),
  }));
  return new Map(
    records
      .filter((record) => reportsHitting(record).length >= fewestReports)
      .map((record) => [record.id, record]),
  );
}

/** What a report says of one of its contenders, the surest pair first. */
export function answersAbout(
  id: string,
  { findings, telling }: Pick<Report, 'findings' | 'telling'>,
): readonly string[] {
  return primaryMetrics(findings).flatMap((metric) =>
    pairAnswers(metric, findings.design)
      .filter(({ ahead, behind }) => ahead === id || behind === id)
      .map((answer) => sayPair(answer, telling)),
  );
}

/** A build sheet line by line, as it is read. */
export function linesOf({ also = {}, ...known }: Sheet): readonly (readonly [string, string])[] {
  const items = Object.entries(sheetItems).flatMap(([key, words]) => {
    const value = Object.entries(known).find(([own]) => own === key)?.[1];
    return typeof value === 'string' ? [[capitalised(words), value] as const] : [];
  });
  return [
    ...items,
    ...Object.entries(also).map(([key, value]) => [capitalised(key), String(value)] as const),
  ];
}
