import type { MetricId } from '../../trade/metrics.ts';
import { text, yesOrNo } from './answers.ts';
import { listOf } from './collections.ts';
import { metricName, metricNamed } from './metricName.ts';
import { quantityOf, type Quantity } from './quantity.ts';
import { strict } from './strict.ts';
import { isBlock } from './tree.ts';
import { readWith, refused, schemaOf, understood, type Schema, type Understood } from './trouble.ts';

export const claimDirections = ['more', 'less', 'tighter', 'straighter'] as const;
export type ClaimDirection = (typeof claimDirections)[number];

/** A sentence tied to the data: "alder has more carry than birch, by at least 5 yd". */
export interface Claim {
  readonly say: string;
  readonly metric: MetricId;
  readonly direction: ClaimDirection;
  /** The contender the sentence is about. */
  readonly of: string;
  readonly than: string;
  readonly byAtLeast: Quantity | null;
  readonly allowUnproven: boolean;
}

const contender = text('the id of a contender');

const answersFor = (metric: MetricId) =>
  strict({
    say: text('the sentence as it is said'),
    metric: metricName.exactOptional(),
    more: contender.exactOptional(),
    less: contender.exactOptional(),
    tighter: contender.exactOptional(),
    straighter: contender.exactOptional(),
    than: contender,
    by_at_least: quantityOf(metric).exactOptional(),
    allow_unproven: yesOrNo.exactOptional(),
  });

const claim: Schema<Claim> = schemaOf((answer): Understood<Claim> => {
  const typed = isBlock(answer) ? answer['metric'] : undefined;
  // Straightness is judged on where shots finish beside the line.
  const straighter = isBlock(answer) && Object.hasOwn(answer, 'straighter');
  const metric = typeof typed === 'string' && typed !== '' ? metricNamed(typed) : straighter ? 'side' : null;
  const read = readWith(answersFor(metric ?? 'carry'), answer);
  // Without a known metric a size cannot be read; the metric is what to put right first.
  const unreadable = metric === null ? 'by_at_least' : null;
  const troubles = 'troubles' in read ? read.troubles.filter(({ path }) => path[0] !== unreadable) : [];
  if (isBlock(answer) && (typed === undefined || typed === '') && !straighter) {
    const expected = 'the metric that the sentence is about';
    troubles.push({ kind: 'key-missing', path: ['metric'], expected, found: null, cure: null });
  }
  const said = isBlock(answer) ? claimDirections.filter((word) => (answer[word] ?? '') !== '') : [];
  if (isBlock(answer) && said.length !== 1) {
    troubles.push({
      kind: said.length === 0 ? 'key-missing' : 'value-invalid',
      path: [said[1] ?? 'more'],
      expected: 'one of more, less, tighter and straighter, naming the contender that has it',
      found: said.length === 0 ? null : said.join(' and '),
      cure: 'Write one of them, such as "more: alder" with "than: birch".',
    });
  }
  if (isBlock(answer) && said.includes('tighter') && (answer['by_at_least'] ?? '') !== '') {
    troubles.push({
      kind: 'value-invalid',
      path: ['by_at_least'],
      expected: 'no size in a claim about spread',
      found: String(answer['by_at_least']),
      cure: 'Remove the line: whether a spread is tighter can be judged, by how much cannot.',
    });
  }
  const direction = said[0];
  if (troubles.length > 0 || 'troubles' in read || direction === undefined || metric === null) {
    return refused(...troubles);
  }
  const { say, than, byAtLeast = null, allowUnproven = false } = read.value;
  return understood({
    say,
    metric,
    direction,
    of: read.value[direction] ?? '',
    than,
    byAtLeast,
    allowUnproven,
  });
});

export const claims: Schema<readonly Claim[]> = listOf(
  claim,
  'a list of claims, each with say, metric, more and than',
);
