import { hitterQuestions } from '../authored/hitter.ts';
import { comment } from './ask.ts';
import { hitterIds } from './contenderIds.ts';
import { draftQuestions } from './draftQuestions.ts';
import type { FoundName } from './understood.ts';
import { yamlList, yamlScalar } from './yamlScalar.ts';

/** The block `hitters`; questions stand at the first one. */
export function draftHitters(
  found: readonly FoundName[],
  report: string,
  role: string | null = null,
): readonly string[] {
  const ids = hitterIds(
    found.map(({ name }) => name),
    report,
  );
  return [
    ...comment('Who hit. Names are never printed: "match" is the name in the session file and stays here.'),
    'hitters:',
    ...comment(
      'Who was it? A golfer who hit for another report has the same id here as there, in place of the one below, ' +
        'which no other report has. It is never a name.',
      2,
    ),
    ...ids.flatMap((id, index) => hitter(id, found[index]?.spellings ?? [], role, index === 0)),
  ];
}

function hitter(
  id: string,
  spellings: readonly string[],
  role: string | null,
  first: boolean,
): readonly string[] {
  return [
    `  ${id}:`,
    ...(spellings.length === 0 ? [] : [`    match: ${yamlList(spellings)}`]),
    ...(role === null ? [] : [`    role: ${yamlScalar(role)}`]),
    ...draftQuestions(hitterQuestions, { indent: 4, first, without: role === null ? [] : ['role'] }),
  ];
}
