import { text } from './answers.ts';
import { recordOf, type Keyed } from './collections.ts';
import { nearest } from './nearest.ts';
import type { Takes } from './takes.ts';
import { asFound, isBlock, isUnanswered } from './tree.ts';
import { readWith, refused, schemaOf, understood, type Schema, type Understood } from './trouble.ts';

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

const isSheetItem = (key: string): key is SheetItem => Object.hasOwn(sheetItems, key);

const sheetItem: Schema<SheetItem> = schemaOf(
  { words: 'an item of a build sheet' },
  (key): Understood<SheetItem> => {
    if (typeof key === 'string' && isSheetItem(key)) return understood(key);
    const near = nearest(String(key), Object.keys(sheetItems));
    return refused({
      kind: 'unknown-key',
      path: [],
      expected:
        near === null ? 'an item of a build sheet, such as head, loft, shaft, length or grip' : `"${near}"`,
      found: asFound(key),
      cure:
        near === null
          ? `Move it under "also:", which takes any key: {also: {${String(key)}: ...}}.`
          : `Did you mean "${near}"?`,
    });
  },
);

const item = text('what stands on the build sheet');
const takes: Takes = {
  words: 'a [build sheet](#build-sheets); or text, its description',
  items: sheetItems,
};
const known = recordOf(sheetItem, item, 'a build sheet: head, loft, shaft, length and the like', takes);
const also = recordOf(text('the name of an item'), item, 'further items, each with its value', takes);

/** A build sheet; words alone are its description. Items without an answer are left out. */
export const sheet: Schema<Sheet> = schemaOf(takes, (answer): Understood<Sheet> => {
  if (typeof answer === 'string' && !isUnanswered(answer)) return understood({ description: answer.trim() });
  if (!isBlock(answer)) return readWith(known, answer);
  const { also: further, ...rest } = answer;
  const items = readWith(known, answered(rest));
  const more = isUnanswered(further) ? understood({}) : readWith(also, further);
  if ('troubles' in items || 'troubles' in more) {
    return refused(
      ...('troubles' in items ? items.troubles : []),
      ...('troubles' in more
        ? more.troubles.map((trouble) => ({ ...trouble, path: ['also', ...trouble.path] }))
        : []),
    );
  }
  return understood(
    Object.keys(more.value).length === 0 ? items.value : { ...items.value, also: more.value },
  );
});

/** Without the known items that have no answer yet; an unknown one is reported, answered or not. */
function answered(items: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    Object.entries(items).filter(([key, value]) => !isUnanswered(value) || !isSheetItem(key)),
  );
}
