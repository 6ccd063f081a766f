import { expect, test } from 'vitest';
import { flightModel } from '../../src/flight/flightModel.ts';
import { fly } from '../../src/flight/trajectory.ts';
import { cpuTime } from './cpuTime.ts';
import { launchInMph } from './tradeUnits.ts';

test('a drive at 0.05 s takes 0.25 ms or less once warm', () => {
  const model = flightModel();
  const hundred = (): void => {
    for (let i = 0; i < 100; i++) fly(launchInMph(160 + i * 0.01, 13.3, 2888), model);
  };
  for (let i = 0; i < 5; i++) hundred();
  expect(cpuTime(hundred, 10) / 100).toBeLessThan(0.25);
});
