import { xoshiro128 } from './xoshiro128.ts';

/** A stream of random numbers, the same for the same seed on every machine. */
export interface Random {
  /** the next number, 0 <= u < 1, 53 random bits */
  readonly uniform: () => number;
  /** a whole number 0 <= i < below */
  readonly integer: (below: number) => number;
  /** standard normal */
  readonly normal: () => number;
}

/**
 * The stream of `xoshiro128`, its state filled from the seed text by FNV-1a and the MurmurHash3 finaliser. Not for
 * secrets.
 */
export function seededRandom(seed: string): Random {
  return randomFrom(xoshiro128(stateOf(seed)));
}

/** A copy in random order (Fisher & Yates; Knuth, *The Art of Computer Programming* 2, algorithm P). */
export function shuffled<T>(items: readonly T[], random: Random): readonly T[] {
  const left = [...items];
  return items.flatMap(() => left.splice(random.integer(left.length), 1));
}

function randomFrom(next: () => number): Random {
  const uniform = (): number => ((next() >>> 5) * 67108864 + (next() >>> 6)) / 9007199254740992;
  let spare: number | null = null;
  // Marsaglia's polar method (Marsaglia & Bray 1964): log and sqrt only
  const normal = (): number => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const square = x * x + y * y;
      if (square === 0 || square >= 1) continue;
      const scale = Math.sqrt((-2 * Math.log(square)) / square);
      spare = y * scale;
      return x * scale;
    }
  };
  return { uniform, integer: (below) => Math.floor(uniform() * below), normal };
}

function stateOf(seed: string): readonly [number, number, number, number] {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(seed)) hash = Math.imul(hash ^ byte, 0x01000193);
  const word = (i: number): number => {
    let mixed = (hash + Math.imul(i, 0x9e3779b9)) | 0;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return (mixed ^ (mixed >>> 16)) >>> 0;
  };
  return [word(1), word(2), word(3), word(4)];
}
