import { isMeasured } from '../findings/claims.ts';
import type { ClaimStanding } from '../findings/findings.ts';
import type { Claim } from '../intake/authored/claims.ts';
import type { PlaceOf } from '../intake/authored/places.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Offered, Problem } from '../problems/problem.ts';
import { metrics } from '../trade/metrics.ts';
import { whatTheShotsBear } from './claimSentence.ts';
import { claimedSize } from './english/claims.ts';
import { saysSomethingElse } from './linterComparatives.ts';
import { offerReady, readyFor, sayReady } from './readySentence.ts';
import { unmeasuredOutcome, type Outcome } from './linterWords.ts';
import type { Telling } from './telling.ts';

/** The claims of a report that may not be published as they stand, each with what the shots say. */
export function claimProblems(
  claims: readonly Claim[],
  telling: Telling,
  placeOf: PlaceOf,
): readonly Problem[] {
  // Standings follow the order of the claims that could be judged.
  const standings = [...telling.findings.claims];
  return claims.flatMap((claim, index) => {
    const place = placeOf(['claims', index, 'say']);
    if (!isMeasured(claim, telling.findings)) return [notMeasured(claim, place, telling)];
    const standing = standings.shift();
    const outcome = unmeasuredOutcome(claim.say);
    if (outcome !== null) return [outcomeNotMeasured(claim, outcome, place)];
    if (standing === undefined) return [];
    const other = saysSomethingElse(standing, telling);
    if (other !== null) return [saysOther(standing, other, place, telling)];
    if (standing.standing === 'contradicted') return [contradicted(standing, place, telling)];
    return standing.standing === 'not-shown' && !claim.allowUnproven
      ? [notShown(standing, place, telling)]
      : [];
  });
}

type ClaimPlace = ReturnType<PlaceOf>;

function notMeasured({ metric, direction, say }: Claim, place: ClaimPlace, { findings }: Telling): Problem {
  const name = direction === 'straighter' ? 'where shots finish beside the line' : metrics[metric].name;
  const there = findings.metrics.map(({ id }) => metrics[id].name).join(', ');
  return makeProblem('claim-unmeasured', place, {
    expected: `a claim about something in the session file: ${there}`,
    found: `"${say}", and no column holds ${name}`,
    cure: 'Take the claim out, or add the column to the session file.',
  });
}

function outcomeNotMeasured({ say }: Claim, { name, was }: Outcome, place: ClaimPlace): Problem {
  return makeProblem('claim-unmeasured', place, {
    expected: 'a claim about what the shots show',
    found: `"${say}", and ${name} ${was} not measured`,
    cure: `Say what was measured, or leave it out: no shot in the file tells of ${name}.`,
  });
}

/** What a reader would take from the words is not what was held against the shots. */
function saysOther(standing: ClaimStanding, word: string, place: ClaimPlace, telling: Telling): Problem {
  const { direction, metric, of, than, say } = standing;
  const keys = direction === 'straighter' ? `straighter: ${of}` : `metric: ${metric}, ${direction}: ${of}`;
  return makeProblem('claim-says-other', place, {
    expected: `words that say what the claim says: ${keys}, than: ${than}`,
    found: `"${word}" in "${say}"`,
    cure: `Reword it, or make another claim of it. The shots say: ${whatTheShotsBear(standing, telling)}.`,
  });
}

function contradicted(standing: ClaimStanding, place: ClaimPlace, telling: Telling): Problem {
  return makeProblem('claim-contradicted', place, {
    expected: 'a claim that the shots do not speak against',
    found: `"${standing.say}"`,
    ...offering('Take the claim out.', standing, telling),
  });
}

function notShown(standing: ClaimStanding, place: ClaimPlace, telling: Telling): Problem {
  const size = standing.byAtLeast === 0 ? '' : ` of ${claimedSize(standing, telling)} or more`;
  return makeProblem('claim-not-shown', place, {
    expected: `a claim that the shots show${size === '' ? '' : `, here a difference${size}`}`,
    found: `"${standing.say}"`,
    ...offering(
      'Take the claim out, or write "allow_unproven: yes": then it is printed as not shown.',
      standing,
      telling,
    ),
  });
}

/** What can be done, with what the narrative may say in place of a claim, and the claim that would stand. */
function offering(
  besides: string,
  standing: ClaimStanding,
  telling: Telling,
): { readonly cure: string; readonly offered: Offered | null } {
  const ready = readyFor(standing, telling);
  return ready === null
    ? { cure: `${besides} The shots say: ${whatTheShotsBear(standing, telling)}.`, offered: null }
    : {
        cure: `${besides} ${sayReady(ready, 'narrative')}`,
        offered: offerReady(ready, 'narrative', standing.say, besides),
      };
}
