import { z } from 'zod';
import { problemKinds, type ProblemKind } from '../../problems/kinds.ts';
import { taking, type Takes } from './takes.ts';
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

/** An answer as typed goes in, what it means comes out. */
export type Schema<T> = z.ZodType<T>;

/** An answer that means something, or what is wrong with it. */
export type Understood<T> = { readonly value: T } | { readonly troubles: readonly Trouble[] };

export const understood = <T>(value: T): Understood<T> => ({ value });
export const refused = (...troubles: readonly Trouble[]): { readonly troubles: readonly Trouble[] } => ({
  troubles,
});

/** An answer that is not there, or blank. */
export const unanswered = (expected: string): ReturnType<typeof refused> =>
  refused({ kind: 'key-missing', path: [], expected, found: null, cure: null });

/** A schema from a function that understands or refuses one answer (undefined: there is none), and what it takes. */
export function schemaOf<T>(takes: Takes, read: (answer: unknown) => Understood<T>): Schema<T> {
  const schema = z.unknown().transform((answer, context): T => {
    const result = read(answer);
    if ('value' in result) return result.value;
    for (const { path, expected, ...params } of result.troubles) {
      context.issues.push({ code: 'custom', input: answer, path: [...path], message: expected, params });
    }
    return z.NEVER;
  });
  return taking(schema, takes);
}

/** Reads one answer with a schema. */
export function readWith<T>(schema: Schema<T>, answer: unknown): Understood<T> {
  const result = schema.safeParse(answer);
  return result.success ? { value: result.data } : { troubles: result.error.issues.map(troubleOf) };
}

const isKind = (text: unknown): text is ProblemKind =>
  typeof text === 'string' && Object.hasOwn(problemKinds, text);

function troubleOf(issue: z.core.$ZodIssue): Trouble {
  const params: Readonly<Record<string, unknown>> =
    (issue.code === 'custom' ? issue.params : undefined) ?? {};
  const { kind, found, cure, at } = params;
  return {
    kind: isKind(kind) ? kind : 'value-invalid',
    path: issue.path.map((step) => (typeof step === 'number' ? step : String(step))),
    expected: issue.message,
    found: typeof found === 'string' ? found : null,
    cure: typeof cure === 'string' ? cure : null,
    ...(at === 'key' ? { at } : {}),
  };
}
