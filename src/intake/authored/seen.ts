import { z } from 'zod';
import { problemKinds, type ProblemKind } from '../../problems/kinds.ts';
import { answer, text, typed } from './answers.ts';
import { listOf } from './collections.ts';
import { strict } from './strict.ts';

const kinds = Object.keys(problemKinds) as readonly ProblemKind[];

const kind = answer(
  typed.pipe(z.enum(kinds)),
  {
    expected: 'the name of a warning, as npm run check prints it in brackets',
    cure: 'Write the name that stands in brackets behind the warning, such as number-unmatched.',
  },
  'the name of a warning, such as `number-unmatched`',
  { type: 'string', enum: kinds },
);

/** A warning that the shop has read and leaves as it is. */
const seenWarning = strict({
  warning: kind.describe('its name, which `npm run check` prints in brackets'),
  about: text(
    'words of what it found, or the column or answer that it is about; left out, all of that name are meant',
  ).exactOptional(),
});

export type SeenWarning = z.infer<typeof seenWarning>;

export const seen = listOf(
  seenWarning,
  'a list of warnings, each with its name: [{warning: number-unmatched, about: 300 yards}]',
).describe('warnings that were read and are to stay quiet; errors never do');
