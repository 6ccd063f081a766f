/** What YAML says, every scalar as the text that was typed. */
export type Tree = string | null | readonly Tree[] | { readonly [key: string]: Tree };

/** The way to a value: keys and, in lists, positions from 0. */
export type Path = readonly (string | number)[];

export type Block = { readonly [key: string]: Tree };

export function isBlock(tree: unknown): tree is Block {
  return typeof tree === 'object' && tree !== null && !Array.isArray(tree);
}

/** Whether a key has no answer: nothing behind its colon, or the words "not recorded". */
export function isUnanswered(value: unknown): boolean {
  if (typeof value !== 'string') return value === undefined || value === null;
  return /^(not recorded)?$/i.test(value.trim());
}

/** The value at a path, or undefined; only a value's own keys count. */
export function valueAt(tree: Tree | undefined, path: Path): Tree | undefined {
  let here: Tree | undefined = tree;
  for (const step of path) {
    if (Array.isArray(here)) here = (here as readonly Tree[])[Number(step)];
    else if (isBlock(here) && Object.hasOwn(here, String(step))) here = here[String(step)];
    else return undefined;
  }
  return here;
}

/** `contenders.alder.label`, `claims[2].than`: how a path is written for people, counting from 1. */
export function dotted(path: Path): string {
  return path
    .map((step, index) => (typeof step === 'number' ? `[${step + 1}]` : index === 0 ? step : `.${step}`))
    .join('');
}

/** A value in few words, for the "found" of a problem. */
export function asFound(tree: unknown): string | null {
  if (tree === undefined || tree === null) return null;
  if (typeof tree === 'string') return tree;
  if (Array.isArray(tree)) return tree.length === 1 ? 'a list of one' : `a list of ${tree.length}`;
  if (isBlock(tree)) return `a block with ${Object.keys(tree).join(', ') || 'nothing in it'}`;
  return String(tree);
}
