import { ballTest2001 } from './ballTest2001.ts';
import type { CoefficientSet } from './coefficientSet.ts';
import { naruo2004 } from './naruo2004.ts';
import { smitsSmith1994 } from './smitsSmith1994.ts';

/** The published sets, the recommended one first. What they disagree on is not settled. */
export const coefficientSets: readonly CoefficientSet[] = [naruo2004, smitsSmith1994, ballTest2001];
