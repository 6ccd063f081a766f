import { problemKinds, type ProblemKind } from '../../problems/kinds.ts';
import { answer, text } from './answers.ts';
import { listOf } from './collections.ts';
import { strict } from './strict.ts';
import type { Schema } from './trouble.ts';

/** A warning that the shop has read and leaves as it is. */
export interface SeenWarning {
  readonly warning: ProblemKind;
  /** Words of what it found, or the column or answer that it is about; all of its kind where there are none. */
  readonly about?: string;
}

const isKind = (typed: string): typed is ProblemKind => Object.hasOwn(problemKinds, typed);

const kind = answer<ProblemKind>(
  'the name of a warning, as npm run check prints it in brackets',
  (typed) => (isKind(typed) ? typed : null),
  'Write the name that stands in brackets behind the warning, such as number-unmatched.',
  'the name of a warning, such as `number-unmatched`',
);

export const seen: Schema<readonly SeenWarning[]> = listOf(
  strict({
    warning: kind.describe('its name, which `npm run check` prints in brackets'),
    about: text(
      'words of what it found, or the column or answer that it is about; left out, all of that name are meant',
    ).exactOptional(),
  }),
  'a list of warnings, each with its name: [{warning: number-unmatched, about: 300 yards}]',
).describe('warnings that were read and are to stay quiet; errors never do');
