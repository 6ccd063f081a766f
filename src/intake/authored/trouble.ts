import { z } from 'zod';
import type { ProblemKind } from '../../problems/kinds.ts';
import { telling, type Takes } from './takes.ts';
import type { Path } from './tree.ts';

/** What is wrong with one answer; becomes a `Problem` once its place is known. */
export interface Trouble {
  readonly kind: ProblemKind;
  /** From the answer that was being read down to the one that is wrong. */
  readonly path: Path;
  readonly expected: string;
  readonly found: string | null;
  /** Null where the cure follows from the place: a missing key is added to its block. */
  readonly cure: string | null;
  /** Whether the key is wrong rather than what stands behind it. */
  readonly at?: 'key';
}

/** An answer that is there and cannot be used. */
export const invalid = (path: Path, expected: string, found: string | null, cure: string): Trouble => ({
  kind: 'value-invalid',
  path,
  expected,
  found,
  cure,
});

/** An answer that is not there, or blank. */
export const missing = (path: Path, expected: string): Trouble => ({
  kind: 'key-missing',
  path,
  expected,
  found: null,
  cure: null,
});

/** An answer as typed goes in, what it means comes out. */
export type Schema<T> = z.ZodType<T>;

/** An answer that means something, or what is wrong with it. */
export type Understood<T> = { readonly value: T } | { readonly troubles: readonly Trouble[] };

export const understood = <T>(value: T): Understood<T> => ({ value });
export const refused = (...troubles: readonly Trouble[]): { readonly troubles: readonly Trouble[] } => ({
  troubles,
});

/** Whether what an issue of zod carries is a trouble that has been pushed as one. */
export const isTrouble = (carried: unknown): carried is Trouble =>
  typeof carried === 'object' && carried !== null && 'kind' in carried && 'path' in carried;

/** What a transform gives of an answer that it has understood; else its troubles become issues of zod. */
export function given<T>(read: Understood<T>, context: z.core.$RefinementCtx): T {
  if ('value' in read) return read.value;
  for (const trouble of read.troubles)
    context.issues.push({ code: 'custom', input: undefined, path: [...trouble.path], params: { trouble } });
  return z.NEVER;
}

/**
 * A schema for what zod would read only in part: a block whose keys the shop chooses or whose answers depend on one
 * another, of which everything that is wrong is to be told at once. `structure` is what it is made of.
 */
export function readBy<T>(
  structure: z.ZodType,
  read: (answer: unknown) => Understood<T>,
  takes?: Takes,
): Schema<T> {
  const schema = z.unknown().transform((answer, context): T => given(read(answer), context));
  return telling(schema, takes === undefined ? { structure } : { structure, takes });
}
