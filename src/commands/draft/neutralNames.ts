import { fewestContenders } from '../../intake/authored/contenderChecks.ts';
import {
  likePerson,
  namesPerson,
  personNames,
  withoutPeople,
  type PersonName,
} from '../../intake/privacy/hitterNames.ts';
import type { ShotFile } from '../../intake/shots/shotFile.ts';
import { fileNames } from './fileNames.ts';

/** Names under which session files may lie beside a report, and the people that proposals must not name. */
interface NeutralNames {
  readonly names: readonly string[];
  readonly people: readonly PersonName[];
}

/**
 * Takes names of people out of what is proposed: a file whose name holds one that the files know, or looks like one,
 * gets another name, since names of files are published; nor does it go into a title or an address.
 *
 * @param there names that are taken beside the report
 */
export function neutralNames(
  names: readonly string[],
  shotFiles: readonly ShotFile[],
  there?: readonly string[],
): NeutralNames {
  const rows = shotFiles.flatMap(({ rows: own }) => own);
  const clubs = [...new Set(rows.flatMap(({ club }) => club ?? []))];
  // A file of one contender may be called after it.
  const contenders = clubs.length < fewestContenders && names.length > 1 ? [...clubs, ...names] : clubs;
  const known = personNames(
    rows.flatMap(({ hitter }) => hitter ?? []),
    clubs.map((label) => ({ id: label, label })),
  );
  const people = [...known, ...names.flatMap((name) => likePerson(name, contenders) ?? [])];
  const neutral = names.map((name) =>
    namesPerson(stemOf(name), people) ? withoutNames(name, people) : name,
  );
  return { names: fileNames(neutral, there), people };
}

const stemOf = (name: string): string => name.replace(/\.[^.]+$/, '');

/** What is left of a file name, session.csv where nothing is. */
function withoutNames(name: string, people: readonly PersonName[]): string {
  const left = withoutPeople(stemOf(name), people).replace(/[\s_-]+/g, '-');
  return `${left.replace(/^[-'’.,]+|[-'’.,]+$/g, '') || 'session'}${name.slice(stemOf(name).length)}`;
}
