/** A card's paper, and how far from its edges words may stand, px. */
export interface CardFrame {
  readonly width: number;
  readonly height: number;
  /** From either side. */
  readonly side: number;
  readonly above: number;
  readonly below: number;
}

/** How wide its lines may be, px. */
export function roomOf({ width, side }: CardFrame): number {
  return width - 2 * side;
}
