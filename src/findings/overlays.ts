import type { ShotColumn } from '../intake/shots/shotFile.ts';
import type { AnalysisInput } from './analysisInput.ts';
import type { OpenCause } from './credit.ts';
import type { OverlayId } from './findings.ts';
import type { JudgedGap } from './shotGaps.ts';

/** With fewer shots than this with either contender a result is a first look. */
export const fewShots = 10;

interface OverlayFacts {
  readonly input: AnalysisInput;
  readonly primary: boolean;
  readonly column: ShotColumn;
  readonly gap: JudgedGap | null;
  readonly matters: number;
  /** Counted shots with either contender. */
  readonly counts: readonly [number, number];
  readonly openBecause: OpenCause | null;
}

const openOverlay: Readonly<Record<OpenCause, OverlayId>> = {
  'one-after-another': 'one-after-another',
  'order-unknown': 'order-unknown',
  lever: 'order-lever',
  drift: 'order-drift',
  'few-visits': 'order-few-visits',
};

/** What a reader has to be told in the same breath as a pair's verdict, the gravest first. */
export function pairOverlays(facts: OverlayFacts): readonly OverlayId[] {
  const { input, primary, column, counts, openBecause } = facts;
  const overlays: OverlayId[] = [];
  if (openBecause !== null) overlays.push(openOverlay[openBecause]);
  if (column.class === 'modelled' || column.class === 'estimated') overlays.push('modelled-reading');
  const fewest = Math.min(...counts);
  if (fewest >= 5 && fewest < fewShots) overlays.push('few-shots');
  if (input.session.hitters.length === 1) overlays.push('one-hitter');
  if (!primary) overlays.push('not-planned');
  return overlays;
}
