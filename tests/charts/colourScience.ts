/** Colour arithmetic for the tests of the palette, from published formulas. */

export type Triple = readonly [number, number, number];
type Matrix = readonly [Triple, Triple, Triple];

const times = (matrix: Matrix, [a, b, c]: Triple): Triple => {
  const row = ([x, y, z]: Triple): number => x * a + y * b + z * c;
  return [row(matrix[0]), row(matrix[1]), row(matrix[2])];
};

/** Linear-light sRGB of a hex colour (IEC 61966-2-1). */
export const linearOf = (hex: string): Triple => {
  const channel = (at: number): number => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [channel(1), channel(3), channel(5)];
};

/** Relative luminance, WCAG 2.2. */
const luminance = (hex: string): number => {
  const [red, green, blue] = linearOf(hex);
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
};

/** Contrast ratio, WCAG 2.2. */
export const contrast = (one: string, other: string): number => {
  const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
};

/**
 * Dichromats at severity 1.0 in linear RGB: Machado, Oliveira & Fernandes, "A Physiologically-based Model for Simulation of Color Vision
 * Deficiency", IEEE TVCG 15(6), 2009 (matrices from memory; rows sum to 1 as the model demands).
 */
const dichromats = {
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritan: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
} as const satisfies Record<string, Matrix>;

export type Vision = 'normal' | keyof typeof dichromats;

/** What a viewer sees, linear RGB within 0 to 1. */
const seen = (hex: string, vision: Vision): Triple => {
  const linear = linearOf(hex);
  if (vision === 'normal') return linear;
  const [red, green, blue] = times(dichromats[vision], linear);
  const within = (value: number): number => Math.min(1, Math.max(0, value));
  return [within(red), within(green), within(blue)];
};

/** CIE 1976 L*a*b* under D65 of a linear sRGB colour. */
const labOf = (linear: Triple): Triple => {
  const [x, y, z] = times(
    [
      [0.4124564, 0.3575761, 0.1804375],
      [0.2126729, 0.7151522, 0.072175],
      [0.0193339, 0.119192, 0.9503041],
    ],
    linear,
  );
  const root = (value: number): number =>
    value > (6 / 29) ** 3 ? Math.cbrt(value) : value / (3 * (6 / 29) ** 2) + 4 / 29;
  const [fx, fy, fz] = [root(x / 0.95047), root(y), root(z / 1.08883)];
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)];
};

const degrees = (radians: number): number => ((radians * 180) / Math.PI + 360) % 360;
const cosine = (angle: number): number => Math.cos((angle * Math.PI) / 180);

/** CIEDE2000 colour difference: Sharma, Wu & Dalal, Color Research and Application 30(1), 2005, 21-30. */
export const ciede2000 = (one: Triple, other: Triple): number => {
  const [l1, a1, b1] = one;
  const [l2, a2, b2] = other;
  const chroma = (Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2;
  const g = 0.5 * (1 - Math.sqrt(chroma ** 7 / (chroma ** 7 + 25 ** 7)));
  const [p1, p2] = [a1 * (1 + g), a2 * (1 + g)];
  const [c1, c2] = [Math.hypot(p1, b1), Math.hypot(p2, b2)];
  const hue = (b: number, a: number): number => (a === 0 && b === 0 ? 0 : degrees(Math.atan2(b, a)));
  const [h1, h2] = [hue(b1, p1), hue(b2, p2)];
  const grey = c1 * c2 === 0;
  const turn = h2 - h1;
  const between = grey ? 0 : turn > 180 ? turn - 360 : turn < -180 ? turn + 360 : turn;
  const dL = l2 - l1;
  const dC = c2 - c1;
  const dH = 2 * Math.sqrt(c1 * c2) * Math.sin((between * Math.PI) / 360);
  const lightness = (l1 + l2) / 2;
  const meanC = (c1 + c2) / 2;
  const sum = h1 + h2;
  const meanH = grey ? sum : Math.abs(turn) <= 180 ? sum / 2 : sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
  const t =
    1 -
    0.17 * cosine(meanH - 30) +
    0.24 * cosine(2 * meanH) +
    0.32 * cosine(3 * meanH + 6) -
    0.2 * cosine(4 * meanH - 63);
  const sL = 1 + (0.015 * (lightness - 50) ** 2) / Math.sqrt(20 + (lightness - 50) ** 2);
  const sC = 1 + 0.045 * meanC;
  const sH = 1 + 0.015 * meanC * t;
  const rotation =
    -2 *
    Math.sqrt(meanC ** 7 / (meanC ** 7 + 25 ** 7)) *
    Math.sin((60 * Math.exp(-(((meanH - 275) / 25) ** 2)) * Math.PI) / 180);
  return Math.sqrt((dL / sL) ** 2 + (dC / sC) ** 2 + (dH / sH) ** 2 + rotation * (dC / sC) * (dH / sH));
};

/** Distance between two hex colours as a viewer sees them, CIEDE2000. */
export const colourDistance = (one: string, other: string, vision: Vision): number =>
  ciede2000(labOf(seen(one, vision)), labOf(seen(other, vision)));

/** Hue angle of a hex colour in CIE L*a*b*, degrees. */
export const hueOf = (hex: string): number => {
  const [, a, b] = labOf(linearOf(hex));
  return degrees(Math.atan2(b, a));
};
