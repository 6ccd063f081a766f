import type { Session, Shot } from '../../../../src/intake/session.ts';
import type { ShotColumn } from '../../../../src/intake/shots/shotFile.ts';
import { isMetricId, metrics, type MetricId } from '../../../../src/trade/metrics.ts';
import { toCanonical, type UnitId } from '../../../../src/trade/units.ts';

type Extra = Partial<Omit<Shot, 'values'>>;

const usualUnit = (id: MetricId): UnitId => {
  const { dimension } = metrics[id];
  const units = {
    speed: 'mph',
    distance: 'yd',
    height: 'ft',
    offset: 'mm',
    angle: 'deg',
    spin: 'rpm',
    ratio: '1',
    time: 's',
  };
  return units[dimension] as UnitId;
};

const decimals: Partial<Record<MetricId, number>> = { smash: 2, spin_rate: 0, back_spin: 0, side_spin: 0 };

/** A session in the trade's usual units: mph, yd, ft, degrees, rpm, written as monitors write them. */
export function sessionOf(
  rows: readonly (Readonly<Partial<Record<MetricId, number | null>>> & { readonly extra?: Extra })[],
  rest: Partial<Session> = {},
): Session {
  const columns: Partial<Record<MetricId, ShotColumn>> = {};
  const shots = rows.map(({ extra, ...row }, index): Shot => {
    const values: Partial<Record<MetricId, number | null>> = {};
    for (const [id, value] of Object.entries(row)) {
      if (!isMetricId(id)) continue;
      const unit = usualUnit(id);
      values[id] = value === null ? null : toCanonical(value, unit);
      const step = toCanonical(10 ** -(decimals[id] ?? 1), unit);
      columns[id] ??= {
        metric: id,
        heading: metrics[id].name,
        column: Object.keys(columns).length + 1,
        unit,
        step,
        class: metrics[id].usualClass,
      };
    }
    return {
      contender: 'alder',
      hitter: 'one',
      round: null,
      order: index + 1,
      shotNo: null,
      time: null,
      excluded: null,
      place: { file: 'shots.csv', line: index + 2 },
      ...extra,
      values,
    };
  });
  return { contenders: ['alder'], hitters: ['one'], shots, warmUps: 0, columns, ...rest };
}

/** The words of a problem in one line, as the table would say them. */
export const said = (
  problem: { readonly expected: string; readonly found: string | null; readonly cure: string } | undefined,
): string =>
  problem === undefined
    ? 'nothing'
    : `expected ${problem.expected}; found ${problem.found ?? 'nothing'}; ${problem.cure}`;
