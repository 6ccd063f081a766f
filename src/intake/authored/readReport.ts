import { sortProblems } from '../../problems/sortProblems.ts';
import type { Problem } from '../../problems/problem.ts';
import { completeFront } from './completeFront.ts';
import { indented } from './flushLeft.ts';
import { frontAnswers, type Front } from './front.ts';
import { frontChecks } from './frontChecks.ts';
import { splitReport, type Body } from './frontMatter.ts';
import { firstLine, type PlaceOf } from './places.ts';
import { idsIn } from './idsIn.ts';
import { interestChecks } from './interestChecks.ts';
import { nearest } from './nearest.ts';
import { nothingShared, type Shared } from './shared.ts';
import type { Block, Tree } from './tree.ts';
import { readWith } from './readWith.ts';
import type { Trouble } from './trouble.ts';
import { troubleProblems } from './troubleProblems.ts';
import { typedAnswers } from './typedAnswers.ts';
import { unseenProblems } from './unseenCharacters.ts';
import { readYaml } from './yamlText.ts';

export interface ReportReading {
  /** Null when an answer is missing or cannot be used. */
  readonly front: Front | null;
  /** All answers that the report is held to, as typed. */
  readonly typed: Tree;
  readonly body: Body;
  readonly placeOf: PlaceOf;
  /** All that is wrong with the front matter, in the order of the file. */
  readonly problems: readonly Problem[];
}

/** Reads `report.md`: its front matter, completed from the shop's defaults and build sheets, and its narrative. */
export function readReport(file: string, text: string, shared: Shared = nothingShared): ReportReading {
  const split = splitReport(file, text);
  if (split.yaml === null) {
    return { front: null, typed: null, body: split.body, placeOf: firstLine(file), problems: split.problems };
  }
  const { tree: asTyped, placeOf, problems, keysInOrder } = readYaml(file, split.yaml);
  if (asTyped === null) return { front: null, typed: null, body: split.body, placeOf, problems };
  const { tree, troubles: tooFarLeft } = indented(asTyped, frontAnswers);
  const read = readWith(frontAnswers, tree);
  const troubles = [
    ...tooFarLeft,
    ...('troubles' in read ? read.troubles : []),
    // Of two answers under one key only one is there to be counted.
    ...(problems.some(({ severity }) => severity === 'error') ? [] : frontChecks(tree, shared.contenders)),
    // What an unusable shop.yaml answers is told there, once.
    ...(shared.shopUnread === true ? [] : interestChecks(tree, shared.shop?.interests ?? {})),
    ...sheetsMissing(tree, shared),
  ];
  const unseen = unseenProblems(file, split.body.text, split.body.firstLine);
  const sound =
    'value' in read &&
    troubles.length === 0 &&
    [...problems, ...unseen].every(({ severity }) => severity !== 'error');
  return {
    front: sound ? completeFront(read.value, shared, keysInOrder) : null,
    typed: typedAnswers(tree, shared),
    body: split.body,
    placeOf,
    problems: sortProblems([...problems, ...troubleProblems(troubles, tree, placeOf), ...unseen]),
  };
}

/** Ids in a list of contenders for which `contenders/` has no file. */
function sheetsMissing(tree: Block, { contenders }: Shared): Trouble[] {
  if (!Array.isArray(tree['contenders'])) return [];
  return idsIn(tree['contenders']).flatMap((id, index): Trouble[] => {
    if (id === '' || contenders.has(id)) return [];
    const near = nearest(id, [...contenders.keys()]);
    const write = `Write contenders/${id}.yaml with label, supplied_by and sold_here, or describe ${id} in the report.`;
    return [
      {
        kind: 'contender-file-missing',
        path: ['contenders', index],
        expected: `a file contenders/${id}.yaml`,
        found: id,
        cure: near === null ? write : `Did you mean "${near}"?`,
      },
    ];
  });
}
