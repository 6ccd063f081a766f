import { interestQuestions } from '../intake/authored/interests.ts';
import { readShop } from '../intake/authored/readShop.ts';
import { shopAnswers } from '../intake/authored/shop.ts';
import { takesOf } from '../intake/authored/takes.ts';
import { readYaml } from '../intake/authored/yamlText.ts';
import type { Block } from '../intake/authored/tree.ts';
import type { Problem } from '../problems/problem.ts';
import { composedNames } from '../site/composedNames.ts';
import { openContentFolder, sha256 } from '../site/contentFiles.ts';
import { shopFile } from '../site/sharedFiles.ts';
import { answerFields, type AnswerField } from './answerFields.ts';
import { fieldAt } from './answerGroups.ts';
import { fieldLabel } from './fieldLabel.ts';
import type { PlacedProblems } from './placedProblems.ts';

/** The shop's own answers as they lie on the desk. */
export interface ShopAtDesk {
  /** Empty where there is no file. */
  readonly text: string;
  /** SHA-256 of the file's bytes; null where there is none. */
  readonly hash: string | null;
  /** The answers that its form asks for; none where the file cannot be read. */
  readonly fields: readonly AnswerField[];
  readonly problems: PlacedProblems;
  /** Its name, where it can be used. */
  readonly name: string | null;
}

/** What the form asks; the rest of the file is for who edits it. */
const asked: readonly string[] = ['name', 'address', 'contact', 'interests'];

export function shopAtDesk(root: string): ShopAtDesk {
  const folder = composedNames(openContentFolder(root));
  const { content: bytes } = folder.bytes(shopFile);
  const text = folder.text(shopFile).content ?? '';
  const tree: Block | null = text.trim() === '' ? {} : readYaml(shopFile, text).tree;
  const fields = tree === null ? [] : fieldsIn(tree);
  const { shop, problems } = readShop(shopFile, text);
  return {
    text,
    hash: bytes === null ? null : sha256(bytes),
    fields,
    problems: placed(bytes === null ? [] : problems, fields),
    name: shop?.name ?? null,
  };
}

const fieldsIn = (tree: Block): readonly AnswerField[] =>
  asked.flatMap((key) => {
    const schema = takesOf(shopAnswers).inside?.find(([step]) => step === `.${key}`)?.[1];
    if (schema === undefined) return [];
    const required = key === 'name';
    return answerFields({ schema, answer: tree[key], path: [key], required, called: null })
      .filter(({ path }) => path.at(-1) !== 'supplied')
      .map((field) => ({ ...field, label: questionOf(field) ?? field.label }));
  });

/** The questions about money are asked in the same words as in a report. */
function questionOf({ path }: AnswerField): string | null {
  const question = Object.entries(interestQuestions).find(
    ([key]) => path[0] === 'interests' && path[1] === key,
  );
  return question === undefined || path.length !== 2 ? null : fieldLabel(question[1]);
}

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
