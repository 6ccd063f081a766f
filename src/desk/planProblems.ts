import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import type { PlanTrouble } from '../planning/answersAsGiven.ts';
import type { PlanKey } from '../planning/planAnswers.ts';
import type { PlanRecorded, PlanRefusal } from '../planning/planRecorded.ts';
import type { Told } from './told.ts';

/** Why a plan was not recorded: what belongs to an answer beside it, the rest before all else. */
export interface PlanProblems {
  readonly ofFields: ReadonlyMap<string, readonly Problem[]>;
  readonly told: readonly Told[];
}

export const noPlanProblems: PlanProblems = { ofFields: new Map(), told: [] };

/** @param recorded what became of the plan that was to be recorded */
export function planProblems(recorded: Exclude<PlanRecorded, { kind: 'recorded' }>): PlanProblems {
  switch (recorded.kind) {
    case 'undecided':
      return besideAnswers(recorded.troubles.map((trouble) => [trouble.key, problemOf(trouble)]));
    case 'refused':
      return ofRefusal(recorded.refusal);
    case 'not-written':
      return refusedWith(`The plan cannot be written. ${recorded.why}`);
  }
}

const refusedWith = (sentence: string, problems: readonly Problem[] = []): PlanProblems => ({
  ofFields: new Map(),
  told: [{ kind: 'refused', sentence: `${sentence} Nothing was written.`, problems }],
});

function besideAnswers(found: readonly (readonly [PlanKey, Problem])[]): PlanProblems {
  return {
    ofFields: new Map(found.map(([key, problem]) => [key, [problem]])),
    told: [
      {
        kind: 'refused',
        sentence:
          'The plan is not recorded yet: an answer is missing or cannot be used. Nothing was written.',
      },
    ],
  };
}

/** No file has these answers yet. */
const place = (key: PlanKey) => ({ file: '', columnName: key });

export const problemOf = ({ key, typed, expected }: PlanTrouble): Problem =>
  typed === null || typed.trim() === ''
    ? makeProblem('key-missing', place(key), { expected, found: null, cure: 'A plan needs it.' })
    : unusableAnswer(key, typed, expected, 'Put it right here.');

const unusableAnswer = (key: PlanKey, found: string, expected: string, cure: string): Problem =>
  makeProblem('value-invalid', place(key), { expected, found, cure });

function ofRefusal(refusal: PlanRefusal): PlanProblems {
  switch (refusal.kind) {
    case 'name-unusable':
      return besideAnswers([
        [
          'slug',
          unusableAnswer(
            'slug',
            refusal.name,
            'small letters, digits and single hyphens, 40 characters at most',
            'Write it so, or leave it empty.',
          ),
        ],
      ]);
    case 'name-taken':
      return besideAnswers([
        [
          'slug',
          unusableAnswer(
            'slug',
            refusal.name,
            'a name that no report has, since none is ever overwritten',
            `Take another one, such as ${refusal.free}, or leave it empty.`,
          ),
        ],
      ]);
    case 'no-order':
      return refusedWith('No order fits these counts: change the number of shots, or the order.');
    case 'no-plan':
      return refusedWith('These answers cannot be written as a plan.');
    case 'ledger-unreadable':
      return refusedWith('The plan could not be put on record.', refusal.problems);
  }
}
