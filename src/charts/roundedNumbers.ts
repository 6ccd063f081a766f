/** As many as a chart has tenths of a pixel. */
const mostKnown = 10_000;

/** Texts of what was rounded, by the number of decimals, at the rounded number times its power of ten. */
const known = { 1: new Array<string | undefined>(mostKnown), 2: new Array<string | undefined>(mostKnown) };

/** A finite number as it is written, with at most so many decimals; whole numbers as they are. */
export const roundedNumber = (number: number, decimals: 1 | 2): string => {
  if (Number.isInteger(number)) return String(number);
  const factor = decimals === 1 ? 10 : 100;
  // Halves go up whatever their last digit, so that a place comes out alike from yards and from metres.
  const steps = Math.round(number * factor + 1e-6);
  // Adding 0 turns minus zero into zero.
  if (!(steps >= 0 && steps < mostKnown)) return String(steps / factor + 0);
  return (known[decimals][steps] ??= String(steps / factor + 0));
};

/** A text in which every number with a fraction or an exponent is rounded. */
export const roundedNumbers = (text: string, decimals: 1 | 2): string =>
  text.replaceAll(/-?\d*\.\d+(?:e[-+]?\d+)?|-?\d+e[-+]?\d+/g, (number) =>
    roundedNumber(Number(number), decimals),
  );
