import { exclusions } from '../intake/authored/exclusions.ts';
import { metricNamed } from '../intake/authored/metricName.ts';
import { readWith } from '../intake/authored/readWith.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import { unitFor, type UnitSystem } from '../prose/readerUnits.ts';
import type { AnswerField } from './answerFields.ts';
import type { EntryAnswers } from './exclusionEdits.ts';
import { exclusionFields } from './exclusionFields.ts';
import type { LeavingOut } from './leavingOut.ts';
import type { ShotsAtDesk } from './shotsAtDesk.ts';
import { controlName, type Submitted } from './submittedAnswers.ts';

/** What is asked about a further limit. */
export const limitFields = (shots: ShotsAtDesk): readonly AnswerField[] =>
  exclusionFields('limit', { answer: undefined, path: ['limit'] }, shots);

/** Reads such a form as the report itself is read; a bare number counts in the unit of the table. */
export function limitAsked(shots: ShotsAtDesk, submitted: Submitted): LeavingOut {
  const fields = limitFields(shots);
  const typed = Object.fromEntries(
    fields.flatMap((field) => {
      const text = (submitted[controlName(field)]?.[0] ?? '').trim();
      return text === '' ? [] : [[String(field.path.at(-1)), text]];
    }),
  );
  const entry = withUnits(typed, shots.system);
  // What kind of entry is meant is told by its measure; without one it would be read as a single shot.
  const read = readWith(exclusions, [{ metric: '', ...entry }]);
  if ('value' in read) return { kind: 'entries', entries: [entry] };
  const problems = Map.groupBy(
    read.troubles.map(({ kind, path, expected, found, cure }) => ({
      name: ['limit', ...path.slice(1)].join('.'),
      problem: makeProblem(kind, { file: '' }, { expected, found, cure: cure ?? 'Write it here.' }),
    })),
    ({ name }) => name,
  );
  return {
    kind: 'open',
    sentence: 'The limit is not complete yet: see what stands beside its answers. Nothing was written.',
    problems: new Map([...problems].map(([name, own]) => [name, own.map(({ problem }) => problem)])),
  };
}

const bareNumber = /^[+\-−]?(?:\d+(?:\.\d+)?|\.\d+)$/u;

function withUnits(typed: EntryAnswers, system: UnitSystem): EntryAnswers {
  const metric = metricNamed(typed['metric'] ?? '');
  const unit = metric === null ? '1' : unitFor(metric, system);
  return Object.fromEntries(
    Object.entries(typed).map(([key, text]) =>
      unit !== '1' && ['below', 'above'].includes(key) && bareNumber.test(text)
        ? [key, `${text} ${unit}`]
        : [key, text],
    ),
  );
}
