import type { Random } from './random.ts';

/** One chi-square value: twice a gamma of shape df / 2 >= 1/2 (Marsaglia & Tsang 2000, ACM TOMS 26). */
export function chiSquareDraw(df: number, random: Random): number {
  if (df < 2) return chiSquareDraw(df + 2, random) * (1 - random.uniform()) ** (2 / df);
  const d = df / 2 - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = random.normal();
    const v = (1 + c * x) ** 3;
    if (v <= 0) continue;
    const u = 1 - random.uniform();
    if (Math.log(u) < 0.5 * x * x + d - d * v + d * Math.log(v)) return 2 * d * v;
  }
}
