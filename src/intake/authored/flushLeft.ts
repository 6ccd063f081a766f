import type { z } from 'zod';
import { takesOf } from './takes.ts';
import { isBlock, isUnanswered, type Block, type Path, type Tree } from './tree.ts';
import type { Trouble } from './trouble.ts';

/** The answers with what stands too far to the left put under its key, and what to say of it. */
interface Indented {
  readonly tree: Block;
  /** One for each run of such lines, at its first. */
  readonly troubles: readonly Trouble[];
}

/** The answers inside a block: those with a key of their own, and the block under each id that the shop chooses. */
interface Inside {
  readonly keys: ReadonlyMap<string, z.ZodType>;
  readonly ofIds: z.ZodType | null;
}

function insideOf(schema: z.ZodType): Inside {
  const steps = takesOf(schema).inside ?? [];
  return {
    keys: new Map(steps.flatMap(([step, inner]) => (/^\.\w+$/.test(step) ? [[step.slice(1), inner]] : []))),
    ofIds: steps.find(([step]) => step === '.<id>')?.[1] ?? null,
  };
}

/**
 * Answers that belong under a key and stand beside it, as their lines are not indented: put where they belong, they can be
 * read, and one line says what is wrong instead of one for each of them.
 */
export function indented(tree: Block, schema: z.ZodType): Indented {
  const { keys } = insideOf(schema);
  const top = gathered(tree, (key, value, owner) => {
    if (keys.has(key)) return false;
    const inner = keys.get(owner);
    return inner !== undefined && belongs(key, value, insideOf(inner));
  });
  const blocks = Object.entries(top.tree).map(([key, value]): [string, Indented | Tree] => {
    const schemaOfKey = keys.get(key);
    const ofIds = schemaOfKey === undefined ? null : insideOf(schemaOfKey).ofIds;
    if (ofIds === null || !isBlock(value)) return [key, value];
    const answers = insideOf(ofIds).keys;
    return [key, gathered(value, (own, typed) => answers.has(own) && !isBlock(typed), [key])];
  });
  const isGathered = (value: Indented | Tree): value is Indented => isBlock(value) && 'troubles' in value;
  return {
    tree: Object.fromEntries(blocks.map(([key, value]) => [key, isGathered(value) ? value.tree : value])),
    troubles: [...top.troubles, ...blocks.flatMap(([, value]) => (isGathered(value) ? value.troubles : []))],
  };
}

function belongs(key: string, value: Tree, { keys, ofIds }: Inside): boolean {
  if (ofIds !== null) return isBlock(value) || isUnanswered(value);
  return keys.has(key);
}

/** Moves entries under the one above them that has no answer, or that holds such entries already. */
function gathered(
  block: Block,
  isMoved: (key: string, value: Tree, owner: string) => boolean,
  above: Path = [],
): Indented {
  const kept = new Map<string, Tree>();
  const troubles: Trouble[] = [];
  let owner: string | null = null;
  let inRun = false;
  for (const [key, value] of Object.entries(block)) {
    const under: Tree | undefined = owner === null ? undefined : kept.get(owner);
    const hasRoom = under !== undefined && (isUnanswered(under) || isBlock(under));
    if (owner === null || !hasRoom || !isMoved(key, value, owner)) {
      kept.set(key, value);
      owner = key;
      inRun = false;
      continue;
    }
    kept.set(owner, { ...(isBlock(under) ? under : {}), [key]: value });
    if (!inRun) troubles.push(tooFarLeft(key, owner, above));
    inRun = true;
  }
  return { tree: Object.fromEntries(kept), troubles };
}

const tooFarLeft = (key: string, owner: string, above: Path): Trouble => ({
  kind: 'unknown-key',
  path: [...above, key],
  at: 'key',
  expected: `"${key}:" under "${owner}:", two blanks further to the right than it`,
  found: `"${key}:" as far to the left as "${owner}:"`,
  cure: `Put two blanks before this line, and before each line below it that is an answer of "${owner}".`,
});
