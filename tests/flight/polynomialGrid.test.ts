import { expect, test } from 'vitest';
import { powersUpTo, type Polynomial } from '../../src/flight/polynomial.ts';
import { polynomialAt } from './polynomialAt.ts';
import { polynomialGrid } from '../../src/flight/polynomialGrid.ts';
import { seededRandom } from '../../src/stats/random.ts';

const random = seededRandom('polynomials on grids');
const some = (count: number): readonly number[] => Array.from({ length: count }, () => random.normal());

const whole = powersUpTo(4, 3);
// Terms with gaps: no constant, no first power of the second variable by itself.
const gaps = powersUpTo(3, 4, ([x = 0, y = 0, z = 0]) => x + y + z > 0 && y !== 1 && z % 2 === 0);

test.each<[name: string, powers: Polynomial['powers'], sizes: readonly number[]]>([
  ['all terms to the third degree', whole, [4, 2, 2, 2]],
  ['axes of one value', whole, [1, 2, 1, 3]],
  ['terms with gaps', gaps, [2, 3, 2]],
])('%s: the same as term by term', (_name, powers, sizes) => {
  const polynomial = { powers, coefficients: some(powers.length) };
  const axes = sizes.map((size) => Float64Array.from(some(size)));
  const cells = sizes.reduce((product, size) => product * size, 1);
  const out = new Float64Array(cells);
  const last = sizes.at(-1) ?? 1;
  const weights = [new Float64Array(last).fill(1)];
  const grid = polynomialGrid([polynomial], sizes);
  // Twice, since what a first call leaves behind must not count.
  grid(axes, weights, out);
  grid(axes, weights, out);
  for (let cell = 0; cell < cells; cell++) {
    let rest = cell;
    const point = axes.map((axis) => {
      const at = rest % axis.length;
      rest = (rest - at) / axis.length;
      return axis[at] ?? NaN;
    });
    expect(out[cell]).toBeCloseTo(polynomialAt(polynomial, point), 10);
  }
});

test('two polynomials, each by its weight at the values of the last variable', () => {
  const [one, other] = [some(whole.length), some(whole.length)].map((coefficients) => ({
    powers: whole,
    coefficients,
  }));
  if (one === undefined || other === undefined) expect.fail('two polynomials');
  const axes = [2, 1, 2, 2].map((size) => Float64Array.from(some(size)));
  const weights = [Float64Array.of(0.9, 0.7), Float64Array.of(-0.2, 0.4)];
  const out = new Float64Array(8);
  polynomialGrid([one, other], [2, 1, 2, 2])(axes, weights, out);
  for (let cell = 0; cell < 8; cell++) {
    const places = [cell & 1, 0, (cell >> 1) & 1, cell >> 2];
    const point = axes.map((axis, i) => axis[places[i] ?? 0] ?? NaN);
    const [ofOne, ofOther] = weights.map((own) => own[cell >> 2] ?? NaN);
    const expected =
      (ofOne ?? NaN) * polynomialAt(one, point) + (ofOther ?? NaN) * polynomialAt(other, point);
    expect(out[cell]).toBeCloseTo(expected, 10);
  }
});
