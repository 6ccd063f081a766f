/** Temperature in degrees Celsius, pressure in Pa, density in kg/m3. */
interface AtmosphereLevel {
  readonly temperature: number;
  readonly pressure: number;
  readonly density: number;
}

const seaLevel = { kelvin: 288.15, pressure: 101325 };
const kelvinPerMetre = 0.0065;
const exponent = 5.25588;
const gasConstantOfDryAir = 287.05287;
const earthRadius = 6356766;

/**
 * International Standard Atmosphere (ISO 2533, the same as the US Standard Atmosphere 1976 up to here) at a
 * geopotential height in metres, up to 11 km.
 *
 * @throws RangeError above 11,000 m or below -5,000 m, where the formula no longer holds
 */
export function standardAtmosphere(geopotentialHeight: number): AtmosphereLevel {
  if (!(geopotentialHeight >= -5000 && geopotentialHeight <= 11000)) {
    throw new RangeError(`standardAtmosphere: needs a height of -5000 to 11000 m, got ${geopotentialHeight}`);
  }
  const kelvin = seaLevel.kelvin - kelvinPerMetre * geopotentialHeight;
  const pressure = seaLevel.pressure * (kelvin / seaLevel.kelvin) ** exponent;
  return { temperature: kelvin - 273.15, pressure, density: pressure / (gasConstantOfDryAir * kelvin) };
}

/** Height above the sea by the tape, in metres, as a geopotential height (US Standard Atmosphere 1976, eq. 18). */
export function geopotentialHeight(metresAboveSea: number): number {
  return (earthRadius * metresAboveSea) / (earthRadius + metresAboveSea);
}
