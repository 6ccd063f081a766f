import type { GapWords, JudgedPair, UnjudgedPair } from './apartInput.ts';
import type { FigureWords } from './figure.ts';

/**
 * A pair's difference in one measure of delivery, the first-named minus the second, as what it could be worth in the metric of the
 * answer. Its name names the measure: "Club speed: Heron and Wren".
 */
export interface PricedDelivery extends JudgedPair {
  readonly measure: string;
  /** Whether path or face is priced across as well, which may make another answer of it. */
  readonly acrossToo: boolean;
  /** Same: the whole interval lies within the margin. Different: off 0, and the estimate is worth the margin or more. */
  readonly judgement: 'same' | 'different' | 'cannot-tell';
}

/** A measure that has no price, or was not recorded often enough: words alone. */
interface UnpricedDelivery extends UnjudgedPair {
  readonly measure: string;
}

export type DeliveryRow = PricedDelivery | UnpricedDelivery;

export interface DeliveryInput extends FigureWords, Omit<GapWords, 'matters'> {
  /** One a measure and pair, or one a measure: its largest difference. */
  readonly rows: readonly DeliveryRow[];
  /** What a difference must be worth to count, in the unit of the rows. */
  readonly margin: number;
}
