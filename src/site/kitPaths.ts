import { pictureEditions, type PictureEdition, type PictureToShow } from '../intake/authored/picture.ts';
import { kitOf, type KitItem } from '../kit/kitOf.ts';
import {
  contenderRecords,
  contendersWithPages,
  reportsHitting,
  type ContenderRecord,
} from '../kit/contenderRecords.ts';
import type { PictureFiles } from '../kit/pictureFiles.ts';
import { picturesOf } from '../kit/picturesOf.ts';
import { pairRecords, reportsMeeting, type PairRecord } from '../kit/pairRecords.ts';
import type { Report } from '../kit/report.ts';
import { pageKey, type PageKey, type PagePath } from './cacheKey.ts';
import { siteContent } from 'virtual:straightface/site';
import { replacementTitle, shownReports } from './siteContent.ts';

/** Reports that give anything away: all that are shown and not withdrawn. */
export function givingReports({ dev }: { readonly dev: boolean }): readonly Report[] {
  return shownReports(siteContent({ fresh: dev }), { drafts: dev }).filter(
    ({ source }) => source.front.status !== 'withdrawn',
  );
}

/** The key of what is made of one report and names the one that has replaced it. */
function keyOf(report: Report): PageKey {
  return pageKey([report], replacementTitle(siteContent({ fresh: false }), report) ?? '');
}

export type ReportPath = PagePath<'slug', { readonly report: Report }>;

/** Paths of what each of these reports has one of. */
export function givingPaths({ dev }: { readonly dev: boolean }): ReportPath[] {
  return givingReports({ dev }).map((report) => ({
    params: { slug: report.source.slug },
    props: { report },
    ...keyOf(report),
  }));
}

export type ChartPath = PagePath<'slug' | 'chart', { readonly report: Report; readonly item: KitItem }>;

/** Three kinds of page ask for the same charts. */
const offeredBy = new WeakMap<Report, readonly KitItem[]>();

function offered(report: Report): readonly KitItem[] {
  const items = offeredBy.get(report) ?? kitOf(report).offered;
  offeredBy.set(report, items);
  return items;
}

/** Paths of every chart that is offered. */
export function chartPaths({ dev }: { readonly dev: boolean }): ChartPath[] {
  return givingReports({ dev }).flatMap((report) =>
    offered(report).map((item) => ({
      params: { slug: report.source.slug, chart: item.figure.id },
      props: { report, item },
      ...keyOf(report),
    })),
  );
}

/** `chart` is the name of the picture's file, which for the wide form in the shop's units is the chart's. */
export type ExportPath = PagePath<
  'slug' | 'chart',
  { readonly report: Report; readonly picture: PictureFiles }
>;

/** Paths of every form in which a chart is given away as such a file. */
export function exportPaths({
  dev,
  ending,
}: {
  readonly dev: boolean;
  readonly ending: PictureFiles['endings'][number];
}): ExportPath[] {
  return givingReports({ dev }).flatMap((report) =>
    picturesOf(report)
      .filter(({ endings }) => endings.includes(ending))
      .map((picture) => ({
        params: { slug: report.source.slug, chart: picture.name },
        props: { report, picture },
        ...pageKey([report]),
      })),
  );
}

export type PicturePath = PagePath<
  'slug' | 'name',
  {
    readonly report: Report;
    readonly picture: PictureToShow;
    readonly edition: PictureEdition;
  }
>;

/** Paths of every edition of every picture that a narrative shows; the same picture under two names is there once. */
export function picturePaths({
  dev,
  format,
}: {
  readonly dev: boolean;
  readonly format: PictureEdition['format'];
}): PicturePath[] {
  return givingReports({ dev }).flatMap((report) => {
    const shown = report.source.pictures.filter((picture) => picture.kind === 'shown');
    return [...new Map(shown.map((picture) => [picture.name, picture])).values()].flatMap((picture) => {
      const { webp, behind } = pictureEditions(picture);
      return [...webp, behind]
        .filter((edition) => edition.format === format)
        .map((edition) => ({
          params: { slug: report.source.slug, name: edition.file.slice(0, -`.${format}`.length) },
          props: { report, picture, edition },
          ...pageKey([report]),
        }));
    });
  });
}

/** What a report compares that other reports know too, each with a page of its own. */
export function contenderPages(report: Report): ReturnType<typeof contendersWithPages> {
  return contendersWithPages(report, siteContent({ fresh: false }).others.contenders);
}

/** A page for each record of what several reports tell of, by its name in the address. */
const recordPages = <Told>(
  records: ReadonlyMap<string, Told>,
  reportsOf: (record: Told) => readonly Report[],
) => [...records].map(([name, record]) => ({ name, props: { record }, ...pageKey(reportsOf(record)) }));

export type PairPath = PagePath<'pair', { readonly record: PairRecord }>;

/** Paths of every pair that met in two reports that are shown. */
export const pairPaths = (of: { readonly dev: boolean }): PairPath[] =>
  recordPages(pairRecords(givingReports(of)), reportsMeeting).map(({ name, ...page }) => ({
    params: { pair: name },
    ...page,
  }));

export type ContenderPath = PagePath<'id', { readonly record: ContenderRecord }>;

/** Paths of every contender with a recorded build in two reports that are shown. */
export const contenderPaths = (of: { readonly dev: boolean }): ContenderPath[] =>
  recordPages(contenderRecords(givingReports(of)), reportsHitting).map(({ name, ...page }) => ({
    params: { id: name },
    ...page,
  }));
