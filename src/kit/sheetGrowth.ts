/** What stands on a counter sheet, as far as it takes room. */
interface SheetContents {
  /** Of all words but those of the chart. */
  readonly characters: number;
  /** One a main measure. */
  readonly answers: number;
  /** The chart at its own width of 720 px; 0 where there is none. */
  readonly chartHeight: number;
}

/** By how much the type of a counter sheet may be larger than its least, hundredths; a class of the style sheet each. */
export const sheetGrowths = [100, 105, 110, 115, 120, 125, 130, 135, 140, 145] as const;
type SheetGrowth = (typeof sheetGrowths)[number];

/** Printed room of Letter, the shorter of the two sheets, and its width beside A4's, px; a tenth of it is kept free. */
const room = 980 * 0.92;
const width = 688;

/** Measured on printed sheets at the least size: what headings, gaps and QR code take, and what a character takes. */
const fixed = 170;
const perAnswer = 30;
const perCharacter = 0.2;

/** The largest type at which all of it stays on one side of either paper. */
export function sheetGrowth({ characters, answers, chartHeight }: SheetContents): SheetGrowth {
  const chart = (chartHeight * width) / 720;
  const height = (growth: number): number =>
    (fixed + perAnswer * answers) * growth + characters * perCharacter * growth ** 2 + chart;
  return sheetGrowths.findLast((growth) => height(growth / 100) <= room) ?? 100;
}

/** Height of a chart at its own width, px; 0 where its drawing does not say. */
export function heightOf(svg: string): number {
  return Number(/^<svg\b[^>]*\sheight="([\d.]+)"/.exec(svg)?.[1] ?? 0);
}
