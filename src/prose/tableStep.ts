import type { PrintStep } from './numbers.ts';

/** The step of tables, one digit finer than that of sentences: 5 to 1, 1 to 0.1; never finer than `finest`. */
export function tableStep(own: PrintStep, finest = 0): PrintStep {
  const power = Math.ceil(Math.log10(own.step) - 1e-9) - 1;
  if (Number(`1e${power}`) < finest * 0.99) return own;
  return { step: Number(`1e${power}`), decimals: Math.max(0, -power) };
}
