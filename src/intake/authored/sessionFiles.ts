import { oneOrMore } from './collections.ts';
import { asFound } from './tree.ts';
import { refused, unanswered, schemaOf, understood, type Schema, type Understood } from './trouble.ts';

const expected = 'a file in the folder of the report, such as shots.csv';

/** A path inside the folder of the report, with forward slashes. */
export const fileInside: Schema<string> = schemaOf(
  { words: 'the name of a file beside `report.md`' },
  (typed): Understood<string> => {
    if (typed === undefined || typed === '') {
      return unanswered(expected);
    }
    if (typeof typed !== 'string') {
      return refused({
        kind: 'value-invalid',
        path: [],
        expected,
        found: asFound(typed),
        cure: 'Write the name of the file.',
      });
    }
    // Some disks keep an accent apart from its letter: the same name to the eye.
    const path = typed.trim().normalize('NFC');
    const leaves = /^([/~]|[a-z]:|[a-z]+:\/\/)/i.test(path) || path.includes('\\') || path.includes('\0');
    if (leaves || path.split('/').some((step) => step === '..' || step === '.' || step === '')) {
      const cure = 'Put the file beside report.md and write its name alone.';
      return refused({ kind: 'path-outside-report', path: [], expected, found: typed, cure });
    }
    return understood(path);
  },
);

/** The files that hold the shots: one, or a list. */
export const sessionFiles: Schema<readonly string[]> = oneOrMore(
  fileInside,
  'one file name or a list of them',
);
