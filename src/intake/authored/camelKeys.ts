export type Camel<K extends string> = K extends `${infer Head}_${infer Tail}`
  ? `${Head}${Capitalize<Camel<Tail>>}`
  : K;

/** Keys as the code spells them: `supplied_by` in the file is `suppliedBy` here. */
export type CamelKeys<T> = { readonly [K in keyof T as K extends string ? Camel<K> : K]: T[K] };

export const camel = (key: string): string =>
  key.replace(/_([a-z])/g, (_, letter: string) => letter.toUpperCase());

/** What a block as the code has it answers to a key as the file has it; undefined where it does not. */
export const answerTo = (block: object, key: string): unknown => Reflect.get(block, camel(key));
