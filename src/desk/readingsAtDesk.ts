import type { ShotColumn, ShotFile } from '../intake/shots/shotFile.ts';
import { formatNumber, formatStep, niceStep } from '../prose/numbers.ts';
import { toReader, unitFor, type UnitSystem } from '../prose/readerUnits.ts';
import type { MetricId } from '../trade/metrics.ts';
import { fromCanonical } from '../trade/units.ts';

/** A reading in the units of the shop; null where there is none. */
type PrintReading = (file: string, metric: MetricId, si: number | null) => string | null;

/** Decimals beyond these came with a conversion of units. */
const mostDecimals = 3;

/** How readings of these files are printed: digit for digit as the file has them where it counts in the shop's units. */
export function readingsAtDesk(files: readonly ShotFile[], system: UnitSystem): PrintReading {
  const printers = new Map(
    files.flatMap((file) =>
      Object.values(file.columns).map(
        (column) => [`${file.file}:${column.metric}`, printerOf(file, column, system)] as const,
      ),
    ),
  );
  return (file, metric, si) => (si === null ? null : (printers.get(`${file}:${metric}`)?.(si) ?? null));
}

function printerOf(
  { rows }: ShotFile,
  { metric, unit, step }: ShotColumn,
  system: UnitSystem,
): (si: number) => string {
  if (unitFor(metric, system) !== unit) {
    // The conversion leaves a step that is no power of ten, or a hair under one.
    const printed = niceStep(toReader(step, metric, system) * 1.0001);
    return (si) => formatStep(toReader(si, metric, system), printed);
  }
  const decimals = Math.max(
    0,
    ...new Set(
      rows.flatMap(({ values }) => {
        const si = values[metric] ?? null;
        return si === null ? [] : decimalsOf(fromCanonical(si, unit));
      }),
    ),
  );
  return (si) => formatNumber(fromCanonical(si, unit), decimals);
}

const decimalsOf = (value: number): number =>
  String(Number(value.toFixed(mostDecimals))).split('.')[1]?.length ?? 0;
