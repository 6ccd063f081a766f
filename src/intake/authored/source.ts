import type { Problem } from '../../problems/problem.ts';
import type { Front } from './front.ts';
import type { PictureFile } from './picture.ts';
import { readReport, type ReportReading } from './readReport.ts';
import type { Shared } from './shared.ts';
import type { Shop } from './shop.ts';

/** A file of a report as it was read. */
interface SourceFile {
  readonly name: string;
  readonly sha256: string;
}

/** All that was written for one report, complete. */
export interface Source extends Pick<ReportReading, 'typed' | 'body' | 'placeOf'> {
  readonly slug: string;
  readonly front: Front;
  readonly files: readonly SourceFile[];
  /** Pictures that lie beside `report.md`. */
  readonly pictures: readonly PictureFile[];
  /** Days of corrections before which the report is kept as it was. */
  readonly versions: readonly string[];
  readonly shop: Shop | null;
  /** A BCP 47 language tag: how dates are written and words are spelled. */
  readonly locale: string;
}

interface Written extends Shared {
  readonly slug: string;
  /** Path of `report.md` from the content folder. */
  readonly file: string;
  readonly text: string;
  readonly files: readonly SourceFile[];
}

/** Reads one report into a `Source`, or into the problems that keep it from being one. */
export function defineSource(written: Written): {
  readonly source: Source | null;
  readonly problems: readonly Problem[];
} {
  const { slug, file, text, files, shop } = written;
  const { front, typed, body, placeOf, problems } = readReport(file, text, written);
  return {
    source:
      front === null
        ? null
        : {
            slug,
            front,
            typed,
            body,
            files,
            pictures: [],
            versions: [],
            shop,
            locale: shop?.defaults.locale ?? 'en-GB',
            placeOf,
          },
    problems,
  };
}
