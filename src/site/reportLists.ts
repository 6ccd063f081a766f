import type { Report } from '../kit/report.ts';
import type { ReportKind } from './reportKinds.ts';

/** So many reports stand on one page; a list of fewer than `fewestParted` is not parted. */
const perPage = 50;
const fewestParted = 60;

/** One page of a list of reports. */
export interface ListPage {
  /** Null for the list of all. */
  readonly kind: ReportKind | null;
  /** From 1. */
  readonly number: number;
  readonly pages: number;
  readonly path: string;
  readonly reports: readonly Report[];
}

/** The pages of a list, in its order; one without reports has one page all the same. */
export function listPages(reports: readonly Report[], kind: ReportKind | null = null): readonly ListPage[] {
  const size = reports.length < fewestParted ? fewestParted : perPage;
  const pages = Math.max(1, Math.ceil(reports.length / size));
  return Array.from({ length: pages }, (_, index) => ({
    kind,
    number: index + 1,
    pages,
    path: listPath(kind, index + 1),
    reports: reports.slice(index * size, (index + 1) * size),
  }));
}

/** Address of a page of a list: `/`, `/page/2/`, `/kinds/drivers/`, `/kinds/drivers/page/2/`. */
export function listPath(kind: Pick<ReportKind, 'id'> | null, number: number): string {
  return `${kind === null ? '' : `/kinds/${kind.id}`}${number === 1 ? '' : `/page/${number}`}/`;
}
