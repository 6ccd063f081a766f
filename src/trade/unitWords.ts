import type { UnitId } from './units.ts';

/** How each unit is spelled in headings, units rows and cells, in lower case. Common practice, no source. */
export const unitWords: Readonly<Record<UnitId, readonly string[]>> = {
  'm/s': [
    'm/s',
    'mps',
    'm/sec',
    'm/second',
    'ms-1',
    'm s-1',
    'm·s-1',
    'm·s⁻¹',
    'ms⁻¹',
    'm s⁻¹',
    'metres per second',
    'meters per second',
    'metres/second',
    'meters/second',
  ],
  mph: ['mph', 'm.p.h', 'mi/h', 'mi/hr', 'miles/h', 'miles/hour', 'miles per hour'],
  'km/h': [
    'km/h',
    'kmh',
    'kph',
    'kmph',
    'km/hr',
    'km/hour',
    'km per hour',
    'kilometres per hour',
    'kilometers per hour',
  ],
  m: ['m', 'metre', 'metres', 'meter', 'meters', 'mtr', 'mtrs'],
  yd: ['yd', 'yds', 'yard', 'yards'],
  ft: ['ft', 'foot', 'feet'],
  in: ['in', 'inch', 'inches'],
  cm: ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'],
  mm: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
  deg: ['deg', 'degs', 'degree', 'degrees', '°', 'º'],
  rpm: [
    'rpm',
    'r.p.m',
    'r/min',
    'rev/min',
    'revs/min',
    '1/min',
    'min-1',
    'min⁻¹',
    'revolutions per minute',
    'revs per minute',
  ],
  '1': ['ratio', 'x'],
  s: ['s', 'sec', 'secs', 'second', 'seconds'],
};

/** Units that are known but not read: a column in one of them is refused rather than left out. */
const unreadUnits: readonly string[] = [
  'ft/s',
  'fps',
  'feet per second',
  'knots',
  'kn',
  'kt',
  'kts',
  'yd/s',
  'yards per second',
  'rad',
  'radian',
  'radians',
  'rps',
  'rev/s',
  'rad/s',
  'km',
  'kilometres',
  'kilometers',
  'mile',
  'miles',
  'mi',
  'krpm',
];

const unitOf = new Map<string, UnitId>(
  (Object.keys(unitWords) as UnitId[]).flatMap((id) => unitWords[id].map((word) => [word, id] as const)),
);

const bare = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, ' ').replace(/\.$/, '');

/** The unit that a text names, and nothing else; null where it names none. */
export function unitNamed(text: string): UnitId | null {
  return unitOf.get(bare(text)) ?? null;
}

/** Whether a text names a unit that is known but not read. */
export function isUnreadUnit(text: string): boolean {
  return unreadUnits.includes(bare(text));
}

/** Every spelling, longest first, so that `km/h` is found before `h`. */
export const unitSpellings: readonly string[] = [...unitOf.keys(), ...unreadUnits].sort(
  (a, b) => b.length - a.length,
);
