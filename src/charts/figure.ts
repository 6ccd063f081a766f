/** A chart's numbers in rows; the first cell of a row heads it. */
export interface Table {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** The words that go with every chart. */
export interface FigureWords {
  /** Unique on the page; also the stem of every id inside the chart. Lower case, digits, hyphens. */
  readonly id: string;
  /** Heading above the chart, and with `subject` the image's name where it holds no unit of the reader's. */
  readonly question: string;
  /** What the chart is of, for the image's name: "Carry of three driver heads". */
  readonly subject: string;
  /** Caption: what was found, what the signs mean. */
  readonly finding: string;
  /** Long description in sentences, the trend included. */
  readonly description: string;
  readonly table: Table;
}

export interface DrawnFigure extends Omit<FigureWords, 'subject'> {
  readonly kind: 'drawn';
  /** How many of the things recorded the chart shows. */
  readonly drawn: number;
  readonly recorded: number;
  readonly counted: 'shots' | 'pairs' | 'comparisons' | 'spreads' | 'hitters' | 'parts' | 'gaps';
  /** `wide` is 720 px, `narrow` 288 px; the page shows one. */
  readonly svg: { readonly wide: string; readonly narrow: string };
}

export interface AbsentFigure {
  readonly kind: 'absent';
  readonly id: string;
  readonly question: string;
  readonly why: string;
}

/** A chart as a page needs it, or why there is none. */
export type Figure = DrawnFigure | AbsentFigure;

/** The accessible name of the image. */
export const imageName = ({ question, subject }: Pick<FigureWords, 'question' | 'subject'>): string =>
  /[?.!]$/.test(question) ? `${question} ${subject}` : `${question}: ${subject}`;

/** The words of a drawn figure without what only the image's name needs. */
export const pageWords = ({
  id,
  question,
  finding,
  description,
  table,
}: FigureWords): Omit<FigureWords, 'subject'> => ({
  id,
  question,
  finding,
  description,
  table,
});
