import { ballQuestions } from '../intake/authored/ball.ts';
import { answerTo } from '../intake/authored/camelKeys.ts';
import { singleConditions } from '../intake/authored/conditions.ts';
import type { Front } from '../intake/authored/front.ts';
import { monitorQuestions } from '../intake/authored/monitor.ts';
import type { PlaceOf } from '../intake/authored/places.ts';
import type { Questions } from '../intake/authored/question.ts';
import type { Sheet } from '../intake/authored/sheet.ts';
import type { Path } from '../intake/authored/tree.ts';
import type { Problem, Severity } from '../problems/problem.ts';
import { carefulProblems } from './carefulProblems.ts';
import { sentencesOf } from './linterText.ts';
import { namingWords } from './linterWords.ts';
import type { CarefulWord } from './carefulWord.ts';
import type { Telling } from './telling.ts';

interface Written {
  readonly path: Path;
  readonly text: string | undefined;
}

/**
 * Reads labels, short names and the noun of what differs for praise: they stand in every answer and caption, so praise
 * in them is an error. What is told of builds, conditions and interests is read for words to be careful with.
 */
export function lintNames(
  placeOf: PlaceOf,
  { front, telling, strict }: { readonly front: Front; readonly telling: Telling; readonly strict: boolean },
  words: readonly CarefulWord[],
): readonly Problem[] {
  const read = (
    written: readonly Written[],
    own: readonly CarefulWord[],
    severity: Severity,
  ): readonly Problem[] =>
    written.flatMap(({ path, text }) =>
      sentencesOf(text ?? '').flatMap((sentence) =>
        carefulProblems(sentence, own, () => placeOf(path), { telling, severity, where: 'name' }),
      ),
    );
  return [
    ...read(namesIn(front), namingWords, 'error'),
    ...read(asked(front), namingWords, 'error'),
    ...read(toldOf(front), words, strict ? 'error' : 'warning'),
  ];
}

function namesIn({ varied, contenders }: Front): readonly Written[] {
  return [
    { path: ['varied'], text: varied },
    ...contenders.flatMap(({ id, label, short }) => [
      { path: ['contenders', id, 'label'], text: label },
      { path: ['contenders', id, 'short'], text: short },
    ]),
  ];
}

/** A question that takes its answer for granted, as the statement that it is. */
function asked({ question }: Front): readonly Written[] {
  return /^(?:why|by how much|how (?:much|many|far))\b/i.test(question)
    ? [{ path: ['question'], text: question.replaceAll('?', '.') }]
    : [];
}

function toldOf({ contenders, held, conditions, interests }: Front): readonly Written[] {
  return [
    ...inSheet(['held'], held),
    ...contenders.flatMap(({ id, suppliedBy, build }) => [
      { path: ['contenders', id, 'supplied_by'], text: suppliedBy.words },
      ...inSheet(['contenders', id, 'build'], build ?? {}),
    ]),
    ...answered(['conditions'], singleConditions, conditions),
    ...answered(['conditions', 'ball'], ballQuestions, conditions.ball ?? {}),
    ...answered(['conditions', 'monitor'], monitorQuestions, conditions.monitor ?? {}),
    { path: ['interests', 'supplied'], text: interests.supplied },
    { path: ['interests', 'sentence'], text: interests.sentence },
    { path: ['interests', 'paid_by'], text: interests.paidBy.words },
    { path: ['interests', 'commission_or_gifts'], text: interests.commissionOrGifts.words },
    { path: ['interests', 'seen_before'], text: interests.seenBefore.words },
  ];
}

/** The answers of a block that its questions say are read. */
function answered(path: Path, questions: Questions, answers: object): readonly Written[] {
  return Object.entries(questions).flatMap(([key, { readForPraise }]) => {
    const text = answerTo(answers, key);
    return readForPraise && typeof text === 'string' ? [{ path: [...path, key], text }] : [];
  });
}

function inSheet(path: Path, { also = {}, ...items }: Sheet): readonly Written[] {
  return [
    ...Object.entries(items).map(([key, text]) => ({ path: [...path, key], text })),
    ...Object.entries(also).map(([key, text]) => ({ path: [...path, 'also', key], text })),
  ];
}
