import { hrefIn } from '../site/href.ts';

/** The last step in the address of a part of a report. */
export type ReportPartId = 'shots' | 'claims' | 'after';

/** The addresses of the desk and of the pages beside it. */
export interface DeskPlaces {
  readonly front: string;
  readonly shop: string;
  readonly report: (slug: string) => string;
  /** A page on which one part of a report is worked at. */
  readonly part: (slug: string, part: ReportPartId) => string;
  /** Where a test is planned. */
  readonly plan: string;
  /** What its form is sent to while it is filled in. */
  readonly planArithmetic: string;
  /** The sheet of a planned test, to print. */
  readonly planSheet: (slug: string) => string;
  /** Where a report is given another address. */
  readonly address: (slug: string) => string;
  readonly files: string;
  readonly waiting: string;
  readonly build: string;
  readonly record: string;
  /** Leads to the site as it was built. */
  readonly built: string;
  /** The site as it is edited. */
  readonly site: string;
  /** The page of a report as it stands. */
  readonly livePage: (slug: string) => string;
  readonly styles: string;
  readonly script: string;
}

/** @param base the path below which the site lies, `/` for most */
export function deskPlaces(base: string): DeskPlaces {
  const href = hrefIn(base);
  const name = (slug: string): string => encodeURIComponent(slug);
  return {
    front: href('/desk/'),
    shop: href('/desk/shop/'),
    report: (slug) => href(`/desk/reports/${name(slug)}/`),
    part: (slug, part) => href(`/desk/reports/${name(slug)}/${part}/`),
    plan: href('/desk/plan/'),
    planArithmetic: href('/desk/plan/arithmetic/'),
    planSheet: (slug) => href(`/desk/plan/${name(slug)}/sheet/`),
    address: (slug) => href(`/desk/reports/${name(slug)}/address/`),
    files: href('/desk/files/'),
    waiting: href('/desk/waiting/'),
    build: href('/desk/build/'),
    record: href('/desk/record/'),
    built: href('/desk/built/'),
    site: href('/'),
    livePage: (slug) => href(`/reports/${name(slug)}/`),
    styles: href('/src/styles/desk.css'),
    script: href('/src/desk/script/atDesk.ts'),
  };
}
