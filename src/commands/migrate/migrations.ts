import type { Block } from '../../intake/authored/tree.ts';
import type { AnswerEdit } from '../../intake/edits/answerEdit.ts';

/** What a shop writes, by what its answers are. */
export type AuthoredKind = 'shop' | 'report' | 'contender';

/** The way of content from one version to the next. */
export interface Migration {
  /** The version that it leaves, as in `schema: 1`. */
  readonly from: number;
  /**
   * What changes in a file, whose answers come as they are typed. None in one that is already as the next version has it:
   * a migration that was stopped is done once more.
   */
  readonly edits: (kind: AuthoredKind, answers: Block) => readonly AnswerEdit[];
}

/** One for each version that there has been, in their order; see `contentVersion`. */
export const migrations: readonly Migration[] = [];
