import type { Printing } from './printSteps.ts';

/** The flight model is right to no less than this, in yards as in metres: nothing finer is printed of it. */
const modelStep = 1;

/** How a range is printed that was not held against what matters: plain numbers at the step of the metric. */
export function unjudgedPrinting(printing: Printing): Printing {
  return { ...printing, matters: Infinity };
}

/** How what a flight model gives in a metric is printed: no finer than the model is right. */
export function modelPrinting(printing: Printing): Printing {
  const step = printing.step.step >= modelStep ? printing.step : { step: modelStep, decimals: 0 };
  return { ...unjudgedPrinting(printing), step, averageStep: step };
}
