import { isRealDate } from '../intake/authored/answers.ts';
import type { Front } from '../intake/authored/front.ts';
import type { PlaceOf } from '../intake/authored/places.ts';
import type { Source } from '../intake/authored/source.ts';
import { metaIn } from '../kit/metaIn.ts';
import type { Ledger } from '../intake/ledger.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import { onRecordAtDesk } from '../problems/onRecordAtDesk.ts';
import type { Problem } from '../problems/problem.ts';
import type { ContentFolder } from './contentFiles.ts';
import { contentHashes, editionStamp, latestRecord } from './ledger.ts';
import { recordsOf } from './ownLedger.ts';

/** The path of a version beside its report, named by the day of the correction that it was before. */
export const versionFile = (day: string): string => `versions/${day}.html`;

/** The stamp that a one-file edition of a report bears; null of any other text. */
export function stampOfEdition(html: string): string | null {
  const stamp = metaIn(html, 'straightface-edition');
  return stamp !== null && /^[0-9a-f]{64}$/.test(stamp) ? stamp : null;
}

/** The stamp of a report as it stands. */
export function currentStamp(source: Pick<Source, 'typed' | 'files' | 'front'>): string {
  return editionStamp({ ...contentHashes(source), corrections: source.front.corrections.length });
}

/** The days whose version is kept, and what lies among them that is none. */
export function readVersions(
  folder: ContentFolder,
  slug: string,
  { corrections }: Pick<Front, 'corrections'>,
  placeOf: PlaceOf,
): { readonly days: readonly string[]; readonly problems: readonly Problem[] } {
  const days: string[] = [];
  const problems = folder.files(`reports/${slug}/versions`).flatMap((name): readonly Problem[] => {
    const path = `reports/${slug}/versions/${name}`;
    const day = name.replace(/\.html$/, '');
    if (!name.endsWith('.html') || !isRealDate(day) || !corrections.some(({ date }) => date === day)) {
      const told = corrections.map(({ date }) => date).join(', ');
      return [
        makeProblem('version-without-correction', placeOf(['corrections'], 'key'), {
          expected: 'in versions/ a file for the day of a correction, such as 2026-04-11.html',
          found: `versions/${name}; days of corrections: ${told || 'none'}`,
          cure: 'Give it the day of the correction that it was before, or move it elsewhere. It is not published.',
        }),
      ];
    }
    const { content, problems: unread } = folder.text(path);
    if (content === null) return unread;
    if (stampOfEdition(content) === null) {
      return [
        makeProblem(
          'version-unreadable',
          { file: path },
          {
            expected:
              'the report in one file, as it was kept from the site when the correction was put on record',
            found: 'another file',
            cure: 'Put the report.html of before there, unchanged, or take the file out. It is not published.',
          },
        ),
      ];
    }
    days.push(day);
    return [];
  });
  return { days, problems };
}

/** A version that should be kept: of the day of a correction, and the stamp of what was on record before it. */
interface WantedVersion {
  readonly day: string;
  readonly stamp: string;
}

/** The versions that are not kept yet of what was on record just before a correction; the oldest first. */
export function wantedVersions(source: Source, ledger: Ledger | null): readonly WantedVersion[] {
  const { corrections } = source.front;
  const days = [...new Set(corrections.map(({ date }) => date))].toSorted();
  return days.flatMap((day) => {
    if (source.versions.includes(day)) return [];
    const earlier = corrections.filter(({ date }) => date < day).length;
    const before = recordsOf(source, ledger).findLast((record) => record.corrections === earlier);
    return before === undefined || before.typed === null ? [] : [{ day, stamp: editionStamp(before) }];
  });
}

/** Warns of a correction that is not on record yet: the next build would be over the only copy of what stood before. */
export function versionNotKept(source: Source, ledger: Ledger | null): readonly Problem[] {
  const record = latestRecord(source.slug, ledger);
  if (record === null || source.front.status !== 'published') return [];
  if (record.corrections >= source.front.corrections.length) return [];
  const last = wantedVersions(source, ledger).at(-1);
  if (last === undefined) return [];
  return [
    makeProblem('version-not-kept', source.placeOf(['corrections'], 'key'), {
      expected: `the report as it was before ${last.day}, in ${versionFile(last.day)}`,
      found: 'a correction that is not on record',
      cure: 'Run "npm run record" before the next build: it keeps the version that stands in dist/ until then.',
      cureAtDesk: `Before the next build ${onRecordAtDesk}. The version of before is kept with it.`,
    }),
  ];
}
