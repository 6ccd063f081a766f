import { tUpper } from '../../../stats/distributions/t.ts';
import { correlation } from './correlation.ts';
import type { MetricId } from '../../../trade/metrics.ts';
import type { Session, Shot } from '../../session.ts';
import { problemOf, readingsOf, type Check } from './check.ts';

/** One shot's face to path beside what it should go with. */
interface Pair {
  readonly shot: Shot;
  readonly faceToPath: number;
  readonly other: number;
}

interface Words {
  readonly name: string;
  readonly behaviour: string;
}

const fewest = 10;
const level = 0.01;
const weak = 0.2;

/** Face to path of each shot, taken from face and path where the file has no column of it. */
function facesToPath(session: Session): ReadonlyMap<Shot, number> {
  const own = readingsOf(session, ['face_to_path']).map(
    ({ shot, value }) => [shot, value.face_to_path] as const,
  );
  const made = readingsOf(session, ['face_angle', 'club_path']).map(
    ({ shot, value }) => [shot, value.face_angle - value.club_path] as const,
  );
  return new Map([...made, ...own]);
}

/** How far in metres a ball ended to the right of where it started out. */
const curveOf = (side: number, carry: number, direction: number): number =>
  side - carry * Math.tan((direction * Math.PI) / 180);

function judge(session: Session, pairs: readonly Pair[], id: MetricId, words: Words) {
  if (pairs.length < 3) return [];
  const r = correlation(
    pairs.map(({ faceToPath }) => faceToPath),
    pairs.map(({ other }) => other),
  );
  if (r === null || r >= weak) return [];
  const n = pairs.length;
  const t = (-r * Math.sqrt(n - 2)) / Math.sqrt(Math.max(1 - r * r, Number.MIN_VALUE));
  const certain = r < 0 && n >= fewest && tUpper(t, n - 2) < level;
  return problemOf('sign-flipped', session, {
    metric: id,
    shots: pairs.slice(0, 1).map(({ shot }) => shot),
    severity: certain ? 'error' : 'warning',
    expected: `${words.behaviour} to the right when the face is open to the path`,
    found: `${r < 0 ? 'the opposite' : 'hardly any link'} (correlation ${r.toFixed(2)} over ${n} shots)`,
    cure: `check which side ${words.name}, face and path count as positive, and whether the hitter's hand is stated right; "positive: left" under "columns" in the report turns a column`,
  });
}

/**
 * C9: over a session, face to path goes with spin axis and with curve. The other way round, one column counts the other
 * side as positive: an error where chance is ruled out (one-sided p under 0.01 from ten shots up), else a warning.
 */
export const checkSigns: Check = (session) => {
  const faces = facesToPath(session);
  const paired = (shot: Shot, other: number): readonly Pair[] => {
    const faceToPath = faces.get(shot);
    return faceToPath === undefined ? [] : [{ shot, faceToPath, other }];
  };
  const axes = readingsOf(session, ['spin_axis']).flatMap(({ shot, value }) => paired(shot, value.spin_axis));
  const curves =
    session.columns.curve === undefined
      ? readingsOf(session, ['side', 'carry', 'launch_direction']).flatMap(({ shot, value }) =>
          paired(shot, curveOf(value.side, value.carry, value.launch_direction)),
        )
      : readingsOf(session, ['curve']).flatMap(({ shot, value }) => paired(shot, value.curve));
  return [
    ...judge(session, axes, 'spin_axis', { name: 'spin axis', behaviour: 'a spin axis tilted' }),
    ...judge(session, curves, session.columns.curve === undefined ? 'side' : 'curve', {
      name: 'side',
      behaviour: 'a ball that curves',
    }),
  ];
};
