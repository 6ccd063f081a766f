import type { PartId } from '../../flight/attributionPlan.ts';
import { modelPrinting } from '../unjudgedPrinting.ts';
import { printDifference, printLimits, type Printing } from '../printSteps.ts';
import { withUnit } from '../readerUnits.ts';
import { printingFor, type Telling } from '../telling.ts';
import { variesBall } from '../variesBall.ts';
import { capitalised, listed } from '../words.ts';
import type { YardsPart, YardsSplit } from '../yardsSplit.ts';
import { limitWithUnit, limitWords, oneSidedRange } from './ranges.ts';

/** Two names, as they stand in running text. */
type Names = readonly [first: string, second: string];

const partNames: Readonly<Record<PartId, string>> = {
  'ball-speed': 'ball speed',
  'club-speed': 'club speed',
  smash: 'smash factor (ball speed for the club speed)',
  'launch-angle': 'launch angle',
  'spin-rate': 'spin',
  direction: 'direction',
};

/** The part's name in running text; in a test of balls the speed off the face is the ball's. */
export function partName(id: PartId, telling: Pick<Telling, 'noun'>): string {
  return id === 'smash' && variesBall(telling) ? 'ball speed for the same swing' : partNames[id];
}

/** The same without what explains it. */
export function partNameInBrief(id: PartId, telling: Pick<Telling, 'noun'>): string {
  return id === 'smash' && !variesBall(telling) ? 'smash factor' : partName(id, telling);
}

/** What a part comes from, where it has a size. */
function causeWords(id: PartId | null, telling: Telling): string {
  switch (id) {
    case null:
      return 'what the model does not explain';
    case 'smash':
      return variesBall(telling)
        ? 'more ball speed for the same swing'
        : 'more ball speed for the club speed';
    case 'ball-speed':
    case 'club-speed':
      return `more ${partNames[id]}`;
    case 'launch-angle':
    case 'spin-rate':
    case 'direction':
      return `its ${partNames[id]}`;
  }
}

function printingHere(telling: Telling): Printing {
  return modelPrinting(printingFor('carry', telling));
}

/** What a part is worth: "about 11 yards for Heron, likely 9 to 13", "too little or too uncertain to name: anything from ...". */
export function sayPart({ told, value, range }: YardsPart, [first, second]: Names, telling: Telling): string {
  const printing = printingHere(telling);
  const [low, high] = range;
  const ahead = low >= 0 || (high > 0 && value >= 0);
  const own = ahead ? { estimate: value, ci: range } : { estimate: -value, ci: [-high, -low] as const };
  const side = ahead ? first : second;
  if (told) {
    const size = withUnit(printDifference(value, printing), printing.unit);
    return `about ${size} for ${side}, likely ${oneSidedRange(own, printing, false)}`;
  }
  const { lower, upper } = printLimits(own.ci, printing);
  const apart =
    own.ci[0] >= 0
      ? `${oneSidedRange(own, printing, true)} for ${side}`
      : `anything from ${limitWithUnit(upper, printing)} for ${side} to ${limitWords(lower)} for ${ahead ? second : first}`;
  return `too little or too uncertain to name: ${apart}`;
}

/**
 * "By the model, about 11 of Heron's 12 yards come from more ball speed for the same swing. The rest is too uncertain to
 * split." Counted towards the one ahead, who is named first.
 */
export function sayYards(
  { parts, gap, ahead, behind }: YardsSplit,
  calculatedBy: 'monitor' | 'flight-model' | null,
  telling: Telling,
): string {
  const how =
    calculatedBy === null
      ? ''
      : `The carry was calculated by ${calculatedBy === 'monitor' ? 'the monitor itself' : 'our flight model'}, so this only shows how a flight model splits it. `;
  const told = parts.filter((part) => part.told);
  if (told.length === 0) return `${how}The difference is too small to split reliably.`;
  const printing = printingHere(telling);
  const print = (si: number): string => printDifference(si, printing);
  const within = (part: YardsPart): boolean =>
    part.value > 0 && Number(print(part.value)) <= Number(print(gap));
  const shares = told.filter(within);
  const [first, ...others] = shares;
  const sentences = [
    ...(first === undefined
      ? []
      : [
          `By the model, ${listed([
            `about ${print(first.value)} of ${possessive(ahead)} ${withUnit(print(gap), printing.unit)} ${print(first.value) === '1' ? 'comes' : 'come'} from ${causeWords(first.id, telling)}`,
            ...others.map((part) => `about ${print(part.value)} from ${causeWords(part.id, telling)}`),
          ])}.`,
        ]),
    ...told
      .filter((part) => !within(part))
      .map((part) => {
        const [more, less] = part.value > 0 ? [ahead, behind] : [behind, ahead];
        const name = part.id === null ? 'what it does not explain' : partName(part.id, telling);
        const alone = `${name} alone would put ${more} about ${withUnit(print(part.value), printing.unit)} ahead of ${less}.`;
        return first === undefined ? `By the model, ${alone}` : capitalised(alone);
      }),
  ];
  const rest = told.length === parts.length ? '' : ' The rest is too uncertain to split.';
  return `${how}${sentences.join(' ')}${rest}`;
}

function possessive(name: string): string {
  return name.endsWith('s') ? `${name}'` : `${name}'s`;
}
