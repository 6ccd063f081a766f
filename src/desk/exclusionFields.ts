import type { z } from 'zod';
import { frontAnswers } from '../intake/authored/front.ts';
import { takesOf } from '../intake/authored/takes.ts';
import { isBlock, type Path, type Tree } from '../intake/authored/tree.ts';
import { metrics } from '../trade/metrics.ts';
import { answerFields, asChoice, type AnswerField, type Choice } from './answerFields.ts';
import type { ShotsAtDesk } from './shotsAtDesk.ts';

/** What is left out by one entry: a single shot, or all beyond a limit. */
type ExclusionKind = 'shot' | 'limit';

/** A key that only the one of the two has. */
const ownKey: Readonly<Record<ExclusionKind, string>> = { shot: 'shot', limit: 'metric' };

/** Which of the two an entry is meant to be. */
export const kindOfEntry = (typed: Tree): ExclusionKind =>
  isBlock(typed) && ['metric', 'below', 'above'].some((key) => Object.hasOwn(typed, key)) ? 'limit' : 'shot';

/** What is asked about one entry, as its schema describes it; the choices are those of the report. */
export function exclusionFields(
  kind: ExclusionKind,
  { answer, path }: { readonly answer: Tree | undefined; readonly path: Path },
  { contenders, golfers, columns }: Pick<ShotsAtDesk, 'contenders' | 'golfers' | 'columns'>,
): readonly AnswerField[] {
  const schema = withinExclusions(ownKey[kind]);
  if (schema === null) return [];
  const choices: Readonly<Record<string, readonly Choice[]>> = {
    contender: contenders.map(({ id, name }) => ({ value: id, words: name })),
    hitter: golfers.map(({ id, name }) => ({ value: id, words: name })),
    metric: columns.map(({ metric }) => ({ value: metric, words: metrics[metric].name })),
  };
  // Nobody is offered "not recorded" for what is left out: an answer is there or it is not.
  const fields = answerFields({ schema, answer, path, required: true, called: null }).map((field) => ({
    ...field,
    required: true,
  }));
  return fields.flatMap((field): readonly AnswerField[] => {
    const key = String(field.path.at(-1));
    const label = labels[key] ?? field.label;
    if (key === 'hitter' && golfers.length < 2 && field.typed.length === 0) return [];
    const own = choices[key];
    return own === undefined
      ? [{ ...field, label, help: key === 'shot' ? null : field.help }]
      : [
          {
            ...field,
            label,
            help: null,
            control: 'one-of',
            choices: own.length > 0 ? own : field.typed.map(asChoice),
          },
        ];
  });
}

/** Where the reference speaks of ids and keys. */
const labels: Readonly<Record<string, string>> = {
  contender: 'What was hit',
  hitter: 'Who hit',
  shot: 'Its number, as in the table above',
  metric: 'The measure with a limit, for all alike',
};

/** The schema of a block below `exclusions` that asks for a key. */
function withinExclusions(key: string): z.ZodType | null {
  const inside = takesOf(frontAnswers).inside ?? [];
  const top = inside.find(([step]) => step === '.exclusions')?.[1];
  return top === undefined ? null : blockWith(`.${key}`, top);
}

function blockWith(step: string, schema: z.ZodType): z.ZodType | null {
  const inside = takesOf(schema).inside ?? [];
  if (inside.some(([own]) => own === step)) return schema;
  return inside.reduce<z.ZodType | null>((found, [, of]) => found ?? blockWith(step, of), null);
}
