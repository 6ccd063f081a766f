import { coefficientSets } from '../../src/flight/coefficientSets.ts';
import { flightModel } from '../../src/flight/flightModel.ts';
import { axesAround, launchSpinGrid } from '../../src/flight/launchSpinGrid.ts';
import { fly } from '../../src/flight/trajectory.ts';
import { toCanonical } from '../../src/trade/units.ts';
import { seededRandom } from '../../src/stats/random.ts';
import { attributed } from './attributed.ts';
import { cpuTime } from './cpuTime.ts';
import { driverLaunch, flown, goodHitter, scattered } from './simulatedShots.ts';
import { launchInMph } from './tradeUnits.ts';

/** Prints how many milliseconds of a processor each takes once warm, in a process that does nothing else. */
function drive(): number {
  const model = flightModel();
  const hundred = (): void => {
    for (let i = 0; i < 100; i++) fly(launchInMph(160 + i * 0.01, 13.3, 2888), model);
  };
  for (let i = 0; i < 5; i++) hundred();
  return cpuTime(hundred, 10) / 100;
}

function pair(): number {
  const random = seededRandom('speed');
  const truth = flightModel();
  const a = flown(scattered({ ...driverLaunch, ballSpeed: 71 }, goodHitter, 12, random), truth);
  const b = flown(scattered(driverLaunch, goodHitter, 12, random), truth);
  for (let i = 0; i < 3; i++) attributed(a, b);
  return cpuTime(() => attributed(a, b), 25);
}

function grids(): number {
  const speed = toCanonical(160, 'mph');
  const around = axesAround([launchInMph(160, 9, 2100), launchInMph(160, 16, 3500)]);
  const all = (): void =>
    coefficientSets.forEach((coefficients) => launchSpinGrid(around, speed, flightModel({ coefficients })));
  return cpuTime(all, 5);
}

console.log(JSON.stringify({ drive: drive(), pair: pair(), grids: grids() }));
