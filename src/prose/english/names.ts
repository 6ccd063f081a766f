import type { Telling } from '../telling.ts';
import { listed } from '../words.ts';

/** Things of the trade that a label may simply name: such a label is a common noun and takes an article. */
const things = [
  'ball',
  'balls',
  'club',
  'driver',
  'groove',
  'grooves',
  'head',
  'hybrid',
  'iron',
  'length',
  'loft',
  'putter',
  'rescue',
  'shaft',
  'tee',
  'wedge',
  'wood',
];

const kinds = [
  'fairway',
  'fresh',
  'graphite',
  'half-worn',
  'high',
  'long',
  'low',
  'middle',
  'mini',
  'new',
  'old',
  'pitching',
  'practice',
  'premium',
  'range',
  'sand',
  'sharp',
  'short',
  'stock',
  'steel',
  'used',
  'worn',
];

/**
 * Whether a label is a plain word of the trade, "Fairway wood", and not a name, "Heron": all of it lower case, or every
 * word of the trade's and the last of them a thing. Common practice, no source.
 */
function isPlainWord(label: string): boolean {
  const words = label.trim().split(/\s+/);
  if (words.every((word) => word === word.toLowerCase() && /\p{L}/u.test(word))) return true;
  const known = words.map((word) => word.toLowerCase());
  return things.includes(known.at(-1) ?? '') && known.every((word) => [...things, ...kinds].includes(word));
}

/** The label in running text: "the fairway wood", "Heron". */
export function nameInText(label: string, article: boolean | undefined): string {
  if (article ?? isPlainWord(label)) return `the ${isPlainWord(label) ? label.toLowerCase() : label}`;
  return label;
}

/** "Heron", "Heron and the hybrid". */
export function namesOf(ids: readonly string[], telling: Telling, joiner = 'and'): string {
  return listed(
    ids.map((id) => telling.the(id)),
    joiner,
  );
}

/** What was varied, as the cause of a difference: "the head", "the grooves". */
export function causeOf({ noun, nouns }: Telling): string {
  return `the ${noun.startsWith('set of ') ? nouns : noun}`;
}

/** Who hit, at the head of a sentence that stands by itself: "In a test of balls by one golfer, ". */
export function testOf({ findings: { design }, nouns }: Telling, count: (golfers: number) => string): string {
  const { hitters, unit } = design;
  if (hitters === 1) return `In a test of ${nouns} by one golfer, `;
  return unit === 'hitter'
    ? `In a test of ${nouns} by ${count(hitters)} golfers, `
    : `In a test of ${nouns}, on average over ${count(hitters)} golfers, `;
}

/** For whom an answer holds that stands on its page, where several golfers hit; else nothing. */
export function averagedOver({ findings: { design } }: Telling, count: (golfers: number) => string): string {
  if (design.hitters === 1) return '';
  return design.unit === 'hitter'
    ? 'For golfers like these, '
    : `On average over these ${count(design.hitters)} golfers, `;
}
