import { chartQuestions } from '../charts/chartQuestions.ts';
import type { DrawnFigure, Figure } from '../charts/figure.ts';
import type { Report } from '../kit/report.ts';
import { renderNarrative } from '../prose/narrative.ts';
import type { UnitSystem } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';

/** A report's words and charts in one system of units. */
export interface ToldReport {
  readonly system: UnitSystem;
  readonly telling: Telling;
  readonly figures: readonly Figure[];
  readonly narrativeHtml: string;
}

/** The shop's own units first, then the others. */
export type ToldTwice = readonly [shop: ToldReport, other: ToldReport];

/** One of the copies of something that a page shows in both systems of units. */
export interface InUnits<Thing> {
  readonly system: UnitSystem;
  readonly of: Thing;
}

/** The system that is not this one. */
export const otherUnits = (system: UnitSystem): UnitSystem => (system === 'yards' ? 'metres' : 'yards');

/**
 * A report in both systems of units, each rounded for itself: nobody reads converted roundings.
 */
export function toldTwice(report: Report): ToldTwice {
  const { source, telling, figures, narrativeHtml } = report;
  const other = inOtherUnits(telling);
  const { system } = other;
  const { html } = renderNarrative({ ...source.body, file: '' }, other, chartQuestions);
  return [
    { system: telling.system, telling, figures, narrativeHtml },
    {
      system,
      telling: other,
      figures: report
        .figuresInOtherUnits()
        .map((figure) => (figure.kind === 'drawn' ? withOwnIds(figure, system) : figure)),
      narrativeHtml: narrativeHtml === '' ? '' : html,
    },
  ];
}

/** The same told in the units that the shop does not use. */
export function inOtherUnits(telling: Telling): Telling {
  return { ...telling, system: otherUnits(telling.system) };
}

/** Ids inside a chart begin with its variant's; the second copy on a page needs others. */
function withOwnIds(figure: DrawnFigure, system: UnitSystem): DrawnFigure {
  const renamed = (svg: string, variant: 'wide' | 'narrow'): string =>
    svg.replaceAll(new RegExp(`(["#])${figure.id}-${variant}-`, 'g'), `$1${figure.id}-${variant}-${system}-`);
  return {
    ...figure,
    svg: { wide: renamed(figure.svg.wide, 'wide'), narrow: renamed(figure.svg.narrow, 'narrow') },
  };
}

/** Copies of a whole report, for words that need all of it. */
export const copies = (told: ToldTwice): readonly InUnits<ToldReport>[] =>
  told.map((one) => ({ system: one.system, of: one }));

/** Copies of one of its charts, in the order of `told`; none where it was not drawn. */
export const figureCopies = (told: ToldTwice, id: string): readonly InUnits<DrawnFigure>[] =>
  told.flatMap(({ system, figures }) =>
    figures.flatMap((figure) =>
      figure.kind === 'drawn' && figure.id === id ? [{ system, of: figure }] : [],
    ),
  );

/** Whether two copies of a chart differ in more than their ids. */
export function sameChart(one: string, other: string): boolean {
  return one === other.replaceAll(/(-(?:wide|narrow))-(?:yards|metres)-/g, '$1-');
}
