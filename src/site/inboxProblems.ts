import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import type { ContentFolder } from './contentFiles.ts';

interface Stranger {
  readonly ending: RegExp;
  readonly what: string;
  readonly cure: string;
}

const asCsv = 'save it as CSV (UTF-8), and put that file into the inbox in its place';

/** What people put into an inbox that takes CSV files, by the ending of its name. */
const known: readonly Stranger[] = [
  {
    ending: /\.(?:xlsx?|xlsm|ods|numbers)$/i,
    what: 'a spreadsheet',
    cure: `Open it in the spreadsheet program, ${asCsv}.`,
  },
  {
    ending: /\.(?:jpe?g|png|webp|avif|gif|heic|heif|tiff?|bmp)$/i,
    what: 'a picture',
    cure: 'Export the session from the monitor as CSV: no numbers are read from pictures. A photo for readers goes beside report.md, named in the narrative: ![what it shows](photo.jpg).',
  },
  {
    ending: /\.(?:txt|tsv|tab|dat)$/i,
    what: 'a text file',
    cure: 'If it holds the shots as a table, rename it so that it ends in .csv; tabs and semicolons are read too.',
  },
  {
    ending: /\.pdf$/i,
    what: 'a PDF',
    cure: 'Export the session from the monitor as CSV: a PDF cannot be read.',
  },
  {
    ending: /\.(?:zip|rar|7z|gz)$/i,
    what: 'an archive',
    cure: 'Unpack it, and put the CSV files into the inbox.',
  },
];

/** Files in the inbox that never become drafts, each with what to do; what systems leave lying there is passed over. */
export function notForInbox(folder: ContentFolder): readonly Problem[] {
  const links = folder.links('inbox');
  return folder
    .files('inbox')
    .filter((name) => !/\.csv$/i.test(name) && !ownOfSystems.test(name) && !links.includes(name))
    .map((name) => {
      const { what, cure } = known.find(({ ending }) => ending.test(name)) ?? {
        what: 'another file',
        cure: 'Export the session as CSV, and take this file out of the inbox.',
      };
      return makeProblem(
        'inbox-not-csv',
        { file: `inbox/${name}` },
        { expected: 'session files as CSV', found: what, cure },
      );
    });
}

const ownOfSystems =
  /^(?:~\$.*|thumbs\.db|desktop\.ini|readme(?:\.\w+)?|.*~|.*\.(?:tmp|part|crdownload|lock))$/i;
