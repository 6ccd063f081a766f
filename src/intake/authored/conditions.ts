import type { z } from 'zod';
import { text, withUnit } from './answers.ts';
import { ball, ballQuestions } from './ball.ts';
import { monitor, monitorQuestions } from './monitor.ts';
import { answersOf, type Question, type Questions } from './question.ts';
import { strict } from './strict.ts';

/** Whether `shop.yaml` may answer it under `defaults`, for every report that does not say otherwise. */
interface ForAllReports {
  readonly inDefaults: boolean;
}

/** A block of questions, itself under one key. */
interface Block extends ForAllReports {
  readonly answer: z.ZodType;
  readonly inside: Questions;
}

/** What is asked of where, with what ball and in front of what the shots were hit. */
const conditionQuestions = {
  place: {
    answer: text('indoors or outdoors, and where').exactOptional(),
    drafted: 'Indoors or outdoors, and where, such as indoors, net at 4 m?',
    inDefaults: true,
    readForPraise: true,
    published: { words: 'indoors or outdoors, and where' },
  },
  surface: {
    answer: text('mat, turf or other ground').exactOptional(),
    drafted: 'Mat, turf or other ground?',
    inDefaults: true,
    readForPraise: true,
    published: { words: 'mat, turf or other ground' },
  },
  tee: {
    answer: text('tee height or mat').exactOptional(),
    drafted: 'Tee height, or off the mat?',
    inDefaults: true,
    readForPraise: true,
    published: { words: 'tee height or mat' },
  },
  ball: { answer: ball.exactOptional(), inside: ballQuestions, inDefaults: true },
  temperature: {
    answer: withUnit('the temperature', '21 °C').exactOptional(),
    drafted: 'The temperature with its unit, such as 21 °C?',
    inDefaults: false,
    readForPraise: false,
    published: { words: 'temperature with its unit' },
  },
  altitude: {
    answer: withUnit('the altitude', '120 m').exactOptional(),
    drafted: 'The altitude with its unit, such as 120 m?',
    inDefaults: true,
    readForPraise: false,
    published: { words: 'altitude with its unit' },
  },
  wind: {
    answer: text('the wind, or none').exactOptional(),
    drafted: 'The wind, or none?',
    inDefaults: false,
    readForPraise: false,
    published: { words: 'wind' },
  },
  humidity: {
    answer: text('the humidity').exactOptional(),
    drafted: 'The humidity?',
    inDefaults: false,
    readForPraise: false,
    published: { words: 'humidity' },
  },
  target: {
    answer: text('what the hitter aimed at').exactOptional(),
    drafted: 'What did the hitter aim at?',
    inDefaults: false,
    readForPraise: true,
    published: { words: 'what was aimed at' },
  },
  monitor: { answer: monitor.exactOptional(), inside: monitorQuestions, inDefaults: true },
} as const satisfies Readonly<Record<string, (Question & ForAllReports) | Block>>;

/** Where, with what ball and in front of what the shots were hit. What is absent was not recorded. */
export const conditions = strict(answersOf(conditionQuestions));

export type Conditions = z.infer<typeof conditions>;

type All = typeof conditionQuestions;

type SingleConditions = {
  readonly [Key in keyof All as All[Key] extends Question ? Key : never]: All[Key];
};

/** Those that are no block, in the same order; the type says of each question what the filter looks for in it. */
export const singleConditions = Object.fromEntries(
  Object.entries(conditionQuestions).filter(([, question]) => !('inside' in question)),
) as SingleConditions;

type InDefaults = {
  readonly [Key in keyof All as All[Key] extends { readonly inDefaults: true } ? Key : never]: All[Key];
};

// The type says it as above. Single ones first, then blocks: so they stand in the reference.
const inDefaults = Object.fromEntries(
  Object.entries({ ...singleConditions, ...conditionQuestions }).filter(
    ([, question]) => question.inDefaults,
  ),
) as InDefaults;

/** How those are answered that `shop.yaml` may answer for all reports. */
export const conditionsInDefaults = answersOf(inDefaults);
