import { z } from 'zod';
import { chance, gap, id, number, words } from './basics.ts';
import { metricId } from './metricShape.ts';

const standing = words('what the shots make of a claim', {
  'borne-out': 'they support it',
  'weaker-than-said': 'they support the direction, not the size',
  'not-shown': 'they do not show it',
  contradicted: 'they speak against it',
});

export const claimedSpread = z.strictObject({
  ratio: number('standard deviation of the one claimed to be tighter over that of the other'),
  p: chance('Brown-Forsythe, by Holm over all pairs'),
  tighter: words('which scatters less', { of: 'the one claimed', than: 'the other' }),
});

export const claim = z.strictObject({
  say: z.string().describe("the shop's own sentence"),
  standing,
  metric: metricId.describe('`side` where it is about finishing nearer the target line'),
  direction: words('which way is claimed', {
    more: 'more of the metric',
    less: 'less of the metric',
    tighter: 'less scatter in the metric',
    straighter: 'nearer the target line',
  }),
  of: id('the contender the sentence is about'),
  than: id('the one it is held against'),
  byAtLeast: number('what is claimed at least; 0 where no size is'),
  planned: z.boolean().describe('whether it is about a main measure'),
  gap: gap.nullable().describe('counted the claimed way; null for a claim about spread and where not judged'),
  spread: claimedSpread
    .nullable()
    .describe('null but for a claim about spread, and there under twelve shots with either'),
});
