import type { UnitId } from './units.ts';

/** Units by their codes in the Unified Code for Units of Measure, version 2.1 (ucum.org), as data files name them. */
export const ucumCodes: Readonly<Record<UnitId, string>> = {
  'm/s': 'm/s',
  mph: '[mi_i]/h',
  'km/h': 'km/h',
  m: 'm',
  yd: '[yd_i]',
  ft: '[ft_i]',
  in: '[in_i]',
  cm: 'cm',
  mm: 'mm',
  deg: 'deg',
  rpm: '{rev}/min',
  '1': '1',
  s: 's',
};
