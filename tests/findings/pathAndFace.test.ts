import { describe, expect, test } from 'vitest';
import { around, reportOf, scatter } from './reportOf.ts';

/** Two heads alike but for how open the face is to the path; degrees, twelve shots each. */
const columns = (open: number, spread = 0.05) => {
  const both = (value: number, own = 0.05) => ({ alder: around(value, own), birch: around(value, own) });
  const face = scatter.map((each) => each * spread);
  return {
    'Carry (yd)': { alder: around(231, 0.3), birch: around(231, 0.3).toReversed() },
    'Ball Speed (mph)': both(150),
    'Launch Angle (deg)': both(13),
    'Spin Rate (rpm)': both(2600, 5),
    'Launch Direction (deg)': both(0),
    'Spin Axis (deg)': both(2),
    'Face to Path (deg)': { alder: face.map((each) => each + open), birch: face.toReversed() },
  };
};
const contenders =
  '{alder: {label: Alder, supplied_by: our stock, sold_here: new}, birch: {label: Birch, supplied_by: our stock, sold_here: new}}';
const faceOf = (open: number, spread = 0.05, without: readonly string[] = []) => {
  const shots = Object.fromEntries(
    Object.entries(columns(open, spread)).filter(([heading]) => !without.includes(heading)),
  );
  const { swing } = reportOf({ shots, front: { contenders } }).findings;
  const measure = swing?.measures.find(({ id }) => id === 'face_to_path');
  return { perUnit: measure?.perUnit, pair: measure?.pairs[0] };
};

describe('path and face are priced in carry and to the side', () => {
  test('a face 1.7 degrees more open is another swing: it moves the ball to the side', () => {
    const { pair } = faceOf(1.7);
    expect(pair?.answer).toBe('different');
    expect(pair?.across?.metric).toBe('side');
    // Six to twelve yards of curve a degree and the start besides (rule of the trade): well beyond ten for 1.7.
    expect(Math.abs(pair?.across?.estimate ?? 0)).toBeGreaterThan(9);
  });

  test('one that is alike is the same swing', () => {
    expect(faceOf(0, 0.01).pair?.answer).toBe('same');
  });

  test('which way it is open changes nothing of what is concluded', () => {
    const opens = [0.1, 0.3, 0.5, 0.7, 0.9, 1.2];
    const answers = opens.map((open) => faceOf(open, 0.1).pair?.answer);
    expect(opens.map((open) => faceOf(-open, 0.1).pair?.answer)).toEqual(answers);
    expect(new Set(answers)).toEqual(new Set(['cannot-tell', 'different']));
  });

  test('one known to some degrees only cannot be told: that 0 is among them does not make it the same', () => {
    const { pair } = faceOf(0.6, 0.5);
    const includesZero = (ci?: readonly number[]): boolean => (ci?.[0] ?? 1) < 0 && (ci?.[1] ?? -1) > 0;
    expect([includesZero(pair?.ci), includesZero(pair?.across?.ci)]).toEqual([true, true]);
    expect(pair?.answer).toBe('cannot-tell');
  });

  test.each([
    [['Launch Direction (deg)']],
    [['Spin Axis (deg)']],
    [['Launch Direction (deg)', 'Spin Axis (deg)']],
  ])('without %j it has no price, and never one of nothing', (without) => {
    expect(faceOf(1.7, 0.05, without)).toMatchObject({
      perUnit: null,
      pair: { answer: 'not-known', worth: null, across: null },
    });
  });
});
