import { metrics, type MetricId } from '../../trade/metrics.ts';
import { canonicalUnit } from '../../trade/units.ts';
import type { Session } from '../session.ts';
import { estimatedColumns } from './checks/estimatedColumns.ts';
import type { ShotColumn } from './shotFile.ts';

type Values = Readonly<Partial<Record<MetricId, number | null>>>;

interface Rule {
  readonly makes: MetricId;
  readonly from: readonly [MetricId, MetricId];
  readonly formula: (a: number, b: number) => number;
}

const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** What follows from two other readings; angles in degrees, right of target and up positive. */
const rules: readonly Rule[] = [
  { makes: 'smash', from: ['ball_speed', 'club_speed'], formula: (ball, club) => ball / club },
  {
    makes: 'face_to_path',
    from: ['face_angle', 'club_path'],
    formula: (face, path) => face - path,
  },
  {
    makes: 'spin_loft',
    from: ['dynamic_loft', 'attack_angle'],
    formula: (loft, attack) => loft - attack,
  },
  { makes: 'spin_rate', from: ['back_spin', 'side_spin'], formula: Math.hypot },
  {
    makes: 'spin_axis',
    from: ['back_spin', 'side_spin'],
    formula: (back, side) => degrees(Math.atan2(side, back)),
  },
];

/** Total spin and axis are measured where the file has them; the parts are then what is derived. */
const keptAsMeasured: ReadonlySet<MetricId> = new Set(['spin_rate', 'spin_axis', 'spin_loft']);

/**
 * Recomputes derived columns from what they derive from, adds those that the file lacks, and sets the class of columns
 * that look filled in to `estimated`. A derived value stays the file's where one of its parts was not read.
 */
export function withDerivedColumns(session: Session): Session {
  const due = rules.filter(({ makes, from }) => {
    if (!from.every((id) => session.columns[id] !== undefined)) return false;
    return session.columns[makes] === undefined || !keptAsMeasured.has(makes);
  });
  const columns: Partial<Record<MetricId, ShotColumn>> = { ...session.columns };
  for (const id of estimatedColumns(session)) {
    const column = columns[id];
    if (column !== undefined && column.class !== 'modelled' && column.class !== 'estimated')
      columns[id] = { ...column, class: 'estimated', looksEstimated: true };
  }
  for (const { makes, from } of due)
    columns[makes] = { ...(columns[makes] ?? derivedColumn(makes, from, columns)), from };
  const shots = session.shots.map((shot) => ({ ...shot, values: withDerived(shot.values, due) }));
  return { ...session, shots, columns };
}

function withDerived(values: Values, due: readonly Rule[]): Values {
  const next: Partial<Record<MetricId, number | null>> = { ...values };
  for (const { makes, from, formula } of due) {
    const [a, b] = [values[from[0]] ?? null, values[from[1]] ?? null];
    if (a !== null && b !== null) next[makes] = formula(a, b);
    else next[makes] ??= null;
  }
  return next;
}

function derivedColumn(
  makes: MetricId,
  from: readonly [MetricId, MetricId],
  columns: Session['columns'],
): ShotColumn {
  const parts = from.flatMap((id) => columns[id] ?? []);
  const estimated = parts.some((part) => part.class === 'estimated');
  return {
    metric: makes,
    heading: parts.map(({ heading }) => heading).join(' and '),
    column: parts[0]?.column ?? 0,
    unit: canonicalUnit[metrics[makes].dimension],
    step: makes === 'smash' ? 0.01 : Math.max(...parts.map(({ step }) => step)),
    class: estimated ? 'estimated' : 'derived',
  };
}
