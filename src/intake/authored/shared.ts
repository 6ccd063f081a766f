import type { Contender } from './contender.ts';
import type { Shop } from './shop.ts';
import type { Block } from './tree.ts';

/** What all reports of a content folder share. */
export interface Shared {
  readonly shop: Shop | null;
  /** Whether there is a `shop.yaml` that cannot be used: what it answers is not known, and not missing either. */
  readonly shopUnread?: boolean;
  /** Build sheets by id; null for a file that is there but cannot be used. */
  readonly contenders: ReadonlyMap<string, Contender | null>;
  /** The same as typed; absent where nobody needs it. */
  readonly typed?: { readonly shop: Block; readonly contenders: ReadonlyMap<string, Block> };
}

export const nothingShared: Shared = { shop: null, contenders: new Map() };
