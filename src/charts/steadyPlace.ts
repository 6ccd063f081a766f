/**
 * A place, px, less the digits in which yards and metres differ: where marks just touch, both are to decide alike.
 */
export const steadyPlace = (place: number): number => Math.round(place * 1e9) / 1e9;
