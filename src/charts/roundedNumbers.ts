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

const [zero, nine] = [0x30, 0x39];
const [minus, plus, point, exponent] = [0x2d, 0x2b, 0x2e, 0x65];

/** Where the digits that begin at `from` end. */
const afterDigits = (text: string, from: number): number => {
  let at = from;
  for (let code = text.charCodeAt(at); code >= zero && code <= nine; code = text.charCodeAt(at)) at += 1;
  return at;
};

/** Where an exponent that begins at `from` ends; `from` itself where there is none. */
const afterExponent = (text: string, from: number): number => {
  if (text.charCodeAt(from) !== exponent) return from;
  const sign = text.charCodeAt(from + 1);
  const digits = sign === minus || sign === plus ? from + 2 : from + 1;
  const end = afterDigits(text, digits);
  return end === digits ? from : end;
};

/** A text in which every number with a fraction or an exponent is rounded. Read by hand: a chart has thousands. */
export const roundedNumbers = (text: string, decimals: 1 | 2): string => {
  let rounded = '';
  let [written, at] = [0, 0];
  while (at < text.length) {
    const whole = text.charCodeAt(at) === minus ? at + 1 : at;
    const wholeEnd = afterDigits(text, whole);
    const fractionEnd = text.charCodeAt(wholeEnd) === point ? afterDigits(text, wholeEnd + 1) : wholeEnd;
    const hasFraction = fractionEnd > wholeEnd + 1;
    const numberEnd = hasFraction ? fractionEnd : wholeEnd;
    const end = numberEnd > whole ? afterExponent(text, numberEnd) : numberEnd;
    if (hasFraction || end > numberEnd) {
      rounded += text.slice(written, at) + roundedNumber(Number(text.slice(at, end)), decimals);
      written = end;
    }
    at = Math.max(end, at + 1);
  }
  return rounded + text.slice(written);
};
