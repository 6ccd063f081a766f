import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import type { Source } from './authored/source.ts';
import type { Session } from './session.ts';

/** What was planned beside what the files hold: shots with each contender (C15). */
export function checkPlannedShots({ front, placeOf }: Source, session: Session): readonly Problem[] {
  const planned = front.plan?.shotsPerContender;
  if (planned === undefined) return [];
  const hitters = Math.max(1, session.hitters.length);
  const counts = front.contenders.map(({ id, label }) => ({
    label,
    shots: session.shots.filter(({ contender }) => contender === id).length,
  }));
  // With several hitters a plan may count shots for each of them or for all together.
  const off = counts.filter(({ shots }) => shots !== planned && shots !== planned * hitters);
  if (off.length === 0) return [];
  const found = off.map(({ label, shots }) => `${label} ${shots}`).join(', ');
  return [
    makeProblem('shots-differ-from-plan', placeOf(['plan', 'shots_per_contender']), {
      expected: `${planned} shots with each, as planned`,
      found,
      cure: 'Say in the narrative why there are more or fewer, or correct the plan if it was mistyped.',
      forReader: `Planned were ${planned} shots with each; recorded are ${found}.`,
    }),
  ];
}
