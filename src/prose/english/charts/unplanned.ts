/** Ends what was seen, but is not what a test set out to check. */
export const unplanned = ', seen but not tested for';
