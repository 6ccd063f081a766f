import { itemsCompared } from '../findings/buildDifferences.ts';
import type { Findings, Interval, MetricFindings } from '../findings/findings.ts';
import type { Contender, Price } from '../intake/authored/contender.ts';
import type { Source } from '../intake/authored/source.ts';
import type { MetricClass, MetricId } from '../trade/metrics.ts';
import { differencesSeen, type DifferenceSeen } from './differencesSeen.ts';
import { tradeOrder } from './english/comparisons.ts';
import { nearerOf } from './straighter.ts';

/** One contender's readings of a metric, SI; null where there is none. */
export interface AverageCell {
  readonly mean: number;
  /** The average's own likely range; null for several golfers, whose shots are not independent. */
  readonly ci: Interval | null;
  /** Of single shots; null for one shot, and for several golfers, where it would mostly be how they differ. */
  readonly sd: number | null;
  /** Readings, where they are fewer than the shots counted. */
  readonly readings: number | null;
}

/** One row of the table; cells stand in the order of the contenders. */
export type SideBySideRow =
  | {
      readonly kind: 'shots';
      readonly cells: readonly { readonly counted: number; readonly leftOut: number }[];
    }
  | {
      readonly kind: 'measure';
      readonly metric: MetricId;
      readonly role: MetricFindings['role'];
      readonly class: MetricClass;
      readonly cells: readonly (AverageCell | null)[];
      readonly seen: readonly DifferenceSeen[];
    }
  | {
      /** Shots within the lane round the target line. */
      readonly kind: 'off-line';
      readonly laneM: number;
      readonly cells: readonly { readonly within: number; readonly of: number }[];
      readonly nearer: readonly { readonly nearer: string; readonly farther: string }[];
    }
  | { readonly kind: 'price'; readonly cells: readonly (Price | null)[] }
  | { readonly kind: 'supplied'; readonly cells: readonly string[]; readonly differs: boolean }
  | {
      readonly kind: 'build';
      readonly item: string;
      readonly cells: readonly (string | null)[];
      readonly differs: boolean;
    };

/** All contenders beside one another. */
export interface SideBySide {
  readonly kind: 'side-by-side';
  /** Contenders, in the order of the report. */
  readonly ids: readonly string[];
  readonly golfers: number;
  readonly rows: readonly SideBySideRow[];
  /** Items that are known to be the same for all. */
  readonly alike: readonly string[];
  readonly explored: Findings['explored'];
}

/** Contenders beside one another: shots, every measure, where shots ended, price, source, and what differs in their build. */
export function sideBySide(findings: Findings, { front }: Pick<Source, 'front'>): SideBySide {
  const compared = itemsCompared(front);
  return {
    kind: 'side-by-side',
    ids: findings.contenders.map(({ id }) => id),
    golfers: findings.design.hitters,
    rows: [
      {
        kind: 'shots',
        cells: findings.contenders.map(({ shots, excluded }) => ({
          counted: shots - excluded,
          leftOut: excluded,
        })),
      },
      ...measures(findings),
      ...prices(front.contenders),
      ...supplies(front.contenders),
      ...compared.flatMap(({ item, values, state }): SideBySideRow[] => {
        if (state === 'alike') return [];
        const valueOf = ({ id }: Contender): string | null =>
          values.find(({ contender }) => contender === id)?.value ?? null;
        return [{ kind: 'build', item, cells: front.contenders.map(valueOf), differs: state === 'differs' }];
      }),
    ],
    alike: compared.flatMap(({ item, state }) => (state === 'alike' ? [item] : [])),
    explored: findings.explored,
  };
}

/** A row a measure; the share of shots near the line follows how far to the side they ended. */
function measures(findings: Findings): readonly SideBySideRow[] {
  const place = ({ id }: MetricFindings): number => tradeOrder.indexOf(id);
  return findings.metrics
    .toSorted((one, other) => place(one) - place(other))
    .flatMap((metric) => [measureRow(metric, findings), ...(metric.id === 'side' ? offLine(findings) : [])]);
}

function measureRow(metric: MetricFindings, { contenders, design }: Findings): SideBySideRow {
  const one = design.hitters === 1;
  return {
    kind: 'measure',
    metric: metric.id,
    role: metric.role,
    class: metric.class,
    cells: metric.byContender.map(({ id, n, mean, sd, ci }) => {
      if (mean === null) return null;
      const own = contenders.find((contender) => contender.id === id);
      const all = own === undefined ? n : own.shots - own.excluded;
      return { mean, ci: one ? ci : null, sd: one ? sd : null, readings: n < all ? n : null };
    }),
    seen: differencesSeen(metric, design),
  };
}

function offLine({ landing, straighter }: Findings): readonly SideBySideRow[] {
  if (landing === null) return [];
  return [
    {
      kind: 'off-line',
      laneM: landing.laneM,
      cells: landing.byContender.map(({ within, n }) => ({ within, of: n })),
      nearer: (straighter ?? []).flatMap((pair) => nearerOf(pair) ?? []),
    },
  ];
}

function prices(contenders: readonly Contender[]): readonly SideBySideRow[] {
  return contenders.every(({ price }) => price === undefined)
    ? []
    : [{ kind: 'price', cells: contenders.map(({ price }) => price ?? null) }];
}

function supplies(contenders: readonly Contender[]): readonly SideBySideRow[] {
  const cells = contenders.map(({ suppliedBy }) => suppliedBy.words);
  return [{ kind: 'supplied', cells, differs: new Set(cells).size > 1 }];
}
