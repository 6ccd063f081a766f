import type { UnitId } from '../trade/units.ts';

const minus = '−';

/**
 * A number as the pages print it: fixed decimals, a true minus sign, thousands parted by a comma, and never a
 * minus before a zero.
 */
export function formatNumber(value: number, decimals: number): string {
  const fixed = roundHalfAway(Math.abs(value), decimals).toFixed(decimals);
  const [whole = '0', fraction] = fixed.split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  const sign = value < 0 && Number(fixed) !== 0 ? minus : '';
  return sign + grouped + (fraction === undefined ? '' : `.${fraction}`);
}

// toFixed works on the binary value: 1.005 is a little under 1.005 and would print as 1.00.
function roundHalfAway(value: number, decimals: number): number {
  const scaled = Number(`${value}e${decimals}`);
  return Number.isFinite(scaled) ? Number(`${Math.round(scaled)}e-${decimals}`) : value;
}

/** A step that numbers are rounded to, and the decimals that show it. */
export interface PrintStep {
  readonly step: number;
  readonly decimals: number;
}

/** From coarse to fine; the first is what a reader needs, the others where a coarser one would hide the result. */
const ladders: Readonly<Record<UnitId, readonly PrintStep[]>> = {
  yd: tens(1),
  m: tens(1),
  mph: tens(1),
  'km/h': tens(1),
  'm/s': tens(1),
  ft: tens(1),
  in: tens(0.1),
  cm: tens(0.1),
  mm: tens(1),
  deg: [{ step: 0.5, decimals: 1 }, ...tens(0.1)],
  rpm: [{ step: 50, decimals: 0 }, { step: 10, decimals: 0 }, ...tens(1)],
  '1': tens(0.01),
  s: tens(0.1),
};

function tens(first: number): readonly PrintStep[] {
  const decimals = Math.max(0, Math.round(-Math.log10(first)));
  return [0, 1, 2, 3].map((finer) => ({
    step: Number(`1e-${decimals + finer}`),
    decimals: decimals + finer,
  }));
}

/**
 * The step for numbers known to within `halfWidth`: the coarsest on the unit's ladder that keeps at most two
 * digits of the uncertainty (JCGM 100:2008, 7.2.6). Without a half-width, the unit's first step.
 */
export function stepFor(unit: UnitId, halfWidth: number | null): PrintStep {
  const ladder = ladders[unit];
  const fits = ladder.find(({ step }) => halfWidth === null || halfWidth >= 2 * step);
  const last = ladder[ladder.length - 1] ?? { step: 1, decimals: 0 };
  return fits ?? last;
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

/** The step one rung finer, or the same where there is none. */
export function finerStep(unit: UnitId, { step }: PrintStep): PrintStep {
  const ladder = ladders[unit];
  const at = ladder.findIndex((rung) => rung.step === step);
  return ladder[Math.min(at + 1, ladder.length - 1)] ?? { step, decimals: 0 };
}

/** `value` rounded to a step, halves away from zero: a gap reads the same from either side. */
export function roundTo(value: number, { step, decimals }: PrintStep): number {
  // A half that came a hair short out of a conversion of units is a half.
  const steps = Math.round(Number((Math.abs(value) / step).toFixed(9)));
  const size = Number((steps * step).toFixed(decimals));
  return value < 0 && size !== 0 ? -size : size;
}

/** `value` rounded to a step and printed. */
export function printAt(value: number, step: PrintStep): string {
  return formatNumber(roundTo(value, step), step.decimals);
}

/** Beyond these two numbers are the same to us: what differs there came with the conversion of units. */
const mostDecimals = 9;

/**
 * A limit of an interval, printed so that it falls on the same side of every threshold as the unrounded value:
 * one more digit as long as it does not.
 */
export function printLimit(
  value: number,
  step: PrintStep,
  unit: UnitId,
  thresholds: readonly number[],
): string {
  const rounded = roundTo(value, step);
  // Both come from a unit conversion: 4.572 m must be 5 yards here, not 5.000000000000001.
  const exact = clean(value);
  const faithful = thresholds
    .map(clean)
    .every((threshold) => Math.sign(rounded - threshold) === Math.sign(exact - threshold));
  if (faithful || step.decimals >= mostDecimals) return formatNumber(rounded, step.decimals);
  const finer = finerStep(unit, step);
  const decimals = step.decimals + 1;
  const next = finer.step < step.step ? finer : { step: Number(`1e-${decimals}`), decimals };
  return printLimit(value, next, unit, thresholds);
}

function clean(value: number): number {
  return Number(value.toFixed(mostDecimals));
}

/** A number as it was stated; one that was stated in another unit, and comes out crooked, to two digits. */
export function printStated(value: number): string {
  const isWhole = (places: number): boolean => Math.abs(value - Number(value.toFixed(places))) < 1e-9;
  const places = [0, 1, 2].find(isWhole);
  if (places !== undefined) return formatNumber(value, places);
  const rounded = Number(value.toPrecision(2));
  return formatNumber(rounded, String(rounded).split('.')[1]?.length ?? 0);
}
