import type { Front } from '../intake/authored/front.ts';
import { sheetItems, type Sheet, type SheetItem } from '../intake/authored/sheet.ts';

/** One item of the build sheets that is not the same for all, values as typed, a contender each. */
export interface BuildDifference {
  readonly item: string;
  readonly values: readonly { readonly contender: string; readonly value: string }[];
}

/** An item and whether it is known to differ; `partly`: it stands on some sheets only. */
interface ItemCompared extends BuildDifference {
  readonly state: 'differs' | 'partly' | 'alike';
}

/** The build sheets of a report compared field by field, what was meant to differ set aside. */
export interface BuildComparison {
  readonly differing: readonly BuildDifference[];
  /** Items that stand on some sheets and not on others: whether they differ cannot be told. */
  readonly partly: readonly BuildDifference[];
  /** How many items are known to be the same for all. */
  readonly alike: number;
}

/**
 * Items that describe the varied thing itself, by its noun; every other item should be the same for all. Grooves are
 * compared for their wear, which is what the condition tells.
 */
const ownItems: readonly (readonly [noun: RegExp, items: readonly SheetItem[]])[] = [
  [/\bballs?\b/i, ['ball', 'ball_model', 'construction', 'cover', 'compression', 'model']],
  [/\bshafts?\b/i, ['shaft', 'shaft_model', 'shaft_flex', 'flex', 'shaft_weight', 'tip', 'model']],
  [/\blofts?\b/i, ['loft', 'loft_measured', 'settings']],
  [/\blies?\b/i, ['lie', 'lie_measured', 'settings']],
  [/\bgrooves?\b/i, ['grooves', 'condition', 'age', 'rounds_played']],
  [/\bgrips?\b/i, ['grip', 'grip_size']],
  [/\blengths?\b/i, ['length', 'length_measured', 'shaft_length']],
  [/\bweights?\b/i, ['weights', 'head_weight', 'shaft_weight', 'swing_weight', 'total_weight']],
  [/\bsettings?\b/i, ['settings', 'weights']],
  [/\bflex\b/i, ['flex', 'shaft_flex', 'shaft', 'shaft_model']],
];

/** A head, or a whole club, is told by these. */
const headItems: readonly SheetItem[] = [
  'head',
  'model',
  'volume',
  'face',
  'grooves',
  'bounce',
  'grind',
  'offset',
  'head_weight',
  'construction',
];

/** Words about a contender rather than parts of it. */
const noPart: readonly SheetItem[] = ['description', 'year', 'notes', 'conforming', 'conforming_checked'];

/** What else differs between the contenders besides the one thing that was meant to. */
export function buildDifferences({
  varied,
  contenders,
  held,
}: Pick<Front, 'varied' | 'contenders' | 'held'>): BuildComparison {
  const own = ownItems.find(([noun]) => noun.test(varied))?.[1] ?? headItems;
  const aside = new Set([...[...own, ...noPart].map((key) => itemName(sheetItems[key])), varied].map(folded));
  const others = itemsCompared({ contenders, held }).filter(({ item }) => !aside.has(folded(item)));
  const of = (wanted: ItemCompared['state']): readonly BuildDifference[] =>
    others.flatMap(({ item, values, state }) => (state === wanted ? [{ item, values }] : []));
  return { differing: of('differs'), partly: of('partly'), alike: of('alike').length };
}

/** Every item of the build sheets beside one another, what was meant to differ among them; in the order of the sheets. */
export function itemsCompared({
  contenders,
  held,
}: Pick<Front, 'contenders' | 'held'>): readonly ItemCompared[] {
  const sheets = contenders.map(({ id, build = {} }) => ({ id, items: itemsOf(build, held) }));
  const names = [...new Set(sheets.flatMap(({ items }) => [...items.keys()]))];
  return names.map((item) => {
    const values = sheets.flatMap(({ id, items }) => {
      const value = items.get(item);
      return value === undefined ? [] : [{ contender: id, value }];
    });
    const differs = new Set(values.map(({ value }) => folded(value))).size > 1;
    return { item, values, state: differs ? 'differs' : values.length < sheets.length ? 'partly' : 'alike' };
  });
}

/** A contender's items by the name a reader sees; what was held for all holds where its own sheet is silent. */
function itemsOf(build: Sheet, held: Sheet): ReadonlyMap<string, string> {
  return new Map([held, build].flatMap((sheet) => [...knownItems(sheet), ...furtherItems(sheet)]));
}

function furtherItems({ also = {} }: Sheet): [string, string][] {
  return Object.entries(also).flatMap(([item, value]): [string, string][] =>
    value === undefined ? [] : [[item, value]],
  );
}

function knownItems(sheet: Sheet): [string, string][] {
  return sheetKeys.flatMap((key): [string, string][] => {
    const value = sheet[key];
    return value === undefined ? [] : [[itemName(sheetItems[key]), value]];
  });
}

const isSheetItem = (key: string): key is SheetItem => Object.hasOwn(sheetItems, key);
const sheetKeys = Object.keys(sheetItems).filter(isSheetItem);

/** "loft, measured" as "measured loft". */
function itemName(label: string): string {
  return label.replace(/^(.*), (stated|measured)$/, '$2 $1');
}

/** Casing and spaces do not make two values: `45.25in` is `45.25 in`. */
function folded(text: string): string {
  return text.toLowerCase().replace(/\s+/g, '');
}
