import { units, type UnitId } from '../trade/units.ts';
import { unitWords } from '../trade/unitWords.ts';

/** A unit that is typed behind a value that brings its own. */
interface TypedUnit {
  /** As typed, with what parts it from the value. */
  readonly text: string;
  /** Whether it is joined by a hyphen and stands before a noun: "a 230-yard shot". */
  readonly joined: boolean;
}

/** Spellings that are words of the language as well, or of no sentence. */
const otherWords: readonly string[] = ['in', 'x', 'ratio'];

/** A unit at the beginning of a text, of the same dimension as `unit`; null where none stands there. */
export function typedUnit(text: string, unit: UnitId): TypedUnit | null {
  const spellings = Object.values(units)
    .filter(({ dimensions }) => dimensions.some((own) => units[unit].dimensions.includes(own)))
    .flatMap(({ id }) => unitWords[id])
    .filter((word) => !otherWords.includes(word))
    .toSorted((x, y) => y.length - x.length)
    .map((word) => word.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&'));
  if (spellings.length === 0) return null;
  const found = new RegExp(`^(\\s*|-)(?:${spellings.join('|')})(?![\\p{L}\\p{N}])`, 'iu').exec(text);
  return found === null ? null : { text: found[0], joined: found[1] === '-' };
}
