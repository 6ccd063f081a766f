import { z } from 'zod';

/** An object type in which nothing can be changed, however deep. */
export type Frozen<T> = T extends object ? { readonly [Key in keyof T]: Frozen<T[Key]> } : T;

/** One of these words, each with what it means; a JSON Schema made of it lists the meanings beside the words. */
export function words<const Meanings extends Readonly<Record<string, string>>>(
  description: string,
  meanings: Meanings,
): z.ZodEnum<{ [Word in keyof Meanings & string]: Word }> {
  return z.enum(Object.keys(meanings) as (keyof Meanings & string)[]).meta({
    description,
    oneOf: Object.entries(meanings).map(([word, meaning]) => ({ const: word, description: meaning })),
  });
}

/** Ids that the report gives itself, such as a contender's. */
export const id = (description: string) => z.string().min(1).describe(description);
export const ids = (description: string) => z.array(z.string().min(1)).describe(description);
export const number = (description: string) => z.number().describe(description);
export const count = (description: string) => z.int().nonnegative().describe(description);
export const chance = (description: string) => z.number().min(0).max(1).describe(description);
export const interval = (description: string) =>
  z.tuple([z.number(), z.number()]).describe(`${description}: lower and upper limit`);

/** A difference with its interval, in one unit. */
export const gap = z.strictObject({
  estimate: number('best estimate'),
  ci: interval('confidence interval'),
});
