import { fromCanonical, toCanonical, type Dimension, type UnitId } from '../trade/units.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';

/** The two systems a page can be read in. */
export type UnitSystem = 'yards' | 'metres';

const readerUnit: Readonly<Record<UnitSystem, Readonly<Record<Dimension, UnitId>>>> = {
  yards: {
    speed: 'mph',
    distance: 'yd',
    height: 'ft',
    offset: 'mm',
    angle: 'deg',
    spin: 'rpm',
    ratio: '1',
    time: 's',
  },
  metres: {
    speed: 'km/h',
    distance: 'm',
    height: 'm',
    offset: 'mm',
    angle: 'deg',
    spin: 'rpm',
    ratio: '1',
    time: 's',
  },
};

/** The unit a metric is printed in. */
export function unitFor(metric: MetricId, system: UnitSystem): UnitId {
  return readerUnit[system][metrics[metric].dimension];
}

/** A canonical value of a metric in the unit it is printed in. */
export function toReader(value: number, metric: MetricId, system: UnitSystem): number {
  return fromCanonical(value, unitFor(metric, system));
}

/** One unit of a metric in system `of`, expressed in units of `system`; exactly 1 where the two are the same. */
export function unitsIn(system: UnitSystem, metric: MetricId, of: UnitSystem): number {
  return system === of ? 1 : toReader(toCanonical(1, unitFor(metric, of)), metric, system);
}

interface UnitWords {
  readonly one: string;
  readonly many: string;
  /** For table heads and axes. */
  readonly short: string;
}

const same = (word: string): UnitWords => ({ one: word, many: word, short: word });

const unitWords: Readonly<Record<UnitId, UnitWords>> = {
  'm/s': same('m/s'),
  mph: same('mph'),
  'km/h': same('km/h'),
  m: { one: 'metre', many: 'metres', short: 'm' },
  yd: { one: 'yard', many: 'yards', short: 'yd' },
  ft: { one: 'foot', many: 'feet', short: 'ft' },
  in: { one: 'inch', many: 'inches', short: 'in' },
  cm: same('cm'),
  mm: same('mm'),
  deg: { one: 'degree', many: 'degrees', short: '°' },
  rpm: same('rpm'),
  '1': same(''),
  s: { one: 'second', many: 'seconds', short: 's' },
};

/** The unit in words after a printed number: `1 yard`, `12 yards`, nothing for a ratio. */
export function withUnit(printed: string, unit: UnitId): string {
  const words = unitWords[unit];
  const word = printed === '1' ? words.one : words.many;
  return word === '' ? printed : `${printed} ${word}`;
}

/** The unit before a noun, behind a hyphen: a 230-*yard* shot. */
export function unitAdjective(unit: UnitId): string {
  return unitWords[unit].one;
}

/** The unit's short sign for heads of tables and axes; empty for a ratio. */
export function shortUnit(unit: UnitId): string {
  return unitWords[unit].short;
}

/** The unit's plural word for axes and captions; empty for a ratio. */
export function unitWord(unit: UnitId): string {
  return unitWords[unit].many;
}
