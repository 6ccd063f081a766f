/** Round steps of a scale from a ten-thousandth up: 1, 2 and 5 times a power of ten. */
function* roundSteps(from: number): Generator<number> {
  for (let exponent = Math.floor(Math.log10(from)); ; exponent += 1) {
    for (const factor of [1, 2, 5]) yield Number(`${factor}e${exponent}`);
  }
}

/** The smallest round step that takes at most `most` steps over `span`. Throws unless `span` is positive and finite. */
export const stepOver = (span: number, most: number): number => {
  if (!(span > 0 && Number.isFinite(span))) throw new Error(`A scale cannot span ${span}.`);
  for (const step of roundSteps(span / most / 10)) {
    // The margin lets a span that is whole steps but for rounding count as whole.
    if (Math.ceil(span / step - 1e-9) <= most) return step;
  }
  throw new Error('Steps grow without end, so that this cannot be reached.');
};

/** `start`, then every `step` up to `end`, without the drift that adding up would bring. */
export const stepsBetween = (start: number, end: number, step: number): readonly number[] => {
  const first = Math.ceil(start / step - 1e-9);
  const last = Math.floor(end / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) =>
    Number(((first + index) * step).toPrecision(12)),
  );
};

/** Formats by number of decimals; making one costs more than a chart's worth of using it. */
const formats = Array.from(
  { length: 7 },
  (_, decimals) => new Intl.NumberFormat('en-US', { maximumFractionDigits: decimals }),
);

/** A number of a scale as printed, with the decimals its step needs (at most six) and thousands set off. */
export const tickText = (value: number, step: number): string => {
  const decimals = Math.min(formats.length - 1, Math.max(0, -Math.floor(Math.log10(step) + 1e-9)));
  // Adding 0 turns minus zero into zero.
  return (formats[decimals]?.format(value + 0) ?? String(value)).replace('-', '\u2212');
};
