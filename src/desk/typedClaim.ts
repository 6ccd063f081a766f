import { claimDirections, type Claim, type ClaimDirection } from '../intake/authored/claims.ts';
import type { Answer } from '../intake/edits/answerEdit.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import { controlName, type Submitted } from './submittedAnswers.ts';

/** What a form asks about a claim, in its order. */
export const claimQuestions = ['say', 'metric', 'of', 'direction', 'than', 'size'] as const;
export type ClaimQuestion = (typeof claimQuestions)[number];

/** A claim as it was typed; empty where nothing was. */
export type TypedClaim = Readonly<Record<ClaimQuestion, string>>;

/** The claim that a form sent. */
export function typedClaim(submitted: Submitted): TypedClaim {
  const sent = (name: ClaimQuestion): string =>
    (submitted[controlName({ name })]?.[0] ?? '').replace(/\s+/g, ' ').trim();
  return {
    say: sent('say'),
    metric: sent('metric'),
    of: sent('of'),
    direction: sent('direction'),
    than: sent('than'),
    size: sent('size'),
  };
}

/** The same of a claim that is known. */
export const asTyped = ({ say, metric, direction, of, than, byAtLeast }: Claim): TypedClaim => ({
  say,
  metric,
  of,
  direction,
  than,
  size: byAtLeast?.typed ?? '',
});

const isDirection = (word: string): word is ClaimDirection =>
  claimDirections.some((direction) => direction === word);

/** As it stands in the file; null where something of it is missing. */
export function claimAnswer(typed: TypedClaim, unproven = false): Answer | null {
  const { say, metric, of, direction, than, size } = typed;
  if (!isDirection(direction) || missingOf(typed).length > 0) return null;
  return {
    say,
    // Where shots finish beside the line is judged in one measure only.
    ...(direction === 'straighter' ? {} : { metric }),
    [direction]: of,
    than,
    ...(size === '' ? {} : { by_at_least: size }),
    ...(unproven ? { allow_unproven: 'yes' } : {}),
  };
}

const wanted: Readonly<Record<Exclude<ClaimQuestion, 'size'>, Pick<Problem, 'expected' | 'cure'>>> = {
  say: { expected: 'what you say, in one sentence', cure: 'Write it as it is to stand in the report.' },
  metric: { expected: 'what it is about', cure: 'Choose what was measured.' },
  of: { expected: 'what you say it of', cure: 'Choose one.' },
  direction: { expected: 'how the two differ', cure: 'Choose one.' },
  than: { expected: 'what it is compared with', cure: 'Choose another one.' },
};

const missingOf = (typed: TypedClaim): readonly (keyof typeof wanted)[] =>
  (['say', 'metric', 'of', 'direction', 'than'] as const).filter((name) => {
    if (name === 'metric') return typed.direction !== 'straighter' && typed.metric === '';
    if (name === 'direction') return !isDirection(typed.direction);
    return typed[name] === '' || (name === 'than' && typed.than === typed.of);
  });

/** What is missing of a claim, each at the question that asks for it. */
export const missingAnswers = (typed: TypedClaim, file: string): readonly Problem[] =>
  missingOf(typed).map((name) => {
    const kind = typed[name] === '' ? 'key-missing' : 'value-invalid';
    return makeProblem(
      kind,
      { file, columnName: `claims[1].${name}` },
      { ...wanted[name], found: typed[name] },
    );
  });

const questionOfKey: Readonly<Record<string, ClaimQuestion>> = {
  metric: 'metric',
  of: 'of',
  direction: 'direction',
  than: 'than',
  by_at_least: 'size',
};

/** The question to which a problem of a claim belongs, by the last word of its key. */
export function questionOf({ columnName }: Problem): ClaimQuestion {
  const last = columnName?.split('.').at(-1) ?? '';
  return isDirection(last) ? 'of' : (questionOfKey[last] ?? 'say');
}
