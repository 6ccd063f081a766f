import { toCanonical } from '../trade/units.ts';

/**
 * Metres by which a modelled carry may be wrong, and below which a modelled gap between two contenders is never a
 * finding. Our judgement, from four averages of the trade (common practice, no source) and leaving one out of the
 * four: tuned to shots of the same kind up to 5 yards; untuned up to 6 % of the carry.
 */
export const leastModelledGap = toCanonical(5, 'yd');

/**
 * Metres of carry per rpm by which the model fails the only public figures on spin: from 2888 to 2232 rpm its error
 * runs from +3.0 to -3.7 yards (the same four averages). What the model gives to a spin gap must outweigh this.
 */
export const spinTrendError = toCanonical((3.0 + 3.7) / (2888 - 2232), 'yd');
