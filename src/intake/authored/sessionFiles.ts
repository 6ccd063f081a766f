import { answer, typed } from './answers.ts';
import { oneOrMore } from './collections.ts';
import { given, invalid, refused, understood } from './trouble.ts';

const expected = 'a file in the folder of the report, such as shots.csv';

/** A path inside the folder of the report, with forward slashes. */
export const fileInside = answer(
  // Some disks keep an accent apart from its letter: the same name to the eye.
  typed.normalize('NFC').transform((path, context): string => {
    const leaves = /^([/~]|[a-z]:|[a-z]+:\/\/)/i.test(path) || path.includes('\\') || path.includes('\0');
    const within = !leaves && path.split('/').every((step) => step !== '..' && step !== '.' && step !== '');
    const cure = 'Put the file beside report.md and write its name alone.';
    const outside = { ...invalid([], expected, path, cure), kind: 'path-outside-report' } as const;
    return given(within ? understood(path) : refused(outside), context);
  }),
  { expected, cure: 'Write the name of the file.' },
  'the name of a file beside `report.md`',
  { pattern: '^(?![/~]|[A-Za-z]:|[A-Za-z]+://)(?!(.*/)?\\.{1,2}(/|$))[^\\\\]+$' },
);

/** The files that hold the shots: one, or a list. */
export const sessionFiles = oneOrMore(fileInside, 'one file name or a list of them');
