import { z } from 'zod';
import { counted, text } from './answers.ts';
import { listOf } from './collections.ts';
import { metricName, metricNamed } from './metricName.ts';
import { quantityOf, type Quantity } from './quantity.ts';
import { readWith } from './readWith.ts';
import { strict } from './strict.ts';
import { takesOf, telling, type Takes } from './takes.ts';
import { isBlock, type Block } from './tree.ts';
import { missing, readBy, refused, understood, type Understood } from './trouble.ts';
import type { MetricId } from '../../trade/metrics.ts';

const shotAnswers = strict({
  contender: text('the id of a contender'),
  shot: counted('the number of the shot in the file').describe(
    'its number in the shot column of the file; without one, its place among the shots of its contender',
  ),
  hitter: text('the id of the hitter').describe('the id of the hitter, where several hit').exactOptional(),
  rule: text('the rule by which the shot is left out'),
  reason: text('what happened with this shot'),
});

/** One shot left out by the shop, for a stated reason; `shot` is its number in the file. */
export type ExcludedShot = { readonly kind: 'shot' } & z.infer<typeof shotAnswers>;

/** A limit declared for every contender alike; shots beyond it are left out. */
export interface ExclusionLimit {
  readonly kind: 'limit';
  readonly metric: MetricId;
  readonly below: Quantity | null;
  readonly above: Quantity | null;
  readonly rule: string | null;
  readonly reason: string;
}

export type ExclusionEntry = ExcludedShot | ExclusionLimit;

const limitAnswers = (metric: MetricId) =>
  strict({
    metric: metricName.describe('the metric with a limit, declared for all contenders alike'),
    below: quantityOf(metric, { signed: true })
      .describe('shots below it are left out; this, the next or both must be there')
      .exactOptional(),
    above: quantityOf(metric, { signed: true }).describe('shots above it are left out').exactOptional(),
    rule: text('the rule behind the limit').exactOptional(),
    reason: text('why shots beyond the limit are left out'),
  });

function readLimit(answer: Block): Understood<ExclusionEntry> {
  const typed = answer['metric'];
  const metric = typeof typed === 'string' ? metricNamed(typed) : null;
  const read = readWith(limitAnswers(metric ?? 'carry'), answer);
  const answered = ['below', 'above'].some((key) => (answer[key] ?? '') !== '');
  const open = answered ? [] : [missing(['below'], 'a limit: below or above, with its unit')];
  if ('troubles' in read) {
    // Without a known metric a limit cannot be read; the metric is what to put right first.
    const troubles = read.troubles.filter(
      ({ path }) => metric !== null || (path[0] !== 'below' && path[0] !== 'above'),
    );
    return refused(...troubles, ...open);
  }
  const { below = null, above = null, rule = null, reason } = read.value;
  if (open.length > 0) return refused(...open);
  return understood({ kind: 'limit', metric: read.value.metric, below, above, rule, reason });
}

/** A limit of whichever metric: one without a unit may be a number alone. */
const ofAnyMetric = telling(limitAnswers('smash'), {
  inEditor: { anyOf: [{ required: ['below'] }, { required: ['above'] }] },
});

const forms: Takes = {
  words: 'shots and limits',
  inside: [
    [' (a shot)', shotAnswers],
    [' (a limit)', ofAnyMetric],
  ],
};

const entry = readBy(
  z.union([shotAnswers, ofAnyMetric]),
  (answer): Understood<ExclusionEntry> => {
    if (isBlock(answer) && ['metric', 'below', 'above'].some((key) => Object.hasOwn(answer, key)))
      return readLimit(answer);
    const read = readWith(shotAnswers, answer);
    return 'value' in read ? understood({ kind: 'shot', ...read.value }) : read;
  },
  forms,
);

const entries = listOf(entry, 'a list of shots left out or of limits, or none');

const none = z
  .preprocess((typed) => (typeof typed === 'string' ? typed.trim().toLowerCase() : typed), z.literal('none'))
  .transform((): readonly ExclusionEntry[] => []);

/** What was left out: single shots with rule and reason, and limits. "none" is an empty list. */
export const exclusions = telling(z.union([none, entries]), {
  takes: { ...takesOf(entries), words: `\`none\`, or ${takesOf(entries).words}` },
});
