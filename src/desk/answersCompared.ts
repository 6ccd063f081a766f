import { metrics } from '../trade/metrics.ts';
import { answerOf, primaryMetrics } from '../prose/answers.ts';
import { checksOf } from '../prose/checks.ts';
import { sayAnswer } from '../prose/english/answers.ts';
import { sayChecks } from '../prose/english/checks.ts';
import type { Telling } from '../prose/telling.ts';
import { capitalised } from '../prose/words.ts';
import { html, type Markup } from './markup.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';

/** The answers of the main measures, with the shots left out counted and without, pair by pair. */
export function withAndWithout(telling: Telling): Markup {
  const { findings } = telling;
  const told = primaryMetrics(findings).flatMap((metric) =>
    checksOf(metric, findings).flatMap(({ checks, ...pair }) =>
      sayChecks({ ...pair, checks: checks.filter(({ kind }) => kind === 'left-out-counted') }, telling),
    ),
  );
  return html`${told.map((sentences) => html`<p>${sentences.join(' ')}</p>`)}`;
}

/** Why what leaving out does to the answer cannot be told. */
export const untold = ({ missing }: Pick<ReportAtDesk, 'missing'>): string =>
  missing.size > 0
    ? 'What it does to the answer can be told once every question of this report is answered.'
    : 'What it does to the answer can be told once what is wrong with this report is put right.';

/** The answers as they stand and as they would be. */
export function answersCompared(
  report: Pick<ReportAtDesk, 'telling' | 'missing'>,
  { telling: then }: Pick<ReportAtDesk, 'telling'>,
): Markup {
  const { telling: now } = report;
  if (now === null && then === null) return html`<p>${untold(report)}</p>`;
  return html`<dl>
    <dt>The answer now</dt>
    <dd>${answersTold(now)}</dd>
    <dt>The answer then</dt>
    <dd>${answersTold(then)}</dd>
  </dl>`;
}

function answersTold(telling: Telling | null): Markup {
  if (telling === null) return html`<p>None can be told: something stands in the way.</p>`;
  const { findings } = telling;
  return html`${primaryMetrics(findings).map(
    (metric) =>
      html`<p>
        ${capitalised(metrics[metric.id].name)}: ${sayAnswer(answerOf(metric, findings), telling).join(' ')}
      </p>`,
  )}`;
}
