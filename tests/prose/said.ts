import type { MetricFindings } from '../../src/findings/findings.ts';
import { answerOf } from '../../src/prose/answers.ts';
import { cautionsOf } from '../../src/prose/cautions.ts';
import { sayAnswer } from '../../src/prose/english/answers.ts';
import { sayNumbers, sayPair, sayPairInFull } from '../../src/prose/english/pairInWords.ts';
import { sayCaution } from '../../src/prose/english/cautions.ts';
import { sayChance, sayReach } from '../../src/prose/english/reach.ts';
import { pairAnswer } from '../../src/prose/pairAnswer.ts';
import { chanceOf, reachOf } from '../../src/prose/reach.ts';
import type { Telling } from '../../src/prose/telling.ts';

/** What a page says of a metric, statement by statement, as tests read it. */
export const answerSentences = (metric: MetricFindings, telling: Telling): readonly string[] =>
  sayAnswer(answerOf(metric, telling.findings), telling);

export const pairSentences = (metric: MetricFindings, telling: Telling): readonly string[] =>
  metric.pairs.flatMap((pair) => {
    const answer = pairAnswer(pair, metric, telling.findings.design);
    return [sayPair(answer, telling), sayPairInFull(answer, telling)];
  });

export const pairNumbers = (metric: MetricFindings, telling: Telling): readonly string[] =>
  metric.pairs.map((pair) => sayNumbers(pairAnswer(pair, metric, telling.findings.design), telling));

export const cautionSentences = (telling: Telling): readonly string[] =>
  cautionsOf(telling.findings).map((caution) => sayCaution(caution, telling));

export const reachSentences = (metric: MetricFindings, telling: Telling): readonly string[] =>
  reachOf(metric).map((statement) => sayReach(statement, telling));

export function chanceSentence(metric: MetricFindings, telling: Telling): string {
  const chance = chanceOf(metric);
  return chance === null ? '' : sayChance(chance, telling);
}
