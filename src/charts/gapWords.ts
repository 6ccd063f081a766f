import type { GapEnds } from './gapAxis.ts';
import type { GapKey } from './gapKey.ts';

/** What a chart of gaps says of its scale and its signs. */
export interface GapWords {
  /** The smallest gap that matters, in the unit of the pairs; 0 draws no band. */
  readonly matters: number;
  /** Over the band: "too small to matter, under 4 yards". */
  readonly bandWords: string;
  /** After the last number of the scale: "yards"; empty for a ratio. */
  readonly unit: string;
  readonly ends: GapEnds;
  /** Under the scale: of what the differences are, and what ranges hold. */
  readonly foot: string;
  readonly key: GapKey;
}
