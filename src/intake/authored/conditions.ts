import type { z } from 'zod';
import { text, withUnit } from './answers.ts';
import { ball, ballQuestions } from './ball.ts';
import { monitor, monitorQuestions } from './monitor.ts';
import { answersOf, question, type Question, type Questions } from './question.ts';
import { strict } from './strict.ts';

/** A block of questions, itself under one key. */
interface Block extends Pick<Question, 'answer' | 'inDefaults'> {
  readonly inside: Questions<'published' | 'readForPraise'>;
}

/** What is asked of where, with what ball and in front of what the shots were hit. */
const conditionQuestions = {
  place: question(
    text('indoors or outdoors, and where'),
    'Indoors or outdoors, and where, such as indoors, net at 4 m?',
    { inDefaults: true, readForPraise: true, published: { words: 'indoors or outdoors, and where' } },
  ),
  surface: question(text('mat, turf or other ground'), 'Mat, turf or other ground?', {
    inDefaults: true,
    readForPraise: true,
    published: { words: 'mat, turf or other ground' },
  }),
  tee: question(text('tee height or mat'), 'Tee height, or off the mat?', {
    inDefaults: true,
    readForPraise: true,
    published: { words: 'tee height or mat' },
  }),
  ball: { answer: ball.exactOptional(), inside: ballQuestions, inDefaults: true },
  temperature: question(
    withUnit('the temperature', '21 °C'),
    'The temperature with its unit, such as 21 °C?',
    { published: { words: 'temperature with its unit' } },
  ),
  altitude: question(withUnit('the altitude', '120 m'), 'The altitude with its unit, such as 120 m?', {
    inDefaults: true,
    published: { words: 'altitude with its unit' },
  }),
  wind: question(text('the wind, or none'), 'The wind, or none?', { published: { words: 'wind' } }),
  humidity: question(text('the humidity'), 'The humidity?', { published: { words: 'humidity' } }),
  target: question(text('what the hitter aimed at'), 'What did the hitter aim at?', {
    readForPraise: true,
    published: { words: 'what was aimed at' },
  }),
  monitor: { answer: monitor.exactOptional(), inside: monitorQuestions, inDefaults: true },
} as const satisfies Readonly<Record<string, Question | Block>>;

/** Where, with what ball and in front of what the shots were hit. What is absent was not recorded. */
export const conditions = strict(answersOf(conditionQuestions));

export type Conditions = z.infer<typeof conditions>;

type All = typeof conditionQuestions;

type SingleConditions = {
  readonly [Key in keyof All as All[Key] extends Block ? never : Key]: All[Key];
};

/** Those that are no block, in the same order; the type says of each question what the filter looks for in it. */
export const singleConditions = Object.fromEntries(
  Object.entries(conditionQuestions).filter(([, one]) => !('inside' in one)),
) as SingleConditions;

type InDefaults = {
  readonly [Key in keyof All as All[Key] extends { readonly inDefaults: true } ? Key : never]: All[Key];
};

// The type says it as above. Single ones first, then blocks: so they stand in the reference.
const inDefaults = Object.fromEntries(
  Object.entries({ ...singleConditions, ...conditionQuestions }).filter(
    ([, one]: readonly [string, Question | Block]) => one.inDefaults,
  ),
) as InDefaults;

/** How those are answered that `shop.yaml` may answer for all reports. */
export const conditionsInDefaults = answersOf(inDefaults);
