import { metrics, type MetricId } from '../../trade/metrics.ts';
import { canonicalUnit, toCanonical, units, type Dimension, type UnitId } from '../../trade/units.ts';
import { answer, inWords, typed } from './answers.ts';
import { given, invalid, refused, understood, type Schema, type Understood } from './trouble.ts';
import { unitNamed } from '../../trade/unitWords.ts';

/** A number with a unit: `value` in the canonical unit of its dimension, `unit` and `typed` as the shop wrote it. */
export interface Quantity {
  readonly value: number;
  readonly unit: UnitId;
  readonly typed: string;
}

// Angles, spin, ratios and times have one unit in the trade; the others have two that are both possible.
const unitMayBeLeftOut: ReadonlySet<Dimension> = new Set(['angle', 'spin', 'ratio', 'time']);

const examples: Readonly<Record<Dimension, string>> = {
  speed: '2 mph or 1 m/s',
  distance: '5 yd or 4.5 m',
  height: '10 ft or 3 m',
  offset: '5 mm or 0.2 in',
  angle: '1° or 1 deg',
  spin: '300 rpm',
  ratio: '0.02',
  time: '0.3 s',
};

/** A quantity of the metric's dimension, zero or more unless `signed`. */
export function quantityOf(metric: MetricId, options: { readonly signed?: boolean } = {}): Schema<Quantity> {
  const { dimension, name } = metrics[metric];
  const fitting = Object.values(units).filter((unit) => unit.dimensions.includes(dimension));
  const expected = `a number with a unit, such as ${examples[dimension]}`;
  const cure = `Write ${name} as ${examples[dimension]}.`;
  const read = (answered: string): Understood<Quantity> => {
    const refuse = (wanted = expected, remedy = cure) => refused(invalid([], wanted, answered, remedy));
    const parts = /^([+\-−]?)(\d+(?:\.\d+)?|\.\d+)\s*(.*)$/u.exec(answered);
    if (parts === null) return refuse();
    const [, sign = '', digits = '', word = ''] = parts;
    const negative = sign === '-' || sign === '−';
    if (negative && options.signed !== true) return refuse(`${expected}, not below zero`);
    const unit =
      word === '' ? (unitMayBeLeftOut.has(dimension) ? canonicalUnit[dimension] : null) : unitNamed(word);
    if (word === '' && unit === null) {
      const choice = inWords(fitting.map(({ id }) => id));
      const open = invalid([], expected, answered, `Write the unit after the number: ${choice}.`);
      return refused(dimension === 'speed' ? open : { ...open, kind: 'unit-missing' });
    }
    if (unit === null) return refuse();
    if (!units[unit].dimensions.includes(dimension)) {
      const choice = inWords(fitting.map(({ id }) => (id === '1' ? 'no unit' : id)));
      return refuse(`a ${dimension} in ${choice}, since that is what ${name} is`);
    }
    const value = toCanonical(Number(digits), unit) * (negative ? -1 : 1);
    return Number.isFinite(value) ? understood({ value, unit, typed: answered }) : refuse();
  };
  return answer(
    typed.transform((answered, context) => given(read(answered), context)),
    { expected, cure },
    'a number with its unit, such as `5 yd` or `300 rpm`',
    {
      type: unitMayBeLeftOut.has(dimension) ? ['string', 'number'] : 'string',
      pattern: `^\\s*(±|\\+/-|\\+-)?[+\\-−]?(\\d+(\\.\\d+)?|\\.\\d+)\\s*${unitMayBeLeftOut.has(dimension) ? '' : '[^\\d\\s]'}`,
      examples: [examples[dimension].replace(/ or .*/, '')],
    },
  );
}
