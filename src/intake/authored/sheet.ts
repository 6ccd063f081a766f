import { z } from 'zod';
import { text } from './answers.ts';
import { entriesOf, keyed, type Keyed } from './collections.ts';
import { answersTo } from './strict.ts';
import { telling, type Takes } from './takes.ts';

/** What a build sheet can say, key by key, with the words that a reader sees. */
export const sheetItems = {
  description: 'description',
  head: 'head',
  model: 'model',
  year: 'year',
  volume: 'head volume',
  face: 'face',
  grooves: 'grooves',
  loft: 'stated loft',
  loft_measured: 'measured loft',
  lie: 'stated lie',
  lie_measured: 'measured lie',
  face_angle: 'stated face angle',
  face_angle_measured: 'measured face angle',
  bounce: 'bounce',
  grind: 'grind',
  offset: 'offset',
  head_weight: 'head weight',
  settings: 'adjustable settings',
  weights: 'movable weights',
  shaft: 'shaft',
  shaft_model: 'shaft model',
  shaft_flex: 'shaft flex',
  flex: 'flex',
  shaft_weight: 'shaft weight',
  shaft_length: 'shaft length',
  tip: 'tipping',
  length: 'length',
  length_measured: 'measured length',
  grip: 'grip',
  grip_size: 'grip size',
  swing_weight: 'swing weight',
  total_weight: 'total weight',
  ball: 'ball',
  ball_model: 'ball model',
  ball_state: 'state of the ball',
  construction: 'construction',
  cover: 'cover',
  compression: 'compression',
  condition: 'condition',
  age: 'age',
  rounds_played: 'rounds played',
  specimen: 'specimen',
  conforming: 'on the conforming list',
  conforming_checked: 'conforming list checked on',
  tee: 'tee',
  glove: 'glove',
  notes: 'notes',
} as const;

export type SheetItem = keyof typeof sheetItems;

/** A build sheet: texts as typed under the keys of `sheetItems`, and whatever else the shop names under `also`. */
export type Sheet = Keyed<SheetItem, string> & { readonly also?: Keyed<string, string> };

const item = text('what stands on the build sheet');
const takes: Takes = {
  words: 'a [build sheet](#build-sheets); or text, its description',
  items: sheetItems,
};

const itemsByName = entriesOf({
  structure: z.record(z.string(), item),
  takes,
  expected: 'further items, each with its value',
  key: text('the name of an item'),
  value: () => item,
}).transform((entries) => keyed(entries));

const shape = {
  ...(Object.fromEntries(
    Object.entries(sheetItems).map(([key, words]) => [key, item.describe(words).exactOptional()]),
  ) as Record<SheetItem, z.ZodExactOptional<typeof item>>),
  also: itemsByName.describe('whatever else stands on the sheet').exactOptional(),
};

const items = telling(z.strictObject(shape), {
  sayings: {
    expected: 'a build sheet: head, loft, shaft, length and the like',
    cure: 'Write each as a key, a colon and a value, on indented lines or in { }.',
  },
  unknownKey: (key, near) => ({
    expected:
      near === null ? 'an item of a build sheet, such as head, loft, shaft, length or grip' : `"${near}"`,
    cure:
      near === null
        ? `Move it under "also:", which takes any key: {also: {${key}: ...}}.`
        : `Did you mean "${near}"?`,
  }),
});

/** A build sheet; words alone are its description. Items without an answer are left out. */
export const sheet = telling(
  z.union([
    item.transform((description): Sheet => ({ description })),
    z
      .preprocess(answersTo(shape), items)
      .transform(({ also = {}, ...known }): Sheet =>
        Object.keys(also).length === 0 ? known : { ...known, also },
      ),
  ]),
  { takes },
);
