import { claimStandings } from '../../findings/claims.ts';
import type { MetricFindings } from '../../findings/findings.ts';
import { metrics } from '../../trade/metrics.ts';
import { answerOf } from '../answers.ts';
import { claimOf } from '../claims.ts';
import { pairAnswers } from '../pairAnswer.ts';
import type { ClaimFamily, Holding } from '../supportedClaims.ts';
import { listed, sentence } from '../words.ts';
import { sayAnswer } from './answers.ts';
import { supportClause } from './claims.ts';

/** What a family of claims is about: "carry", "where shots finish beside the line". */
export const sayFamily = ({ about }: Pick<ClaimFamily, 'about'>): string =>
  about === 'straighter' ? 'where shots finish beside the line' : metrics[about].name;

/** Why the shots support no claim about a main measure: what they say of it, or what holds back a difference that was seen. */
export function sayUnsupported(metric: MetricFindings, { telling, ruleFirst }: Holding): string {
  const { findings } = telling;
  const compared = pairAnswers(metric, findings.design).map(({ by, ahead, behind }) => ({
    say: '',
    metric: metric.id,
    direction: by,
    of: ahead,
    than: behind,
    byAtLeast: null,
    allowUnproven: false,
  }));
  const statements = claimStandings(compared, findings, ruleFirst).map((standing) =>
    claimOf(standing, findings),
  );
  const heldBack = statements.find(
    ({ support }) => support.kind === 'claimed-way' && support.heldBack.length > 0,
  );
  const why =
    heldBack === undefined
      ? sayAnswer(answerOf(metric, findings), telling).join(' ')
      : sentence(supportClause(heldBack, telling));
  return `The shots support no claim about ${metrics[metric.id].name}. ${why}`;
}

/** Of what else was measured they support none: in one sentence. */
export const sayNoneOf = (families: readonly Pick<ClaimFamily, 'about'>[]): string =>
  `The shots support no claim about ${listed(families.map(sayFamily), 'or')}.`;
