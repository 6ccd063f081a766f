import { moistAirDensity } from './moistAir.ts';
import { geopotentialHeight, standardAtmosphere } from './standardAtmosphere.ts';
import { viscosityOfAir } from './viscosityOfAir.ts';

/** What the ball flies through. */
export interface Air {
  /** kg/m3 */
  readonly density: number;
  /** dynamic, Pa s */
  readonly viscosity: number;
}

/** What is known of the air at a session; what is left out follows the standard atmosphere. */
interface Weather {
  /** degrees Celsius */
  readonly temperature?: number;
  /** metres above the sea */
  readonly altitude?: number;
  /** relative, 0 to 1; half where it is not known, which is worth under 1 yard either way */
  readonly humidity?: number;
  /** Pa at the place itself */
  readonly pressure?: number;
}

/** Dry air of 15 degrees at sea level by the standard atmosphere: 1.225 kg/m3. */
export const standardAir: Air = { density: 1.225, viscosity: viscosityOfAir(15) };

/** The air of a session. Altitude alone gives the standard atmosphere of that height, dry. */
export function airOf({ temperature, altitude, humidity, pressure }: Weather): Air {
  const level = standardAtmosphere(geopotentialHeight(altitude ?? 0));
  if (temperature === undefined && pressure === undefined) {
    return { density: level.density, viscosity: viscosityOfAir(level.temperature) };
  }
  const degrees = temperature ?? level.temperature;
  return {
    density: moistAirDensity({
      temperature: degrees,
      pressure: pressure ?? level.pressure,
      humidity: humidity ?? 0.5,
    }),
    viscosity: viscosityOfAir(degrees),
  };
}
