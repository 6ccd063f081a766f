import type { FigureWords } from './figure.ts';

/** A pair with a clear gap: the dearer one minus the other, in the units the reader sees. */
export interface PricedGap {
  /** "Alder over Cedar". */
  readonly name: string;
  /** How much dearer. */
  readonly price: number;
  /** How much more the dearer one had; negative where it had less. */
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
  /** "Alder costs £150 more than Birch and carried farther: about 12 yards, likely 7 to 18.". */
  readonly words: string;
}

export interface PriceInput extends FigureWords {
  readonly pairs: readonly PricedGap[];
  /** The smallest gap that matters, in the unit of the gaps; 0 draws no band. */
  readonly matters: number;
  /** What the scale up the side measures: "Yards farther with the dearer head". */
  readonly gapAxis: string;
  /** What the scale along the foot measures: "Difference of price in pounds, 11 April 2026". */
  readonly priceAxis: string;
  /** What the hatched band says: "Under 5 yards: too small to matter". */
  readonly legend: string;
}
