/**
 * Dynamic viscosity of air in Pa s at degrees Celsius: Sutherland's formula with the constants of the US Standard
 * Atmosphere 1976 (from memory).
 */
export function viscosityOfAir(temperature: number): number {
  const kelvin = temperature + 273.15;
  return (1.458e-6 * kelvin ** 1.5) / (kelvin + 110.4);
}
