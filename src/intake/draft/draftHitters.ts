import { ask, comment } from './ask.ts';
import { hitterIds } from './contenderIds.ts';
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
  const line = (key: string, question: string, must = false): readonly string[] =>
    ask({ key, question: first ? question : null, must, indent: 4 });
  return [
    `  ${id}:`,
    ...(spellings.length === 0 ? [] : [`    match: ${yamlList(spellings)}`]),
    ...(role === null
      ? line('role', 'Who is it, as a role: staff fitter, customer, professional?', true)
      : [`    role: ${yamlScalar(role)}`]),
    ...line('consent', 'Did the hitter agree to be shown here: yes, or yes and the day?', true),
    ...line('hand', 'Right- or left-handed: right or left?'),
    ...line('handicap_band', 'In which band of handicaps, such as 6-10?'),
    ...line('link_to_shop', 'Tied to the shop or to a maker, such as employed by the shop, or none?'),
    ...line('saw_club', 'Could the hitter see which one it was: yes or no?'),
    ...line('saw_numbers', 'Could the hitter see the numbers: yes or no?'),
  ];
}
