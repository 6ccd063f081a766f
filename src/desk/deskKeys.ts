import { timingSafeEqual } from 'node:crypto';

/** What shows that a request comes from the person at this machine, and from a form of this desk. */
export interface DeskKeys {
  /** The word for the address that is printed where the desk was started; good for one visit. */
  readonly invitation: () => string;
  /** Whether a visitor has the word; from then on another one is needed. */
  readonly accepts: (word: string) => boolean;
  /** What the cookie of a visitor holds who had the word. */
  readonly visitor: string;
  /** What every form holds. */
  readonly form: string;
}

/** @param random gives an unguessable word */
export function deskKeys(random: () => string): DeskKeys {
  let invitation = random();
  return {
    invitation: () => invitation,
    accepts: (word) => {
      if (!isSame(word, invitation)) return false;
      invitation = random();
      return true;
    },
    visitor: random(),
    form: random(),
  };
}

/** Compares in a time that tells nothing of where two words part. */
export function isSame(one: string, other: string): boolean {
  const [a, b] = [Buffer.from(one), Buffer.from(other)];
  return a.length === b.length && timingSafeEqual(a, b);
}
