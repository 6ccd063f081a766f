import type { MetricId } from '../../trade/metrics.ts';
import { answer, text, typed, yesOrNo } from './answers.ts';
import { listOf } from './collections.ts';
import { metricName, metricNamed } from './metricName.ts';
import { quantityOf, type Quantity } from './quantity.ts';
import { strict } from './strict.ts';
import { telling } from './takes.ts';
import { readWith } from './readWith.ts';
import { isBlock } from './tree.ts';
import { invalid, missing, readBy, refused, understood, type Understood } from './trouble.ts';

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

const contender = answer(
  typed.min(1),
  { expected: 'the id of a contender', cure: 'Write the id of a contender as text after the colon.' },
  'the id of a contender',
);

const answersFor = (metric: MetricId) =>
  strict({
    say: text('the sentence as it is said'),
    metric: metricName
      .describe('what the sentence is about; may be left out with `straighter`')
      .exactOptional(),
    more: contender.describe('who has more of it; one of these four must be there').exactOptional(),
    less: contender.describe('who has less of it').exactOptional(),
    tighter: contender.describe('whose shots lie closer together in it').exactOptional(),
    straighter: contender.describe('whose shots finish nearer to the target line').exactOptional(),
    than: contender.describe('who it is compared with'),
    by_at_least: quantityOf(metric).describe('the size that the sentence states').exactOptional(),
    allow_unproven: yesOrNo
      .describe('prints a sentence that the shots do not show, marked as such, in place of an error')
      .exactOptional(),
  });

/** A claim of whichever metric: the size of one without a unit may be a number alone. */
const ofAnyMetric = telling(answersFor('smash'), {
  inEditor: {
    anyOf: [
      ...claimDirections
        .filter((direction) => direction !== 'straighter')
        .map((direction) => ({ required: [direction, 'metric'] })),
      { required: ['straighter'] },
    ],
  },
});

const claim = readBy(ofAnyMetric, (answer): Understood<Claim> => {
  const named = isBlock(answer) ? answer['metric'] : undefined;
  // Straightness is judged on where shots finish beside the line.
  const straighter = isBlock(answer) && Object.hasOwn(answer, 'straighter');
  const metric = typeof named === 'string' && named !== '' ? metricNamed(named) : straighter ? 'side' : null;
  const read = readWith(answersFor(metric ?? 'carry'), answer);
  // Without a known metric a size cannot be read; the metric is what to put right first.
  const unreadable = metric === null ? 'by_at_least' : null;
  const troubles = 'troubles' in read ? read.troubles.filter(({ path }) => path[0] !== unreadable) : [];
  if (isBlock(answer) && (named === undefined || named === '') && !straighter)
    troubles.push(missing(['metric'], 'the metric that the sentence is about'));
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
    const cure = 'Remove the line: whether a spread is tighter can be judged, by how much cannot.';
    const found = String(answer['by_at_least']);
    troubles.push(invalid(['by_at_least'], 'no size in a claim about spread', found, cure));
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

export const claims = listOf(claim, 'a list of claims, each with say, metric, more and than');
