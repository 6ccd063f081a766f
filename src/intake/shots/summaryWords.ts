/** Words that head a row of averages and the like rather than a shot. Common practice, no source. */
const summary =
  /^(?:(?:session|club|overall|grand|set|group|total)\s+)?(?:averages?|avg|aver|means?|medians?|std\.?\s*dev\.?|st\.?\s*dev\.?|stdev\.?|stddev\.?|standard\s+deviations?|s\.?d\.?|std\.?|deviations?|variances?|var|min|max|minimum|maximum|range|spread|totals?|sums?|counts?|summary|consistency|best|worst|cv|dispersion|n)(?:\s*\([^()]*\))?\.?:?$/i;

const warmUp = /^(?:warm(?:ing)?[\s-]*ups?|practice)(?:\s*(?:shot|swing)s?)?\s*#?\d*$/i;

/** Whether the shot-number cell of a row says that the row sums up others. */
export function isSummaryWord(text: string): boolean {
  return text.length <= 60 && summary.test(text.replace(/\s+/g, ' ').trim());
}

export function isWarmUpWord(text: string): boolean {
  return text.length <= 60 && warmUp.test(text.trim());
}
