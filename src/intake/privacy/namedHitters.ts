import type { PlaceOf } from '../authored/places.ts';
import type { Source } from '../authored/source.ts';
import { makeProblem } from '../../problems/makeProblem.ts';
import type { Place, Problem } from '../../problems/problem.ts';
import type { ShotFile } from '../shots/shotFile.ts';
import { namesPerson, personNames, proseNamesPerson } from './hitterNames.ts';

interface Told {
  readonly place: Partial<Place> & { readonly file: string };
  readonly what: string;
  readonly cure: string;
}

/**
 * Names of hitters, as the session files or `match` have them, where they would be published: in names of files, the
 * address, title, summary, question, labels and narrative. Errors, but in a draft. What was found is not repeated, since
 * the table of problems may be public itself.
 */
export function namedHitters(source: Source, shotFiles: readonly ShotFile[]): readonly Problem[] {
  const { front, slug, body, placeOf } = source;
  const { file } = placeOf([]);
  const names = [
    ...front.hitters.flatMap(({ match = [] }) => match),
    ...shotFiles.flatMap(({ rows }) => rows.flatMap(({ hitter }) => hitter ?? [])),
  ];
  const people = personNames(names, front.contenders);
  if (people.length === 0) return [];
  const told: Told[] = [
    ...fileNames(front.session, front.orderSheet, placeOf).filter(({ name }) => namesPerson(name, people)),
    ...(namesPerson(slug, people)
      ? [
          {
            place: { file },
            what: 'in the name of the folder, which becomes the address',
            cure: 'Rename the folder of the report, for example to driver-test.',
          },
        ]
      : []),
    ...proseAnswers(source)
      .filter(({ text }) => proseNamesPerson(text, people))
      .map(({ path, text: _, ...rest }) => ({ ...rest, place: placeOf(path) })),
    ...body.text.split('\n').flatMap((line, index) =>
      proseNamesPerson(line, people)
        ? [
            {
              place: { file, line: body.firstLine + index },
              what: 'in the narrative',
              cure: 'Write the role in place of the name, such as "the staff fitter" or "this golfer".',
            },
          ]
        : [],
    ),
  ];
  return told.map(({ place, what, cure }) =>
    makeProblem('hitter-named', place, {
      expected: 'no name of anybody who hit: names of hitters are never published',
      found: `a name that the session files have for a hitter, ${what}`,
      cure,
      severity: front.status === 'draft' ? 'warning' : 'error',
    }),
  );
}

function fileNames(
  session: readonly string[],
  orderSheet: string | null,
  placeOf: PlaceOf,
): readonly (Told & { readonly name: string })[] {
  const what = 'in the name of the file, which is published';
  const cure = 'Rename the file, for example to session.csv, here and beside report.md.';
  return [
    ...session.map((name, index) => ({
      name,
      place: placeOf(session.length === 1 ? ['session'] : ['session', index]),
      what,
      cure,
    })),
    ...(orderSheet === null ? [] : [{ name: orderSheet, place: placeOf(['order_sheet']), what, cure }]),
  ];
}

function proseAnswers({ front }: Source) {
  const { title, summary, question, contenders } = front;
  const cure = 'Write the role in place of the name, such as "the staff fitter", or leave it out.';
  return [
    { path: ['title'], text: title, what: 'in the title', cure },
    { path: ['summary'], text: summary ?? '', what: 'in the summary', cure },
    { path: ['question'], text: question, what: 'in the question', cure },
    ...contenders.flatMap(({ id, label, short = '' }) => [
      { path: ['contenders', id, 'label'], text: label, what: 'in a label', cure },
      { path: ['contenders', id, 'short'], text: short, what: 'in a short name', cure },
    ]),
  ];
}
