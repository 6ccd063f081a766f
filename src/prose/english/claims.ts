import { tooLittle } from './answerWords.ts';
import type { ClaimStanding, StandingId } from '../../findings/findings.ts';
import { fewestForSpread } from '../../findings/thresholds.ts';
import { metrics } from '../../trade/metrics.ts';
import type { ClaimStatement, HoldingBack, Spread } from '../claims.ts';
import { formatNumber } from '../numbers.ts';
import { printLimits, printSize, type Printing } from '../printSteps.ts';
import { toReader, unitFor, withUnit } from '../readerUnits.ts';
import { printingFor, type Telling } from '../telling.ts';
import { unjudgedPrinting } from '../unjudgedPrinting.ts';
import { capitalised, countWord, sentence } from '../words.ts';
import { sayClause } from './pairInWords.ts';
import { comparisonOf } from './comparisons.ts';
import { sayExplored } from './explored.ts';
import { causeOf } from './names.ts';
import { limitWords, oneSidedRange } from './ranges.ts';
import { nearerClause } from './straighter.ts';

const standingWords: Readonly<Record<StandingId, string>> = {
  'borne-out': 'Supported',
  'weaker-than-said': 'Overstated',
  'not-shown': 'Not shown',
  contradicted: 'Contradicted',
};

/** "Overstated."; what is supported without having been planned says so, and among how many others it was seen. */
function sayStanding({ claim: { standing, planned }, explored }: ClaimStatement): string {
  return standing === 'borne-out' && !planned ? sayExplored(explored) : `${standingWords[standing]}.`;
}

/** The claimed size in the reader's units: "Judged as at least 10 yards."; empty where none is claimed. */
function sayClaimedSize({ claim }: ClaimStatement, telling: Telling): string {
  return claim.byAtLeast === 0 ? '' : `Judged as at least ${claimedSize(claim, telling)}.`;
}

/** What is claimed of which two, SI; a size of 0 is none. */
type ClaimedGap = Pick<ClaimStanding, 'metric' | 'direction' | 'of' | 'than' | 'byAtLeast'>;

/** A claimed size with its unit. */
export function claimedSize(
  { byAtLeast, metric }: Pick<ClaimStanding, 'byAtLeast' | 'metric'>,
  telling: Telling,
): string {
  const unit = unitFor(metric, telling.system);
  const value = toReader(byAtLeast, metric, telling.system);
  const finest = metrics[metric].dimension === 'ratio' ? 3 : 2;
  const exact = [0, 1, 2, 3].find((places) => Math.abs(value - Number(value.toFixed(places))) < 0.0005);
  const decimals = Math.min(exact ?? finest, finest);
  return withUnit(formatNumber(value, decimals), unit);
}

/** What the shots support, in a sentence of its own. */
export function saySupport(statement: ClaimStatement, telling: Telling): string {
  const { support } = statement;
  const clause = supportClause(statement, telling);
  const supported = support.kind === 'claimed-way' && support.heldBack.length === 0;
  return sentence(supported ? `The shots support this: ${clause}` : clause);
}

/** What the shots support, as a clause without its full stop: "Alder carried 7 to 17 yards farther than Cedar". */
export function supportClause({ claim, support }: ClaimStatement, telling: Telling): string {
  const [of, than] = [telling.the(claim.of), telling.the(claim.than)];
  const name = metrics[claim.metric].name;
  switch (support.kind) {
    case 'claimed-way': {
      const { verb, sized } = comparisonOf(claim.metric);
      const way = claim.direction === 'less' ? 'less' : 'more';
      const range = oneSidedRange(support.difference, printingFor(claim.metric, telling), true);
      const small = support.small ? `, ${tooLittle}` : '';
      const [held] = support.heldBack;
      const but = held === undefined ? '' : `, but ${heldBackWords(held, telling)}`;
      return `${of} ${verb} ${sized[way].replace('about {n}', range)} than ${than}${small}${but}`;
    }
    case 'answer':
      return sayClause(support.answer, telling);
    case 'straighter':
      return nearerClause(support.nearer, telling);
    case 'straighter-unsure':
      if (!support.judged) return `accuracy was not judged for ${of} and ${than}`;
      return support.open
        ? `the order of the shots could make or hide a difference in accuracy between ${of} and ${than}`
        : `there is no clear difference in accuracy between ${of} and ${than}`;
    case 'steadier': {
      const printing = printingFor(claim.metric, telling);
      const { steadier, other } = support;
      const but = support.open ? ', but the order of the shots could explain it' : '';
      return `${telling.the(steadier.of)} was more consistent in ${name} than ${telling.the(other.of)}, with a standard deviation of ${spreadWords(steadier, printing)} against ${spreadWords(other, printing)}${but}`;
    }
    case 'spread-unsure':
      return `there is no clear difference in consistency of ${name} between ${of} and ${than}`;
    case 'spread-not-judged': {
      const unjudged = `consistency of ${name} with ${of} and ${than} was not judged`;
      switch (support.because) {
        case 'several-golfers':
          return `${unjudged}, which takes a test by one golfer`;
        case 'too-few-shots':
          return `${unjudged}: that takes ${fewestForSpread} shots each, and one has ${countWord(support.fewest)}`;
        case 'no-spread':
          return unjudged;
      }
    }
    case 'nothing':
      return `${name} with ${of} and ${than} was not measured`;
  }
}

/** "1.5 yards (likely 1 to 2.5)". */
function spreadWords({ sd, ci }: Spread, printing: Printing): string {
  const size = withUnit(printSize(sd, printing), printing.unit);
  if (ci === null) return size;
  const { lower, upper } = printLimits(ci, unjudgedPrinting(printing));
  const from = lower.kind === 'almost-nothing' ? 'under ' : `${limitWords(lower)} to `;
  return `${size} (likely ${from}${limitWords(upper)})`;
}

function heldBackWords(overlay: HoldingBack, telling: Telling): string {
  switch (overlay) {
    case 'mixed-with-swing':
      return `the swing differed too, so we cannot say that it was ${causeOf(telling)}`;
    case 'depends-on-left-out':
      return 'the answer depends on the shots left out';
    case 'rests-on-one-shot':
      return 'one stray shot decides it';
    case 'near-device':
      return "the difference may be no larger than the monitor's own error";
    case 'uneven-readings':
      return 'readings are missing more often for one than for the other';
  }
}

/** What a claim says, in our words: "Alder carried farther than Cedar", "Alder carried at least 7 yards farther than Cedar". */
export function sayClaim({ metric, direction, of, than, byAtLeast }: ClaimedGap, telling: Telling): string {
  const [first, second] = [capitalised(telling.the(of)), telling.the(than)];
  const size = byAtLeast === 0 ? '' : `at least ${claimedSize({ metric, byAtLeast }, telling)}`;
  switch (direction) {
    case 'straighter':
      return `${first} finished ${size === '' ? '' : `${size} `}nearer the line than ${second}`;
    case 'tighter':
      return `${first} was more consistent in ${metrics[metric].name} than ${second}`;
    case 'more':
    case 'less': {
      const words = comparisonOf(metric);
      const by = size === '' ? words[direction] : words.sized[direction].replace('about {n}', size);
      return `${first} ${words.verb} ${by} than ${second}`;
    }
  }
}

/** A claim as the page prints it. */
export interface ClaimLine {
  /** What was said, as a sentence. */
  readonly said: string;
  readonly restated: string;
  readonly standing: string;
  readonly supports: string;
}

/** A claim in all its sentences. */
export function tellClaim(statement: ClaimStatement, telling: Telling): ClaimLine {
  return {
    said: sentence(statement.claim.say),
    restated: sayClaimedSize(statement, telling),
    standing: sayStanding(statement),
    supports: saySupport(statement, telling),
  };
}
