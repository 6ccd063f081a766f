import { buildKey } from '../findings/buildKey.ts';
import { sheetItems, type Sheet } from '../intake/authored/sheet.ts';
import { primaryMetrics } from '../prose/answers.ts';
import { sayPair } from '../prose/english/answers.ts';
import { pairAnswers } from '../prose/pairAnswer.ts';
import { capitalised } from '../prose/words.ts';
import { pairSlug } from './pairRecords.ts';
import type { Report } from './report.ts';

/** What one report says of a contender. */
export interface ContenderEntry {
  readonly report: Report;
  readonly answers: readonly string[];
}

/** One build of a contender with the reports that hit it, newest first. */
export interface BuildRecord {
  readonly sheet: readonly (readonly [item: string, value: string])[];
  /** What every contender of those reports shared. */
  readonly held: readonly (readonly [item: string, value: string])[];
  readonly entries: readonly ContenderEntry[];
}

/** All that is known of a contender whose build is recorded. */
export interface ContenderRecord {
  readonly id: string;
  readonly label: string;
  readonly builds: readonly BuildRecord[];
  /** Whom it met, with the slug of the pair's page. */
  readonly met: readonly { readonly label: string; readonly pair: string }[];
}

/** Contenders of a report that have a page of their own. */
export function contendersWithPages({
  source: { front },
}: Report): readonly { readonly id: string; readonly label: string }[] {
  return front.contenders.filter((one) => buildKey(one, front) !== null);
}

interface Gathering {
  label: string;
  readonly builds: Map<string, BuildRecord>;
  readonly met: Map<string, string>;
}

/** Every contender whose build is recorded, by its id. `reports` stand newest first. */
export function contenderRecords(reports: readonly Report[]): ReadonlyMap<string, ContenderRecord> {
  const all = new Map<string, Gathering>();
  for (const report of reports.filter(({ source }) => source.front.status !== 'withdrawn')) {
    const { front } = report.source;
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
        sheet: build?.sheet ?? linesOf(one.build ?? {}),
        held: build?.held ?? linesOf(front.held),
        entries: [...(build?.entries ?? []), entry],
      });
      for (const { one: other } of known)
        if (other.id !== one.id && !own.met.has(other.id)) own.met.set(other.id, other.label);
    }
  }
  return new Map(
    [...all].map(([id, { label, builds, met }]) => [
      id,
      {
        id,
        label,
        builds: [...builds.values()],
        met: [...met].map(([other, name]) => ({ label: name, pair: pairSlug(id, other) })),
      },
    ]),
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
