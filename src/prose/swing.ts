import type { Interval, SwingFindings, SwingPair } from '../findings/findings.ts';
import type { MetricId } from '../trade/metrics.ts';
import type { Difference } from './statement.ts';

/** One measure of the swing between two of the things tested, SI, `a` minus `b`, with what it could be worth. */
export interface SwingRow {
  readonly kind: 'swing-row';
  readonly measure: MetricId;
  readonly a: string;
  readonly b: string;
  readonly answer: SwingPair['answer'];
  readonly difference: Difference;
  /** Null where it has no price. */
  readonly worth: (Difference & { readonly metric: MetricId }) | null;
  /** Of path and face, in the other of carry and side. */
  readonly across: (Difference & { readonly metric: MetricId }) | null;
  /** Whether the range reaches about as far to either side, so that one number tells both ends. */
  readonly even: { readonly difference: boolean; readonly worth: boolean };
}

/** What all measures together say of the swing. */
export type SwingSummary =
  | { readonly kind: 'swing-differed'; readonly measures: readonly MetricId[] }
  | { readonly kind: 'swing-same'; readonly measures: readonly MetricId[] }
  | { readonly kind: 'swing-cannot-tell' }
  | { readonly kind: 'swing-too-few' };

/** The nearer end of an even range lies at least this part of the farther one from 0. */
const evenFrom = 0.6;

/** A measure of the swing between two of the things tested. */
export function swingRow(
  measure: MetricId,
  { a, b, answer, estimate, ci, worth, across }: SwingPair,
  { metric }: Pick<SwingFindings, 'metric'>,
): SwingRow {
  return {
    kind: 'swing-row',
    measure,
    a,
    b,
    answer,
    difference: { estimate, ci },
    worth: worth === null ? null : { ...worth, metric },
    across,
    even: {
      difference: isEven(ci),
      worth: worth !== null && isEven(worth.ci),
    },
  };
}

function isEven([low, high]: Interval): boolean {
  return low < 0 && high > 0 && Math.min(-low, high) >= evenFrom * Math.max(-low, high);
}

/** What all measures together say. */
export function swingSummary({ measures }: SwingFindings): SwingSummary {
  const rows = measures.flatMap(({ id, pairs }) => pairs.map(({ answer }) => ({ id, answer })));
  if (rows.length === 0) return { kind: 'swing-too-few' };
  const different = measures.filter(({ pairs }) => pairs.some(({ answer }) => answer === 'different'));
  if (different.length > 0) return { kind: 'swing-differed', measures: different.map(({ id }) => id) };
  return rows.every(({ answer }) => answer === 'same')
    ? { kind: 'swing-same', measures: measures.map(({ id }) => id) }
    : { kind: 'swing-cannot-tell' };
}

const priced: readonly MetricId[] = ['club_speed', 'attack_angle', 'club_path', 'face_to_path'];

/** The measures that nobody measured, which could have differed unseen. */
export function swingUnmeasured({ measures }: SwingFindings): readonly MetricId[] {
  return priced.filter((id) => measures.every((measure) => measure.id !== id));
}
