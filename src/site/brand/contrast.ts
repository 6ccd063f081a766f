/** Red, green and blue of light, each 0 to 1. */
export type LinearRgb = readonly [red: number, green: number, blue: number];

/** Light of an sRGB colour `#rrggbb` (IEC 61966-2-1). */
export function linearOf(hex: string): LinearRgb {
  const channel = (at: number): number => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [channel(1), channel(3), channel(5)];
}

/** The sRGB colour `#rrggbb` of light, rounded to eight bits; light outside 0 to 1 is cut off. */
export function hexOf(linear: LinearRgb): string {
  const digits = linear.map((light) => {
    const within = Math.min(1, Math.max(0, light));
    const value = within <= 0.0031308 ? within * 12.92 : 1.055 * within ** (1 / 2.4) - 0.055;
    return Math.round(value * 255)
      .toString(16)
      .padStart(2, '0');
  });
  return `#${digits.join('')}`;
}

/** Relative luminance (WCAG 2.2). */
function luminance([red, green, blue]: LinearRgb): number {
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast ratio of two sRGB colours, 1 to 21 (WCAG 2.2). */
export function contrast(one: string, other: string): number {
  const [x, y] = [luminance(linearOf(one)), luminance(linearOf(other))];
  return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05);
}
