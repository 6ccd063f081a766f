import { metrics } from '../../trade/metrics.ts';
import type { AnswerBlock } from '../statement.ts';
import type { Telling } from '../telling.ts';
import { capitalised, counted } from '../words.ts';

/** Whether a head says what was varied, or leaves that to the names where every character counts. */
export type HeadForm = 'whole' | 'short';

/** "Carry of balls, one golfer"; who calculated it, where that has to be said in the same breath. */
export function headOf(
  { about: { metric }, calculatedBy }: AnswerBlock,
  { findings, nouns }: Telling,
  { average = '', form = 'whole' }: { readonly average?: 'average ' | ''; readonly form?: HeadForm } = {},
): string {
  const { name } = metrics[metric];
  const measured = capitalised(`${average}${calculatedBy === 'monitor' ? 'calculated ' : ''}${name}`);
  const by = calculatedBy === 'flight-model' ? ' by our own flight model' : '';
  const of = form === 'short' ? '' : ` of ${nouns}`;
  return `${measured}${of}${by}, ${counted(findings.design.hitters, 'golfer')}`;
}

/** "balls, one golfer": what was varied, and by how many it was hit. */
export function testedInBrief({ findings, nouns }: Telling): string {
  return `${nouns}, ${counted(findings.design.hitters, 'golfer')}`;
}
