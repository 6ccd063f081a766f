import { metrics } from '../trade/metrics.ts';
import { fromCanonical } from '../trade/units.ts';
import { shortUnit } from '../prose/readerUnits.ts';
import { capitalised } from '../prose/words.ts';
import { publishedColumns } from './publishedColumns.ts';
import type { Report } from './report.ts';

/**
 * `shots.csv`: one row a shot, left-out ones with their reason, in the units of the session file. UTF-8, commas,
 * CRLF (RFC 4180); text that a spreadsheet would run as a formula gets an apostrophe in front.
 */
export function shotsCsv({ session, telling, source }: Report): string {
  const columns = publishedColumns(session);
  const head = [
    'Hitter',
    'Shot',
    'Round',
    capitalised(source.front.varied),
    ...columns.map(({ metric, unit }) => {
      const sign = unit === 'deg' ? 'deg' : shortUnit(unit);
      return capitalised(sign === '' ? metrics[metric].name : `${metrics[metric].name} (${sign})`);
    }),
    'Left out',
    'Reason',
  ];
  const rows = session.shots.map((shot) => [
    shot.hitter,
    String(shot.shotNo ?? shot.order),
    shot.round === null ? '' : String(shot.round),
    telling.nameOf(shot.contender),
    ...columns.map(({ metric, unit }) => {
      const value = shot.values[metric];
      return typeof value === 'number' ? plainNumber(fromCanonical(value, unit)) : '';
    }),
    shot.excluded === null ? '' : 'yes',
    shot.excluded === null ? '' : `${shot.excluded.rule}: ${shot.excluded.reason}`,
  ]);
  return [head, ...rows].map((row) => row.map(cell).join(',')).join('\r\n') + '\r\n';
}

/** As typed in the session file: what conversion there and back adds lies past the ninth digit. */
function plainNumber(value: number): string {
  return String(Number(value.toPrecision(9)));
}

/** Text with an apostrophe in front where a spreadsheet would run it as a formula. */
export function guarded(text: string): string {
  return /^[=+\-@＝＋－＠\t\r\n]/.test(text) && !/^[+-]?\d+(\.\d+)?$/.test(text) ? `'${text}` : text;
}

function cell(text: string): string {
  const safe = guarded(text);
  return /[",\r\n]/.test(safe) ? `"${safe.replace(/"/g, '""')}"` : safe;
}
