import { readShop } from '../intake/authored/readShop.ts';
import { readYaml } from '../intake/authored/yamlText.ts';
import type { Block } from '../intake/authored/tree.ts';
import type { Problem } from '../problems/problem.ts';
import { composedNames } from '../site/composedNames.ts';
import { openContentFolder, sha256 } from '../site/contentFiles.ts';
import { readShared, shopFile } from '../site/sharedFiles.ts';
import type { AnswerField } from './answerFields.ts';
import { fieldAt, fieldsOf, type AnswerGroup } from './answerGroups.ts';
import type { PlacedProblems } from './placedProblems.ts';
import { shopGroups } from './shopGroups.ts';

/** The shop's own answers as they lie on the desk. */
interface ShopAtDesk {
  /** Empty where there is no file. */
  readonly text: string;
  /** SHA-256 of the file's bytes; null where there is none. */
  readonly hash: string | null;
  /** What its form asks; nothing where the file cannot be read. */
  readonly groups: readonly AnswerGroup[];
  readonly problems: PlacedProblems;
}

/** Pictures of this kind can be logos. */
const isPicture = (name: string): boolean => /\.(?:svg|png)$/i.test(name) && !name.startsWith('.');

export function shopAtDesk(root: string): ShopAtDesk {
  const folder = composedNames(openContentFolder(root));
  const { content: bytes } = folder.bytes(shopFile);
  const text = folder.text(shopFile).content ?? '';
  const tree: Block | null = text.trim() === '' ? {} : readYaml(shopFile, text).tree;
  const groups = tree === null ? [] : shopGroups(tree, folder.files('').filter(isPicture));
  const problems = readShared(folder).problems.filter(({ file }) => !file.startsWith('contenders/'));
  return {
    text,
    hash: bytes === null ? null : sha256(bytes),
    groups,
    // What is missing while there is no file is what the form asks.
    problems: placed(bytes === null ? [] : problems, fieldsOf(groups)),
  };
}

/** The name of a shop, where it can be used. */
export const shopName = (root: string): string | null =>
  readShop(shopFile, composedNames(openContentFolder(root)).text(shopFile).content ?? '').shop?.name ?? null;

function placed(problems: readonly Problem[], fields: readonly AnswerField[]): PlacedProblems {
  const ofFields = new Map<string, Problem[]>();
  const ofNone: Problem[] = [];
  for (const problem of problems) {
    const field = problem.columnName === null ? null : fieldAt(fields, problem.columnName);
    if (field === null) ofNone.push(problem);
    else ofFields.set(field.name, [...(ofFields.get(field.name) ?? []), problem]);
  }
  return { ofFields, ofNarrative: [], ofParts: new Map(), ofNone };
}
