/**
 * Seconds a step where many flights are flown: carries within 2 cm of those at a hundredth of a second for any launch
 * from 20 to 80 m/s, most within a tenth of a millimetre, see tests/flight/trajectory.test.ts.
 */
export const quickStep = 0.2;
