import { at } from '../../stats/at.ts';
import { contenderQuestions } from '../authored/contender.ts';
import { fewestContenders, mostContenders } from '../authored/contenderChecks.ts';
import { withoutHidden } from '../authored/hiddenCharacters.ts';
import { foldedName } from '../contenderNames.ts';
import { ask, comment } from './ask.ts';
import { contenderIds } from './contenderIds.ts';
import { draftQuestions } from './draftQuestions.ts';
import type { FoundName } from './understood.ts';
import { yamlList, yamlScalar } from './yamlScalar.ts';

/** The longest name that fits where charts are narrow. */
const longestShort = 16;

/** The block `contenders`: label and match filled in, the rest asked; questions stand at the first one. */
export function draftContenders(found: readonly FoundName[]): readonly string[] {
  const names = found.map(({ name }) => name);
  const ids = contenderIds(names);
  const labels = withBlanks(names);
  return [
    ...comment(
      'What was compared, two to six. "label" is the name for readers, "match" the name in the session file.',
    ),
    ...comment(
      found.length < fewestContenders
        ? 'The files name fewer than two; add what this one is compared with.'
        : '',
    ),
    ...comment(
      found.length > mostContenders ? `The files name ${found.length}; split them into several reports.` : '',
    ),
    'contenders:',
    ...found.flatMap((each, index) => contender(at(ids, index), at(labels, index), each, index === 0)),
  ];
}

/** Names of files have an underscore for a blank; it stays where the name would become that of another. */
function withBlanks(names: readonly string[]): readonly string[] {
  const printed = names.map((name) => name.replace(/(?<=[\p{L}\p{N}])_+(?=[\p{L}\p{N}])/gu, ' '));
  const times = Map.groupBy(printed, foldedName);
  return names.map((name, index) => {
    const own = at(printed, index);
    return times.get(foldedName(own))?.length === 1 ? own : name;
  });
}

function contender(
  id: string,
  printed: string,
  { name, spellings }: FoundName,
  first: boolean,
): readonly string[] {
  const indent = 4;
  // "not recorded" is how a report says that it has no answer.
  const label = /^not recorded$/i.test(name) ? `"${name}"` : printed;
  return [
    `  ${id}:`,
    `    label: ${yamlScalar(withoutHidden(label))}`,
    `    match: ${yamlList(spellings)}`,
    ...([...name].length > longestShort
      ? ask({
          key: 'short',
          question: `A short name for charts, ${longestShort} characters at most?`,
          indent,
        })
      : []),
    ...draftQuestions(contenderQuestions, { indent, first }),
  ];
}
