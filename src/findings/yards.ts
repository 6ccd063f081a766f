import { attribute, leastShots } from '../flight/attribution.ts';
import type { AttributionShot } from '../flight/attributionPlan.ts';
import { coefficientSets } from '../flight/coefficientSets.ts';
import { flightModel } from '../flight/flightModel.ts';
import { launchesOf } from '../flight/launchesOf.ts';
import { seededRandom } from '../stats/random.ts';
import type { AnalysisInput } from './analysisInput.ts';
import type { MetricFindings, PairFindings, PairYards } from './findings.ts';
import { isGap } from './verdict.ts';

const flownInAll = 1000;
const leastFlown = 100;

/**
 * Where the yards come from, for every gap in a primary carry that is credited to the contender and has eight shots
 * with either: only these have a gap to explain. One hitter. Pairs share 1,000 shots of either contender that are flown
 * for the model, but each has 100; means and gaps are always of all shots.
 */
export function yardsOf(input: AnalysisInput, carry: MetricFindings | undefined): readonly PairYards[] {
  const { session, seed } = input;
  if (carry === undefined || carry.role !== 'primary' || session.hitters.length !== 1) return [];
  const counted = session.shots.filter(({ excluded }) => excluded === null);
  const launches = launchesOf(counted.map(({ values }) => values));
  const shotsOf = (contender: string): readonly AttributionShot[] =>
    counted.flatMap((shot, index) => {
      const launch = launches[index];
      const { carry: far, club_speed: clubSpeed } = shot.values;
      if (shot.contender !== contender || launch == null || typeof far !== 'number') return [];
      return [{ launch, clubSpeed: clubSpeed ?? null, carry: far, round: shot.round }];
    });
  const shotsBy = new Map(session.contenders.map((contender) => [contender, shotsOf(contender)]));
  const pairs = carry.pairs.filter(explainable);
  const mostFlown = Math.max(leastFlown, Math.floor(flownInAll / pairs.length));
  return pairs.flatMap(({ a, b }): PairYards[] => {
    const shots = { a: shotsBy.get(a) ?? [], b: shotsBy.get(b) ?? [] };
    if (Math.min(shots.a.length, shots.b.length) < leastShots) return [];
    const attribution = attribute({
      ...shots,
      byRounds: false,
      mostFlown,
      model: flightModel(),
      sets: coefficientSets,
      random: seededRandom(`${seed} yards ${a} ${b}`),
    });
    return [{ a, b, attribution }];
  });
}

function explainable({ verdict, credit }: PairFindings): boolean {
  return isGap(verdict) && credit === 'contender';
}
