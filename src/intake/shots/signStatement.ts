import type { PositiveSide } from './shotFile.ts';

interface SignStatement {
  /** Which way counts as positive; `contradiction` where two statements disagree. */
  readonly positive: PositiveSide | 'contradiction' | null;
  /** The text without the statement. */
  readonly rest: string;
}

const sides: Readonly<Record<string, PositiveSide>> = {
  left: 'left',
  l: 'left',
  right: 'right',
  r: 'right',
  up: 'up',
  down: 'down',
  toe: 'toe',
  heel: 'heel',
};

const opposite: Readonly<Record<PositiveSide, PositiveSide>> = {
  left: 'right',
  right: 'left',
  up: 'down',
  down: 'up',
  toe: 'heel',
  heel: 'toe',
};

const plus = '\\+|positive|pos|plus';
const minus = '-|−|–|negative|neg|minus';
const side = 'left|right|toe|heel|up|down|l|r';
const link = '\\s*(?:is|are|=|:|means|to the|\\(|\\))*\\s*';
const sideFirst = `(?<![\\p{L}])(?<sideA>${side})(?![\\p{L}])${link}(?<signA>${plus}|${minus})(?![\\p{L}\\d])`;
const signFirst = `(?<![\\p{L}])(?<signB>${plus}|${minus})${link}(?<sideB>${side})(?![\\p{L}])`;

/** Finds statements such as `left +`, `L-/R+`, `positive is left` or `+ = right` in a text. */
export function readSignStatement(text: string): SignStatement {
  const found = new Set<PositiveSide>();
  const rest = text.replace(new RegExp(`${sideFirst}|${signFirst}`, 'giu'), (...match) => {
    const groups: Record<string, string | undefined> = match.at(-1);
    const named = sides[(groups['sideA'] ?? groups['sideB'] ?? '').toLowerCase()];
    const sign = (groups['signA'] ?? groups['signB'] ?? '').toLowerCase();
    if (named === undefined) return ' ';
    found.add(new RegExp(`^(?:${plus})$`, 'i').test(sign) ? named : opposite[named]);
    return ' ';
  });
  const [first] = found;
  if (first === undefined) return { positive: null, rest: text };
  return {
    positive: found.size === 1 ? first : 'contradiction',
    rest: rest.replace(/[\s,;/|]+$/, '').replace(/\s+\/\s*$/, ''),
  };
}
