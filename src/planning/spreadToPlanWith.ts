import { clubKindIn, clubKinds, type ClubKind } from '../trade/clubKind.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';
import { dependsOnClub, typicalSpread } from '../trade/typicalSpread.ts';
import { learnedSpread } from '../intake/plan/pastSpread.ts';
import { unitFor } from '../prose/readerUnits.ts';
import { askPlainly, type Ask } from './ask.ts';
import type { PlanSurroundings } from './planSurroundings.ts';
import type { PlanAnswers } from './planAnswers.ts';
import { planQuestions } from './planQuestions.ts';
import { amount, type SpreadOrigin } from './planWords.ts';
import { readBand, readClubKind, readOptional, readQuantity } from './readings.ts';

interface SpreadFound {
  readonly sd: number;
  readonly origin: SpreadOrigin;
  readonly club: ClubKind | null;
  readonly role: string | null;
  /** What the shop's own sessions show, where another spread was typed. */
  readonly ownToo: number | null;
}

interface SpreadQuestion extends PlanSurroundings {
  readonly metric: MetricId;
  readonly labels: readonly string[];
  readonly varied: string | null;
}

/** The spread to plan with: typed where it was, else the shop's own, else typical of the trade. */
export async function spreadToPlanWith(
  answers: PlanAnswers,
  ask: Ask,
  { metric, labels, varied, shop, past }: SpreadQuestion,
): Promise<SpreadFound | null> {
  const told = [answers.title, answers.question, varied ?? undefined, ...labels].filter(
    (text) => text !== undefined,
  );
  const put = askPlainly(answers, ask);
  const club = await put('club', {
    // A spread that hangs on the club cannot be proposed without it: nobody should pass over the question.
    proposed: clubKindIn(told) ?? (answers.spread === undefined && dependsOnClub(metric) ? null : 'other'),
    choices: [...clubKinds, 'other'],
    read: readClubKind,
  });
  const role = await put('hitter', { proposed: '', read: readOptional });
  if (club === null || role === null) return null;
  const learned = learnedSpread(past, { metric, kind: club.kind, role: role.text });
  const found = { club: club.kind, role: role.text };
  if (learned !== null && answers.spread === undefined)
    return { ...found, sd: learned.sd, origin: { kind: 'own', learned }, ownToo: null };
  const band =
    answers.spread !== undefined || typicalSpread(metric, club.kind, 'mid') === null
      ? 'mid'
      : await put('player', { proposed: 'mid', choices: ['good', 'mid'], read: readBand });
  if (band === null) return null;
  const typical = typicalSpread(metric, club.kind, band);
  const unit = unitFor(metric, shop?.defaults.units ?? 'yards');
  const proposed = typical === null ? null : amount(typical, unit);
  const none = dependsOnClub(metric) ? 'No usual one is known for such a club.' : 'No usual one is known.';
  const sd = await ask({
    key: 'spread',
    given: answers.spread,
    question: planQuestions.spread(metrics[metric].name, typical === null ? none : null),
    proposed,
    read: readQuantity(metric),
  });
  if (sd === null) return null;
  const isTypical = typical !== null && answers.spread === undefined && sd.typed === proposed;
  return {
    ...found,
    sd: isTypical ? typical : sd.value,
    origin: isTypical ? { kind: 'typical', band } : { kind: 'typed' },
    ownToo: learned?.sd ?? null,
  };
}
