import type { UnitId } from '../../trade/units.ts';

const words: Readonly<Record<UnitId, readonly string[]>> = {
  'm/s': ['m/s', 'mps', 'metres per second', 'meters per second', 'metre per second', 'meter per second'],
  mph: ['mph', 'mi/h', 'miles per hour', 'mile per hour'],
  'km/h': ['km/h', 'kmh', 'kph', 'kilometres per hour', 'kilometers per hour'],
  m: ['m', 'metre', 'metres', 'meter', 'meters'],
  yd: ['yd', 'yds', 'yard', 'yards'],
  ft: ['ft', 'foot', 'feet', "'"],
  in: ['in', 'inch', 'inches', '"'],
  cm: ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'],
  mm: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
  deg: ['deg', 'degs', 'degree', 'degrees', '°', 'º'],
  rpm: ['rpm', 'rev/min', 'revs per minute', 'revolutions per minute'],
  '1': [],
  s: ['s', 'sec', 'secs', 'second', 'seconds'],
};

const byWord: ReadonlyMap<string, UnitId> = new Map(
  (Object.keys(words) as UnitId[]).flatMap((id) => words[id].map((word): [string, UnitId] => [word, id])),
);

/** A unit by the words people type for it, in any casing. */
export function unitNamed(typed: string): UnitId | null {
  return byWord.get(typed.trim().toLowerCase().replace(/\.$/, '').replace(/\s+/g, ' ')) ?? null;
}
