const minus = '−';

/**
 * A number as the pages print it: fixed decimals, a true minus sign, thousands parted by a comma, and never a
 * minus before a zero.
 */
export function formatNumber(value: number, decimals: number): string {
  const fixed = roundHalfAway(Math.abs(value), decimals).toFixed(decimals);
  const [whole = '0', fraction] = fixed.split('.');
  const grouped = whole.length > 3 ? whole.replace(/\B(?=(\d{3})+$)/g, ',') : whole;
  const sign = value < 0 && Number(fixed) !== 0 ? minus : '';
  return sign + grouped + (fraction === undefined ? '' : `.${fraction}`);
}

// toFixed works on the binary value: 1.005 is a little under 1.005 and would print as 1.00.
function roundHalfAway(value: number, decimals: number): number {
  if (decimals === 0) return Math.round(value);
  const scaled = Number(`${value}e${decimals}`);
  return Number.isFinite(scaled) ? Number(`${Math.round(scaled)}e-${decimals}`) : value;
}

/** A step that numbers are rounded to, and the decimals that show it. */
export interface PrintStep {
  readonly step: number;
  readonly decimals: number;
}

/** The largest of 1, 2 and 5 times a power of ten that is at most `most`. */
export function niceStep(most: number): PrintStep {
  const power = Math.floor(Math.log10(most) + 1e-9);
  const lead = most / Number(`1e${power}`);
  const digit = lead >= 5 - 1e-9 ? 5 : lead >= 2 - 1e-9 ? 2 : 1;
  return { step: Number(`${digit}e${power}`), decimals: Math.max(0, -power) };
}

/** `value` rounded to a step and printed; among half steps no digit that says nothing: 10 and 10.5, 1.44 and 1.445. */
export function formatStep(value: number, step: PrintStep): string {
  const rounded = roundTo(value, step);
  const halves = step.decimals > 0 && Math.round(step.step * 10 ** step.decimals) === 5;
  const whole = halves && Math.round(Math.abs(rounded) / step.step) % 2 === 0;
  return formatNumber(rounded, whole ? step.decimals - 1 : step.decimals);
}

/** `value` rounded to a step, halves away from zero: a gap reads the same from either side. */
export function roundTo(value: number, { step, decimals }: PrintStep): number {
  const exact = Math.abs(value) / step;
  // A half that came a hair short out of a conversion of units is a half; printing to see it takes time, and few are near one.
  const nearHalf = Math.abs(exact - Math.floor(exact) - 0.5) < 1e-6;
  const steps = Math.round(nearHalf ? Number(exact.toFixed(9)) : exact);
  const size = Number((steps * step).toFixed(decimals));
  return value < 0 && size !== 0 ? -size : size;
}

/** A number as it was stated; one that was stated in another unit, and comes out crooked, to two digits. */
export function printStated(value: number): string {
  const isWhole = (places: number): boolean => Math.abs(value - Number(value.toFixed(places))) < 1e-9;
  const places = [0, 1, 2].find(isWhole);
  if (places !== undefined) return formatNumber(value, places);
  const rounded = Number(value.toPrecision(2));
  return formatNumber(rounded, String(rounded).split('.')[1]?.length ?? 0);
}
