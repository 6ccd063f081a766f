/**
 * A sequence read as rounds in which every group comes once. `rounds` holds the places (from 0) of each round's
 * shots in order, re-hits left out; `complete` counts the rounds that hold every group (only the last may not).
 */
export interface Rotation {
  readonly rounds: readonly (readonly number[])[];
  readonly complete: number;
  readonly order: 'same' | 'changed';
  /** whether the rounds are those of the numbers */
  readonly byNumber: boolean;
  /** places of immediate repeats inside a round */
  readonly reHits: readonly number[];
}

const MOST_RE_HITS = 0.1;
const FEWEST_ROUNDS = 3;

/**
 * The sequence as a rotation, or null when it is none: cut from the first shot (or by `roundNumbers`, when every
 * shot has one and they fit), each round holds every group once; the last may be short; an immediate repeat
 * inside a round is a re-hit, at most a tenth of the shots; three rounds at least.
 */
export function rotationOf(
  sequence: readonly string[],
  roundNumbers?: readonly (number | null)[],
): Rotation | null {
  const groups = new Set(sequence).size;
  if (groups < 2) return null;
  const byNumber = roundNumbers === undefined ? null : cutByNumber(sequence, roundNumbers, groups);
  const cut = byNumber ?? cutByPlace(sequence, groups);
  if (cut === null || cut.rounds.length < FEWEST_ROUNDS) return null;
  if (cut.reHits.length > MOST_RE_HITS * sequence.length) return null;
  const complete = cut.rounds.filter((round) => round.length === groups).length;
  return { ...cut, complete, order: orderOf(sequence, cut.rounds), byNumber: cut === byNumber };
}

interface Cut {
  readonly rounds: readonly (readonly number[])[];
  readonly reHits: readonly number[];
}

function orderOf(sequence: readonly string[], rounds: Cut['rounds']): 'same' | 'changed' {
  const first = rounds[0] ?? [];
  const same = rounds.every((round) =>
    round.every((place, i) => sequence[place] === sequence[first[i] ?? -1]),
  );
  return same ? 'same' : 'changed';
}

function cutByNumber(
  sequence: readonly string[],
  numbers: readonly (number | null)[],
  groups: number,
): Cut | null {
  if (numbers.length !== sequence.length || numbers.includes(null)) return null;
  const rounds: number[][] = [];
  const reHits: number[] = [];
  for (let place = 0; place < sequence.length; place++) {
    const round = rounds.at(-1);
    if (round === undefined || numbers[place] !== numbers[place - 1]) {
      rounds.push([place]);
    } else if (sequence[place] === sequence[place - 1]) {
      reHits.push(place);
    } else if (round.some((earlier) => sequence[earlier] === sequence[place])) {
      return null;
    } else {
      round.push(place);
    }
  }
  const full = rounds.every((round, i) => round.length === groups || i === rounds.length - 1);
  return full ? { rounds, reHits } : null;
}

/** A reading of the first `end` shots: its last round and re-hits, and the reading before that round. */
interface Reading {
  readonly before: Reading | null;
  readonly round: readonly number[];
  readonly reHits: readonly number[];
  readonly allReHits: number;
}

/**
 * Cut by place. A repeat right after a full round may open the next one or be a re-hit of this one; of the
 * readings that fit, the one with fewest re-hits is taken, found from the front place by place.
 */
function cutByPlace(sequence: readonly string[], groups: number): Cut | null {
  const most = MOST_RE_HITS * sequence.length;
  const best = new Map<number, Reading>();
  for (let start = 0; start < sequence.length; start++) {
    const before = best.get(start) ?? null;
    if (start > 0 && before === null) continue;
    best.delete(start);
    const round = [start];
    const reHits: number[] = [];
    for (let end = start + 1; end <= sequence.length; end++) {
      const allReHits = (before?.allReHits ?? 0) + reHits.length;
      if (allReHits > most) break;
      if (round.length === groups || end === sequence.length) {
        const known = best.get(end);
        if (known === undefined || allReHits < known.allReHits) {
          best.set(end, { before, round: [...round], reHits: [...reHits], allReHits });
        }
      }
      if (end < sequence.length && sequence[end] === sequence[end - 1]) reHits.push(end);
      else if (round.some((earlier) => sequence[earlier] === sequence[end])) break;
      else round.push(end);
    }
  }
  const readings: Reading[] = [];
  for (let at = best.get(sequence.length) ?? null; at !== null; at = at.before) readings.push(at);
  if (readings.length === 0) return null;
  readings.reverse();
  return { rounds: readings.map(({ round }) => round), reHits: readings.flatMap(({ reHits }) => reHits) };
}
