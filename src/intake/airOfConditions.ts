import { airOf, type Air } from '../flight/air.ts';
import { toCanonical } from '../trade/units.ts';
import type { Conditions } from './authored/conditions.ts';

/** The air of a session as far as the report says: temperature, height above the sea, humidity. */
export function airOfConditions({ temperature, altitude, humidity }: Conditions): Air {
  const degrees = celsius(temperature ?? '');
  const height = metres(altitude ?? '');
  const share = percent(humidity ?? '');
  return airOf({
    ...(degrees === null ? {} : { temperature: degrees }),
    ...(height === null ? {} : { altitude: height }),
    ...(share === null ? {} : { humidity: share }),
  });
}

const numberAtStart = /^[^\d+\-−]*([+\-−]?\d+(?:\.\d+)?)\s*(.*)$/u;

function quantity(typed: string): { readonly value: number; readonly unit: string } | null {
  const [, digits = '', unit = ''] = numberAtStart.exec(typed) ?? [];
  return digits === '' ? null : { value: Number(digits.replace('−', '-')), unit };
}

/** `19 °C` or `66 °F` in degrees Celsius; null where no unit tells which. */
function celsius(typed: string): number | null {
  const read = quantity(typed);
  if (read === null) return null;
  if (/^(°|deg(rees)?)?\s*(c|celsius)\b/i.test(read.unit)) return read.value;
  return /^(°|deg(rees)?)?\s*(f|fahrenheit)\b/i.test(read.unit) ? ((read.value - 32) * 5) / 9 : null;
}

/** `60 m` or `200 ft` in metres; null without a unit. */
function metres(typed: string): number | null {
  const read = quantity(typed.replace(/(\d),(\d{3})\b/g, '$1$2'));
  if (read === null) return null;
  if (/^(m|metres?|meters?)\b/i.test(read.unit)) return read.value;
  return /^(ft|feet|foot)\b/i.test(read.unit) ? toCanonical(read.value, 'ft') : null;
}

function percent(typed: string): number | null {
  const read = quantity(typed);
  return read !== null && /^(%|per ?cent)/i.test(read.unit)
    ? Math.min(1, Math.max(0, read.value / 100))
    : null;
}
