import { ballQuestions } from '../authored/ball.ts';
import { answerTo } from '../authored/camelKeys.ts';
import { conditionsInDefaults, singleConditions, type Conditions } from '../authored/conditions.ts';
import { monitorQuestions } from '../authored/monitor.ts';
import { keysOf } from '../authored/question.ts';
import { comment } from './ask.ts';
import { draftClasses } from './draftColumns.ts';
import { draftQuestions } from './draftQuestions.ts';
import type { ShotColumn } from '../shots/shotFile.ts';

interface Facts {
  readonly columns: readonly ShotColumn[];
  /** What the shop answers for all its reports. */
  readonly byShop: Conditions;
  readonly varied: string | null;
}

/** The block `conditions`, without what the shop has answered for all reports. */
export function draftConditions({ columns, byShop, varied }: Facts): readonly string[] {
  const answered = keysOf(conditionsInDefaults).filter((key) => answerTo(byShop, key) !== undefined);
  return [
    ...comment('Where and in front of what it was hit.'),
    ...(answered.length === 0
      ? []
      : comment(`shop.yaml answers for all reports: ${answered.join(', ')}. Write here only what differed.`)),
    'conditions:',
    ...draftQuestions(singleConditions, { indent: 2, without: answered }),
    ...(byShop.ball === undefined && !/\bball\b/.test(varied ?? '')
      ? ['  ball:', ...draftQuestions(ballQuestions, { indent: 4 })]
      : []),
    ...(byShop.monitor === undefined
      ? ['  monitor:', ...draftQuestions(monitorQuestions, { indent: 4 }), ...draftClasses(columns)]
      : []),
  ];
}
