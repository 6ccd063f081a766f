import { metrics, type MetricId } from '../../trade/metrics.ts';
import { units, type UnitId } from '../../trade/units.ts';
import type { ProblemKind } from '../../problems/kinds.ts';
import type { Cell, NumberCell } from './cell.ts';
import type { ProblemWords } from './collector.ts';
import type { MetricColumn } from './columns.ts';
import { chooseReading, isPossible, type MarkDecision } from './decimalMark.ts';
import { leaveOutMisread } from './leaveOutMisread.ts';
import type { PositiveSide } from './shotFile.ts';

/** What one cell comes to, sign settled, before units. */
type Settled =
  | { readonly kind: 'missing' | 'zero' | 'sentinel' }
  | { readonly kind: 'wrong'; readonly problem: ProblemKind; readonly words: ProblemWords }
  | { readonly kind: 'value'; readonly value: number; readonly step: number; readonly cell: NumberCell };

/** Zero in these means that nothing was measured. */
const neverZero: ReadonlySet<MetricId> = new Set(['ball_speed', 'club_speed', 'spin_rate', 'carry', 'smash']);

/** 999, 9999.9 and the like: what devices write, mostly with a minus, for "no reading". */
const nines = /^9{3,}(?:\.[09]+)?$/;

function isSentinel(cell: NumberCell, value: number, metric: MetricId, unit: UnitId | null): boolean {
  const magnitude = String(Math.abs(value));
  return nines.test(magnitude) && (cell.negative || magnitude.length > 3) && !isPossible(value, metric, unit);
}

/** Plus or minus one for a side; null where this metric has no such side. */
function sideSign(side: PositiveSide, metric: MetricId): number | null {
  switch (metrics[metric].positive) {
    case 'right of the target line':
      return side === 'right' ? 1 : side === 'left' ? -1 : null;
    case 'towards the toe':
      return side === 'toe' ? 1 : side === 'heel' ? -1 : null;
    case 'up':
      return side === 'up' ? 1 : side === 'down' ? -1 : null;
    case 'down':
      return side === 'down' ? 1 : side === 'up' ? -1 : null;
    case null:
      return null;
  }
}

const wrong = (problem: ProblemKind, found: string, words: Omit<ProblemWords, 'found'>): Settled => ({
  kind: 'wrong',
  problem,
  words: { ...words, found: found.replaceAll('\0', '␀').slice(0, 80) },
});

const bothSignAndLetter = (text: string): Settled =>
  wrong('contradictory-sign', text, {
    expected: 'a sign or a letter for the side, not both',
    cure: 'keep the letter or the sign, whichever is right',
  });

/** Settles one cell of a column under the file's decimal mark; `letter` is the side named in a column of its own. */
export function settleCell(
  cell: Cell,
  text: string,
  column: MetricColumn,
  mark: MarkDecision,
  letter: PositiveSide | null,
): Settled {
  const { metric } = column;
  const { name, dimension } = metrics[metric];
  if (cell.kind === 'missing') return { kind: 'missing' };
  if (cell.kind === 'sign-and-letter') return bothSignAndLetter(text);
  if (cell.kind === 'not-a-number') {
    const expected = 'a number, or nothing where there was no reading';
    return text.includes('\0')
      ? wrong('nul-byte', text, { expected, cure: 'export the session again: the file is damaged here' })
      : wrong('not-a-number', text, { expected, ...leaveOutMisread });
  }
  if (cell.unit !== null && !units[cell.unit].dimensions.includes(dimension)) {
    return wrong('unit-contradiction', text, {
      expected: `a unit of ${name}`,
      cure: 'correct the unit behind that number',
    });
  }
  const named = cell.side ?? letter;
  if (letter !== null && (cell.signed || cell.side !== null)) return bothSignAndLetter(text);
  const side = named === null ? null : sideSign(named, metric);
  if (named !== null && side === null) {
    return wrong('not-a-number', text, {
      expected: 'a number',
      cure: `take the letter away: ${name} has no such side`,
    });
  }
  const sign = cell.negative ? -1 : 1;
  const unit = cell.unit ?? column.unit;
  const reading = chooseReading(cell.numeral, mark, (each) => isPossible(sign * each, metric, unit));
  if (reading === null) {
    return wrong('decimal-mark-ambiguous', text, {
      expected: 'a number that can be read in one way',
      cure: 'write it without a thousands mark',
    });
  }
  if (isSentinel(cell, sign * reading.value, metric, unit)) return { kind: 'sentinel' };
  if (reading.value === 0) {
    return neverZero.has(metric) ? { kind: 'zero' } : { kind: 'value', value: 0, step: reading.step, cell };
  }
  const turn = side ?? (column.turned ? -sign : sign);
  return { kind: 'value', value: turn * reading.value, step: reading.step, cell };
}
