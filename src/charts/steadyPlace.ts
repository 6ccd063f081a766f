/**
 * A position, px, rounded past the digits in which yards and metres differ, so that marks which only just touch are
 * treated the same in both.
 */
export const steadyPlace = (place: number): number => Math.round(place * 1e9) / 1e9;
