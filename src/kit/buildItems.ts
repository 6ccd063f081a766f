import type { Sheet, SheetItem } from '../intake/authored/sheet.ts';

type Part = 'head' | 'shaft' | 'grip' | 'ball';

const itemsOf: Readonly<Record<Part, readonly SheetItem[]>> = {
  head: [
    ...(['head', 'model', 'year', 'volume', 'face', 'grooves', 'loft', 'loft_measured', 'lie'] as const),
    ...(['lie_measured', 'face_angle', 'face_angle_measured', 'bounce', 'grind', 'offset'] as const),
    ...(['head_weight', 'settings', 'weights'] as const),
  ],
  shaft: [
    ...(['shaft', 'shaft_model', 'shaft_flex', 'flex', 'shaft_weight', 'shaft_length', 'tip'] as const),
    ...(['length', 'length_measured', 'swing_weight', 'total_weight'] as const),
  ],
  grip: ['grip', 'grip_size'],
  ball: ['ball', 'ball_model', 'ball_state', 'construction', 'cover', 'compression'],
};

/** Lay on the tee or in the hand, and is no part of what was built. */
const conditions: readonly SheetItem[] = ['tee', 'glove', 'notes'];

const partsVaried: readonly (readonly [Part, RegExp])[] = [
  ['ball', /\bballs?\b/i],
  ['grip', /\bgrips?\b/i],
  ['shaft', /\b(?:shafts?|lengths?|flex(?:es)?|tipping)\b/i],
  ['head', /\b(?:heads?|lofts?|lies?|grooves?|bounce|grinds?|faces?|weights?)\b/i],
];

/** What was held the same, parted into what belongs to the kind of thing that a test varied, and what it was hit with. */
interface HeldParts {
  readonly own: Sheet;
  readonly hitWith: Sheet;
}

/** Of a ball its own items alone, of a whole club all but the ball; what lay on the tee is neither. */
export function heldParts(held: Sheet, varied: string): HeldParts {
  const [part] = partsVaried.find(([, words]) => words.test(varied)) ?? [null];
  const isOwn = (item: string): boolean => (part === null ? !isOf('ball', item) : isOf(part, item));
  const { also, ...known } = held;
  const items = Object.entries(known).filter(([item]) => !conditions.some((one) => one === item));
  const rest = also === undefined ? {} : { also };
  return {
    own: { ...Object.fromEntries(items.filter(([item]) => isOwn(item))), ...(part === null ? rest : {}) },
    hitWith: {
      // Balls may differ between tests of one club, and each report says which.
      ...Object.fromEntries(items.filter(([item]) => !isOwn(item) && !isOf('ball', item))),
      ...(part === null ? {} : rest),
    },
  };
}

function isOf(part: Part, item: string): boolean {
  return itemsOf[part].some((one) => one === item);
}
