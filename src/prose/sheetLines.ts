import { capitalised } from './words.ts';
import type { Contender, contenderQuestions } from '../intake/authored/contender.ts';
import { sheetItems, type Sheet, type SheetItem } from '../intake/authored/sheet.ts';
import type { Source } from '../intake/authored/source.ts';
import { dateInWords } from './date.ts';
import type { DisclosureLine } from './disclosureGroup.ts';

/** What every build sheet is asked for (common practice, no source). */
const askedOfEach: readonly SheetItem[] = [
  'loft',
  'loft_measured',
  'shaft',
  'length',
  'lie',
  'swing_weight',
  'total_weight',
  'settings',
  'grip',
];

const isSheetItem = (key: string): key is SheetItem => Object.hasOwn(sheetItems, key);

function sheetLines(sheet: Sheet): readonly DisclosureLine[] {
  const known = Object.entries(sheet).flatMap(([key, value]) =>
    isSheetItem(key) && typeof value === 'string' ? [[capitalised(sheetItems[key]), value] as const] : [],
  );
  const further = Object.entries(sheet.also ?? {}).map(([key, value]) => [capitalised(key), value] as const);
  return [...known, ...further];
}

/**
 * What was held for all, and what nobody wrote down. Nobody asks a ball for its lie: that is asked once, of what was
 * held, and neither where every contender's own sheet answers it nor of what differed.
 */
export function heldLines({ held, contenders, varied }: Source['front']): readonly DisclosureLine[] {
  const missing = askedOfEach.filter(
    (key) =>
      held[key] === undefined &&
      !isVaried(key, varied) &&
      !contenders.every(({ build }) => build?.[key] !== undefined),
  );
  return [...sheetLines(held), ...missing.map((key) => [capitalised(sheetItems[key]), null] as const)];
}

/** Of "shaft length" the length differs and no shaft, of "loft setting" both loft and setting. */
function isVaried(item: SheetItem, varied: string): boolean {
  const [thing = varied] = varied.toLowerCase().split(/ (?:of|with|in) /);
  const words = thing.split(/\W+/).map((word) => word.replace(/s$/, ''));
  const [asked = item] = item
    .replace(/s$/, '')
    .replace(/_measured$/, '')
    .split('_');
  return asked === 'shaft' || asked === 'grip' ? words.at(-1) === asked : words.includes(asked);
}

/** A contender with its own build sheet, and who gains by it. */
export function contenderLines(contender: Contender, locale: string): readonly DisclosureLine[] {
  const { build = {}, price } = contender;
  const sheet = sheetLines(build);
  const answers = {
    build: [
      ...(sheet.length === 0 ? [['Build sheet', null] as const] : sheet),
      ...(build.condition === undefined ? [['Condition', null] as const] : []),
      ...(build.specimen === undefined ? [['Specimen', null] as const] : []),
    ],
    supplied_by: [['Supplied by', contender.suppliedBy.words]],
    sold_here: [['Sold here', contender.soldHere]],
    price: [
      [
        'Price',
        price === undefined ? null : `${price.amount} ${price.currency} on ${dateInWords(price.on, locale)}`,
      ],
    ],
    // Names, by which it is called everywhere, and what finds and words them.
    label: [],
    short: [],
    article: [],
    match: [],
  } satisfies Readonly<Record<keyof typeof contenderQuestions, readonly DisclosureLine[]>>;
  return Object.values<readonly DisclosureLine[]>(answers).flat();
}
