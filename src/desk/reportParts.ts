import { afterPart } from './afterPart.ts';
import { claimsPart } from './claimsPart.ts';
import type { ReportPart } from './reportPart.ts';
import { shotsPart } from './shotsPart.ts';

/** The parts of the work at a report beside its answers, in the order of the work. */
export const reportParts: readonly ReportPart[] = [shotsPart, claimsPart, afterPart];
