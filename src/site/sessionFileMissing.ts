import { nearest } from '../intake/authored/nearest.ts';
import type { Source } from '../intake/authored/source.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import type { ContentFolder } from './contentFiles.ts';

/** A session file that a report names and that is not there: what lies in its place, and what was most likely meant. */
export function sessionFileMissing(
  name: string,
  index: number,
  folder: ContentFolder,
  { slug, front, placeOf }: Pick<Source, 'slug' | 'front' | 'placeOf'>,
): Problem {
  const own = `reports/${slug}`;
  const path = front.session.length === 1 ? ['session'] : ['session', index];
  const tell = (found: string, cure: string): Problem =>
    makeProblem('session-file-missing', placeOf(path), {
      expected: `a file ${name} beside report.md`,
      found,
      cure,
    });
  if (folder.folders(own).includes(name))
    return tell(
      `a folder named ${name}`,
      'Put the session file itself there, and take the folder away or give it another name.',
    );
  if (folder.links(own).includes(name))
    return tell(
      'a link that leads nowhere, or out of the content folder',
      'Copy the session file itself into the folder of the report, in place of the link.',
    );
  const there = folder.files(own).filter((file) => file !== 'report.md');
  const meant = nearest(
    name,
    there.filter((file) => /\.csv$/i.test(file)),
  );
  return tell(
    there.length === 0 ? 'no other file in the folder' : `files there: ${there.join(', ')}`,
    meant === null
      ? 'Copy the session file into the folder of the report, or correct its name.'
      : `Did you mean "${meant}"? Else copy the session file into the folder of the report.`,
  );
}
