import type { Part } from '../flight/attribution.ts';
import type { PartId } from '../flight/attributionPlan.ts';
import type { Interval } from '../findings/findings.ts';

/** One part of a difference in carry by the flight model, m, counted towards whoever is named first. */
export interface YardsPart {
  /** Null for what the model does not explain. */
  readonly id: PartId | null;
  /** Whether it is sure and large enough to be told by itself: only then does it have a size of its own. */
  readonly told: boolean;
  readonly value: number;
  readonly range: Interval;
}

/** A difference in carry with its parts, m, counted towards the one ahead; both named as they are printed, or by id. */
export interface YardsSplit {
  readonly parts: readonly YardsPart[];
  readonly gap: number;
  readonly ahead: string;
  readonly behind: string;
}

/** A part as it is told; only what is a finding has a size of its own, wherever it stands. */
export function yardsPart(id: PartId | null, { value, range, finding }: Part, flip: 1 | -1 = 1): YardsPart {
  return {
    id,
    told: finding,
    value: flip * value,
    range: flip === 1 ? range : [-range[1], -range[0]],
  };
}
