import { expect, test } from 'vitest';
import { smashBound } from '../../src/flight/smashBound.ts';

// Worked from the equations of Penner 2001 (by way of two transcriptions).
test.each([
  [0.83, 0.2, 0, 1.488],
  [0.83, 0.2, 10.5, 1.464],
  [0.83, 0.205, 12, 1.463],
  [0.83, 0.22, 12, 1.482],
  [0.822, 0.2, 12, 1.45],
])('restitution %f, %f kg, %f degrees: %f', (restitution, mass, loft, ratio) => {
  expect(Math.abs(smashBound({ restitution, mass, loft }) - ratio)).toBeLessThan(0.00051);
});
