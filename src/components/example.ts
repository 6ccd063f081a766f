import type { DrawnFigure } from '../charts/figure.ts';
import type { Report } from '../kit/report.ts';
import type { Brand } from '../site/brand/brand.ts';
import { toldTwice } from '../site/toldTwice.ts';

/** One named case of a page component: documentation, page of the specimen and test at once. */
export interface Example {
  readonly name: string;
  readonly props: Readonly<Record<string, unknown>>;
  /** Words that a reader must find. */
  readonly shows: readonly string[];
  /** Words that must not be there; `undefined` and `NaN` never may. */
  readonly hides?: readonly string[];
  /** Ids that its links lead to and that stand elsewhere on its page. */
  readonly leadsTo?: readonly string[];
}

/** What examples are made of: the site of the content that tries the pages. */
export interface ExampleSite {
  /** @throws where there is no such report */
  readonly report: (slug: string) => Report;
  readonly brand: Brand;
}

/** The cases of the component beside which they stand: `<Name>.example.ts` beside `<Name>.astro`. */
export type Examples = (site: ExampleSite) => readonly Example[];

/** A case of a part of a report's page: what it is given besides the report and what is told of it. */
interface ExampleOfReport extends Omit<Example, 'props'> {
  /** Slug of the report. */
  readonly of: string;
  readonly props?: Example['props'];
}

export const ofReports =
  (cases: readonly ExampleOfReport[]): Examples =>
  ({ report }) =>
    cases.map(({ of, props, ...words }) => ({
      ...words,
      props: { report: report(of), told: toldTwice(report(of)), ...props },
    }));

/** @throws where the report has no such chart */
export function drawn({ figures }: Report, id: string): DrawnFigure {
  const figure = figures.find((one) => one.id === id);
  if (figure?.kind !== 'drawn') throw new Error(`There is no chart ${id} to show.`);
  return figure;
}
