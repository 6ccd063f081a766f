import { imageName, type DrawnFigure, type Figure } from '../charts/figure.ts';
import { altText } from './altText.ts';
import { captions, type Captions } from './captions.ts';
import { sayRefusal } from '../prose/english/kit/refusals.ts';
import { wholeHeadline } from './headline.ts';
import { refusal } from './refusal.ts';
import type { Report } from './report.ts';
import { textOf } from './said.ts';
import { tableText } from './tableText.ts';

/** One chart with all that an editor needs to print it. */
export interface KitItem {
  readonly figure: DrawnFigure;
  /** The chart's question; where two ask the same, with what each is of. */
  readonly title: string;
  readonly headline: string;
  readonly captions: Captions;
  readonly alt: string;
  /** The numbers behind it, cells parted by tabs. */
  readonly table: string;
}

export interface NotOffered {
  readonly question: string;
  readonly why: string;
}

/** What an editor may take from a report: the chart to take first at the top. */
interface Kit {
  readonly offered: readonly KitItem[];
  readonly notOffered: readonly NotOffered[];
}

// Every page and file of a kit asks for it, and a report never changes.
const made = new WeakMap<Report, Kit>();

/** The kit of a report; a withdrawn one gives nothing away. */
export function kitOf(report: Report): Kit {
  const known = made.get(report) ?? makeKit(report);
  made.set(report, known);
  return known;
}

function makeKit(report: Report): Kit {
  if (report.source.front.status === 'withdrawn') return { offered: [], notOffered: [] };
  return {
    offered: figuresToOffer(report).map((figure) => ({
      figure,
      title: titleOf(figure, report),
      headline: textOf(wholeHeadline(report, figure)),
      captions: captions(report, figure),
      alt: altText(report, figure),
      table: tableText(figure.table),
    })),
    notOffered: report.figures.flatMap((figure) => {
      const why = whyNot(report, figure);
      return why === null ? [] : [{ question: figure.question, why }];
    }),
  };
}

/** The charts that may leave the page of a report, or might before it was withdrawn. */
export function figuresToOffer(report: Report): readonly DrawnFigure[] {
  return report.figures.flatMap((figure) =>
    figure.kind === 'drawn' && whyNot(report, figure) === null ? [figure] : [],
  );
}

/** Why a chart is not given away, in a sentence; null where it is. */
function whyNot(report: Report, figure: Figure): string | null {
  if (figure.kind === 'absent') return figure.why;
  const need = refusal(report, figure);
  return need === null ? null : sayRefusal(need, report.telling);
}

function titleOf(figure: DrawnFigure, { figures }: Report): string {
  const alone = figures.filter(({ question }) => question === figure.question).length === 1;
  return alone ? figure.question : imageName(figure);
}
