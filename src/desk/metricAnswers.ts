import type { z } from 'zod';
import { text } from '../intake/authored/answers.ts';
import { metricNamed } from '../intake/authored/metricName.ts';
import { quantityOf } from '../intake/authored/quantity.ts';
import { meaningOf } from '../intake/authored/takes.ts';
import { isBlock, isUnanswered, type Block, type Path, type Tree } from '../intake/authored/tree.ts';
import { metrics } from '../trade/metrics.ts';
import { answerFields, type AnswerField } from './answerFields.ts';

interface Gaps {
  /** The metrics whose gap is asked, as typed. */
  readonly of: readonly Tree[];
  /** The gaps as they stand. */
  readonly matters: Tree | undefined;
  readonly schema: z.ZodType;
  readonly path: Path;
}

/** The smallest gap that matters is asked of every metric that is named, whether there is a line for it or not. */
export function gapsWithoutLine({ of, matters, schema, path }: Gaps): readonly AnswerField[] {
  if (!isBlock(matters) && !isUnanswered(matters)) return [];
  const lines = isBlock(matters) ? Object.keys(matters).map((typed) => metricNamed(typed) ?? typed) : [];
  return of.flatMap((typed) => {
    const id = typeof typed === 'string' ? metricNamed(typed) : null;
    if (id === null || lines.includes(id)) return [];
    const called = `${meaningOf(schema) ?? ''}: ${metrics[id].name}`;
    return answerFields({
      schema: quantityOf(id),
      answer: undefined,
      path: [...path, id],
      required: false,
      called,
    });
  });
}

/** Which way is better, answered for each metric by itself. */
export const directionsIn = (better: Block, schema: z.ZodType): readonly AnswerField[] =>
  Object.entries(better).flatMap(([key, answer]) => {
    const metric = metricNamed(key);
    const called = `${meaningOf(schema) ?? ''}: ${metric === null ? key : metrics[metric].name}`;
    return typeof answer === 'string'
      ? answerFields({ schema: text(called), answer, path: ['better', key], required: false, called })
      : [];
  });
