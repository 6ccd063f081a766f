import type { moistAirDensity } from '../../src/flight/moistAir.ts';

const molarMassOfDryAir = 28.96546e-3;
const molarMassOfWater = 18.01528e-3;
const gasConstant = 8.314472;

/**
 * Density of moist air in kg/m3, CIPM-2007 (Picard, Davis, Glaeser & Fujii 2008, Metrologia 45, 149-155), made for
 * 600 to 1100 hPa and 15 to 27 degrees. The yardstick for the simpler formula in `moistAir.ts`.
 */
export function cipm2007Density({
  temperature: t,
  pressure: p,
  humidity,
}: Parameters<typeof moistAirDensity>[0]): number {
  const kelvin = t + 273.15;
  const saturation = Math.exp(
    1.2378847e-5 * kelvin ** 2 - 1.9121316e-2 * kelvin + 33.93711047 - 6343.1645 / kelvin,
  );
  const enhancement = 1.00062 + 3.14e-8 * p + 5.6e-7 * t ** 2;
  const x = (humidity * enhancement * saturation) / p;
  const first =
    1.58123e-6 -
    2.9331e-8 * t +
    1.1043e-10 * t ** 2 +
    (5.707e-6 - 2.051e-8 * t) * x +
    (1.9898e-4 - 2.376e-6 * t) * x ** 2;
  const second = 1.83e-11 - 0.765e-8 * x ** 2;
  const compressibility = 1 - (p / kelvin) * first + (p / kelvin) ** 2 * second;
  const dilution = 1 - x * (1 - molarMassOfWater / molarMassOfDryAir);
  return (p * molarMassOfDryAir * dilution) / (compressibility * gasConstant * kelvin);
}
