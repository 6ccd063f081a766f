/** What a metric is a quantity of; decides which units it may be written in. */
export type Dimension = 'speed' | 'distance' | 'height' | 'offset' | 'angle' | 'spin' | 'ratio' | 'time';

export type UnitId =
  'm/s' | 'mph' | 'km/h' | 'm' | 'yd' | 'ft' | 'in' | 'cm' | 'mm' | 'deg' | 'rpm' | '1' | 's';

interface Unit {
  readonly id: UnitId;
  /** One of this unit in the canonical unit of its dimension. */
  readonly toCanonical: number;
  readonly dimensions: readonly Dimension[];
}

/**
 * Units and their exact factors to the canonical ones (m/s, m, degrees, rpm, s).
 * International yard and foot: 1 yd = 0.9144 m, 1 ft = 0.3048 m, 1 mile = 1609.344 m, all exact
 * (NIST SP 811, appendix B.8).
 */
export const units: Readonly<Record<UnitId, Unit>> = {
  'm/s': { id: 'm/s', toCanonical: 1, dimensions: ['speed'] },
  mph: { id: 'mph', toCanonical: 0.44704, dimensions: ['speed'] },
  'km/h': { id: 'km/h', toCanonical: 1 / 3.6, dimensions: ['speed'] },
  m: { id: 'm', toCanonical: 1, dimensions: ['distance', 'height'] },
  yd: { id: 'yd', toCanonical: 0.9144, dimensions: ['distance', 'height'] },
  ft: { id: 'ft', toCanonical: 0.3048, dimensions: ['distance', 'height'] },
  in: { id: 'in', toCanonical: 0.0254, dimensions: ['offset'] },
  cm: { id: 'cm', toCanonical: 0.01, dimensions: ['offset'] },
  mm: { id: 'mm', toCanonical: 0.001, dimensions: ['offset'] },
  deg: { id: 'deg', toCanonical: 1, dimensions: ['angle'] },
  rpm: { id: 'rpm', toCanonical: 1, dimensions: ['spin'] },
  '1': { id: '1', toCanonical: 1, dimensions: ['ratio'] },
  s: { id: 's', toCanonical: 1, dimensions: ['time'] },
};

/** The canonical unit of each dimension. */
export const canonicalUnit: Readonly<Record<Dimension, UnitId>> = {
  speed: 'm/s',
  distance: 'm',
  height: 'm',
  offset: 'm',
  angle: 'deg',
  spin: 'rpm',
  ratio: '1',
  time: 's',
};

/** A value in `unit` as a value in the canonical unit. */
export function toCanonical(value: number, unit: UnitId): number {
  // km/h and the like are divided rather than multiplied by a rounded reciprocal.
  return unit === 'km/h' ? value / 3.6 : value * units[unit].toCanonical;
}

/** A value in the canonical unit as a value in `unit`. */
export function fromCanonical(value: number, unit: UnitId): number {
  return unit === 'km/h' ? value * 3.6 : value / units[unit].toCanonical;
}
