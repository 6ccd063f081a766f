import type { PlaceOf } from '../authored/places.ts';
import type { Source } from '../authored/source.ts';
import { makeProblem } from '../../problems/makeProblem.ts';
import type { Place, Problem, Severity } from '../../problems/problem.ts';
import type { ShotFile } from '../shots/shotFile.ts';
import { publishedTexts } from './publishedTexts.ts';
import { likePerson, namesPerson, personNames, proseNamesPerson, type PersonName } from './hitterNames.ts';

interface Told {
  readonly place: Partial<Place> & { readonly file: string };
  readonly what: string;
  readonly cure: string;
}

/**
 * Names of hitters, as the session files or `match` have them, where they would be published: in names of files, the
 * address, ids, whatever was answered, and the narrative. Errors, but in a draft. What was found is not repeated, since
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
  const severity = front.status === 'draft' ? 'warning' : 'error';
  const alike = likePeople(source, people, severity);
  if (people.length === 0) return alike;
  const told: Told[] = [
    ...fileNames(front.session, front.orderSheet, placeOf).filter(({ name }) => namesPerson(name, people)),
    ...front.aliases.flatMap((alias, index) =>
      namesPerson(alias, people)
        ? [
            {
              place: placeOf(['aliases', index]),
              what: 'in a former name of the folder, which stays an address',
              cure: 'Take it out of "aliases".',
            },
          ]
        : [],
    ),
    ...(namesPerson(slug, people)
      ? [
          {
            place: { file },
            what: 'in the name of the folder, which becomes the address',
            cure: 'Rename the folder of the report, for example to driver-test.',
          },
        ]
      : []),
    ...idsOf(source)
      .filter(({ id }) => namesPerson(id, people))
      .map(({ id: _, ...rest }) => rest),
    ...publishedTexts(source)
      .filter(({ text }) => proseNamesPerson(text, people))
      .map(({ place, what }) => ({
        place,
        what,
        cure: 'Write the role in place of the name, such as "the staff fitter", or leave it out.',
      })),
    ...body.text.split('\n').flatMap((line, index, lines) =>
      proseNamesPerson(line, people) || beginsName(line, lines[index + 1] ?? '', people)
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
  return [
    ...alike,
    ...told.map(({ place, what, cure }) =>
      makeProblem('hitter-named', place, {
        expected: 'no name of anybody who hit: names of hitters are never published',
        found: `a name that the session files have for a hitter, ${what}`,
        cure,
        severity,
      }),
    ),
  ];
}

/** Whether a name begins on this line and ends on the next. */
function beginsName(line: string, next: string, people: readonly PersonName[]): boolean {
  return (
    line.trim() !== '' &&
    next.trim() !== '' &&
    !proseNamesPerson(next, people) &&
    proseNamesPerson(`${line} ${next}`, people)
  );
}

/** Names of files, which a page prints and its downloads bear, and roles that look like people nobody has told us of. */
function likePeople(
  { front, placeOf }: Source,
  people: readonly PersonName[],
  severity: Severity,
): readonly Problem[] {
  const contenders = front.contenders.flatMap(({ id, label, short = '', match = [] }) => [
    id,
    label,
    short,
    ...match,
  ]);
  const isLikePerson = (text: string): boolean =>
    !namesPerson(text, people) && likePerson(text, contenders) !== null;
  const found = 'two words like a first and a last name';
  return [
    ...fileNames(front.session, front.orderSheet, placeOf)
      .filter(({ name }) => isLikePerson(name))
      .map(({ place, cure }) =>
        makeProblem('file-named-like-person', place, {
          expected: 'a file name that names nobody: it is published with the report',
          found,
          cure,
          severity,
        }),
      ),
    // Two capitals may be a title that we do not know, so this keeps no report back.
    ...front.hitters
      .filter(({ role }) => isLikePerson(role))
      .map(({ id }) =>
        makeProblem('hitter-named', placeOf(['hitters', id, 'role']), {
          expected: 'a role, such as staff fitter or customer: names of hitters are never published',
          found,
          cure: 'Write what the hitter is, and not who.',
          severity: 'warning',
        }),
      ),
  ];
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

/** Ids stand in addresses and in tables of data. */
function idsOf({ front, placeOf }: Source): readonly (Told & { readonly id: string })[] {
  const told = (key: string, id: string, such: string) => ({
    id,
    place: placeOf([key, id], 'key'),
    what: 'in an id, which addresses and tables of data bear',
    cure: `Give it another id, such as "${such}".`,
  });
  return [
    ...front.contenders.map(({ id }) => told('contenders', id, 'old-driver')),
    ...front.hitters.map(({ id }) => told('hitters', id, 'one')),
  ];
}
