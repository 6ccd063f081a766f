import { narrativeCharts } from '../charts/narrativeCharts.ts';
import type { DrawnFigure, Figure } from '../charts/figure.ts';
import type { Variant } from '../charts/layout.ts';
import { sharedDrawing } from '../kit/sharedDrawing.ts';
import type { MeetingsOfBuilds } from '../kit/pairRecords.ts';
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

/** What a part of a report's page is given. */
export interface PartOfReport {
  readonly report: Report;
  readonly told: ToldTwice;
}

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
  const told = ({ telling, figures, narrativeHtml }: Report): ToldReport => ({
    system: telling.system,
    telling,
    figures,
    narrativeHtml,
  });
  return [told(report), told(reportInOtherUnits(report))];
}

/** The same told in the units that the shop does not use. */
export function inOtherUnits(telling: Telling): Telling {
  return { ...telling, system: otherUnits(telling.system) };
}

/** The reports asked for last: pages of one report come after one another, and its drawings are large. */
const held = new Map<Report, Report>();
const mostHeld = 4;

/**
 * A report as it reads in the units that the shop does not use.
 */
export function reportInOtherUnits(report: Report): Report {
  const known = held.get(report);
  if (known !== undefined) return known;
  const made = makeInOtherUnits(report);
  const [oldest] = held.keys();
  if (held.size >= mostHeld && oldest !== undefined) held.delete(oldest);
  held.set(report, made);
  return made;
}

function makeInOtherUnits(report: Report): Report {
  const telling = inOtherUnits(report.telling);
  const { body, pictures } = report.source;
  const { html } = renderNarrative(
    { ...body, file: '' },
    telling,
    narrativeCharts(telling.findings),
    pictures,
  );
  return {
    ...report,
    telling,
    figures: report.figuresInOtherUnits(),
    figuresInOtherUnits: () => report.figures,
    narrativeHtml: report.narrativeHtml === '' ? '' : html,
  };
}

/** The two systems themselves, this one first. */
export const inEither = (system: UnitSystem): readonly InUnits<UnitSystem>[] =>
  [system, otherUnits(system)].map((one) => ({ system: one, of: one }));

/** Something and how it reads in the units that the shop does not use. */
export const inBothUnits = <Thing>(
  { telling: { system } }: Report,
  own: Thing,
  other: Thing,
): readonly InUnits<Thing>[] => [
  { system, of: own },
  { system: otherUnits(system), of: other },
];

/** Meetings of a pair told in the units that the shop does not use; their charts are not drawn anew. */
export function meetingsInOtherUnits(group: MeetingsOfBuilds): MeetingsOfBuilds {
  return {
    ...group,
    meetings: group.meetings.map((meeting) => ({
      ...meeting,
      report: { ...meeting.report, telling: inOtherUnits(meeting.report.telling) },
    })),
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

/** One drawing that serves both systems of units, made of one in each; the first alone where they cannot be one. */
export function sharedInBothUnits(drawings: readonly InUnits<string>[]): string | null {
  const [own, other] = drawings;
  if (own === undefined) return null;
  if (other === undefined || own.of === other.of) return own.of;
  return sharedDrawing({ mark: own.system, svg: own.of }, { mark: other.system, svg: other.of }) ?? own.of;
}

/** Drawings of a chart in each system of units, or the one that serves both. */
export function drawingsOf(
  copies: readonly InUnits<DrawnFigure>[],
  variant: Variant,
): readonly InUnits<string>[] {
  const drawings = copies.map(({ system, of }) => ({ system, of: of.svg[variant], id: of.id }));
  const [own, other] = drawings;
  if (own === undefined || other === undefined) return drawings;
  const shared = sharedDrawing({ mark: own.system, svg: own.of }, { mark: other.system, svg: other.of });
  if (shared !== null) return [{ system: own.system, of: shared }];
  // Two on one page: the ids inside begin with the variant's, and those of the second become others.
  const ids = new RegExp(`(["#])${other.id}-${variant}-`, 'g');
  return [own, { ...other, of: other.of.replaceAll(ids, `$1${other.id}-${variant}-${other.system}-`) }];
}
