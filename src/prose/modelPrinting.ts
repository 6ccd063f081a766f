import type { Printing } from './printSteps.ts';

/** The flight model is right to no less than this, in yards as in metres: nothing finer is printed of it. */
const modelStep = 1;

/** How what a flight model gives in a metric is printed: no finer than the model is right, and held against nothing. */
export function modelPrinting(printing: Printing): Printing {
  const step = printing.step.step >= modelStep ? printing.step : { step: modelStep, decimals: 0 };
  return { ...printing, step, averageStep: step, matters: Infinity };
}
