import { claimStandings } from '../findings/claims.ts';
import type { ClaimStanding } from '../findings/findings.ts';
import type { Claim } from '../intake/authored/claims.ts';
import type { MetricId } from '../trade/metrics.ts';
import { comparisons, otherThings, otherVerbs, type Comparison } from './linterComparisons.ts';
import { escaped, isAboutCompared, named } from './linterNames.ts';
import { pairMeant, readyFor, type ReadySentence } from './readySentence.ts';
import { flightWords, isDenied, isPartial, isSupposed } from './linterWords.ts';
import type { Telling } from './telling.ts';

/** One comparison in prose that no claim of the report bears out. */
export interface UnclaimedComparison {
  readonly word: string;
  readonly at: number;
  /** A claim on the same thing that does not stand; null where there is none at all. */
  readonly claim: ClaimStanding | null;
  /** How it stands where the shots speak against it, as a claim of its own; null where they do not. */
  readonly contradicted: ClaimStanding | null;
  /** What the shots support in its place; null where they hold nothing of it. */
  readonly ready: ReadySentence | null;
}

/** The comparisons of a sentence that need a claim and have none that is borne out. */
export function unclaimedComparisons(sentence: string, telling: Telling): readonly UnclaimedComparison[] {
  return comparisons.flatMap((comparison) =>
    [...sentence.matchAll(comparison.pattern)].flatMap((found): UnclaimedComparison[] => {
      const { index: at } = found;
      const [word] = found;
      if (isDenied(sentence, at) || isSupposed(sentence, at) || isPartial(sentence, at)) return [];
      if (!isAboutShots(sentence, found, comparison, telling)) return [];
      const sides = sidesNamed(sentence, at, word, telling);
      const claims = telling.findings.claims.filter((claim) => fits(claim, comparison, sides));
      if (claims.some(({ standing }) => standing === 'borne-out')) return [];
      return [
        {
          word,
          at,
          claim: claims[0] ?? null,
          contradicted: contradictedBy(comparison, sentence, sides, telling),
          ready: readyOf(comparison, sentence, sides, telling),
        },
      ];
    }),
  );
}

/**
 * What the shots say where a sentence names both contenders and has them the wrong way round; null where they leave
 * it open, or where the word could be about a metric in which the sentence is right.
 */
function contradictedBy(
  { about, towards }: Comparison,
  sentence: string,
  { subject: of, object: than }: Sides,
  telling: Telling,
): ClaimStanding | null {
  if (of === null || than === null || of === than || about === 'anything') return null;
  const say = sentence.trim();
  const [first, second] = towards === 'more' ? [of, than] : [than, of];
  const asClaims: readonly Claim[] =
    about === 'straighter' || about === 'tighter'
      ? [
          {
            say,
            metric: about === 'straighter' ? 'side' : primaryOf(telling),
            direction: about,
            of: first,
            than: second,
            ...noSize,
          },
        ]
      : about.map((metric) => ({ say, metric, direction: towards, of, than, ...noSize }));
  const standings = claimStandings(asClaims, telling.findings);
  return standings.every(({ standing }) => standing === 'contradicted') ? (standings[0] ?? null) : null;
}

const noSize = { byAtLeast: null, allowUnproven: false } as const;

function primaryOf({ findings }: Telling): MetricId {
  return findings.metrics[0]?.id ?? 'carry';
}

/** The word of a claim's sentence that says something else than the claim; null where they agree. */
export function saysSomethingElse(claim: ClaimStanding, telling: Telling): string | null {
  const { say } = claim;
  for (const comparison of comparisons) {
    for (const { index: at, 0: word } of say.matchAll(comparison.pattern)) {
      if (
        isDenied(say, at) ||
        otherThings.test(say.slice(at + word.length)) ||
        otherVerbs.test(say.slice(0, at))
      )
        continue;
      if (!isSameThing(claim, comparison.about) || isOtherWayRound(claim, comparison, at, telling))
        return word;
    }
  }
  return null;
}

function isOtherWayRound(
  claim: ClaimStanding,
  { towards }: Comparison,
  at: number,
  telling: Telling,
): boolean {
  const before = named(claim.say.slice(0, at), telling).map(({ id }) => id);
  const { has, lacks } = sidesOf(claim, towards);
  return before.includes(lacks) && !before.includes(has);
}

/** Who has more, or less, of what is claimed, by the way a word compares. */
function sidesOf(
  { direction, of, than }: ClaimStanding,
  towards: Comparison['towards'],
): { readonly has: string; readonly lacks: string } {
  const up = direction !== 'less';
  return (towards === 'more') === up ? { has: of, lacks: than } : { has: than, lacks: of };
}

/** The pair and metric a sentence seems to be about, as the shots have it. */
function readyOf(
  { about, towards }: Comparison,
  sentence: string,
  { subject, object }: Sides,
  telling: Telling,
): ReadySentence | null {
  const { metrics } = telling.findings;
  const meant =
    typeof about === 'string' ? primaryOf(telling) : about.find((id) => metrics.some((own) => own.id === id));
  const metric = metrics.find(({ id }) => id === meant);
  if (metric === undefined) return null;
  const told = [subject, object].filter((id) => id !== null);
  const names = [...told, ...named(sentence, telling).map(({ id }) => id)];
  const [of, than] = pairMeant(names, metric);
  if (of === undefined || than === undefined) return null;
  if (about !== 'straighter' && about !== 'tighter') {
    const direction = about === 'anything' && metric.better === 'less' ? 'less' : towards;
    return readyFor({ metric: metric.id, direction, of, than }, telling);
  }
  const compared = { metric: about === 'straighter' ? 'side' : metric.id, direction: about } as const;
  return readyFor(
    towards === 'more' ? { ...compared, of, than } : { ...compared, of: than, than: of },
    telling,
  );
}

/** Whether a word that compares is about what the shots did. */
function isAboutShots(
  sentence: string,
  { index: at, 0: word }: RegExpExecArray,
  { beside }: Comparison,
  telling: Telling,
): boolean {
  if (beside === 'nothing') return true;
  const [before, after] = [sentence.slice(0, at), sentence.slice(at + word.length)];
  if (!isAboutCompared(sentence, telling) || otherVerbs.test(before)) return false;
  if (beside === 'what is compared') return true;
  if (otherThings.test(after)) return false;
  const another = isAboutCompared(after, telling) || /\bone\b/i.test(after);
  const thanAnother = isAboutCompared(before, telling) && /^ than\b/i.test(after) && another;
  const ofIt =
    /^ (?:one|of)\b/i.test(after) || new RegExp(`^ ${escaped(telling.noun)}s?\\b`, 'i').test(after);
  const itself = /est$/i.test(word) && /^\s*(?:[.,;:!]|$)/.test(after) && /\bthe $/i.test(before);
  return (
    flightWords.test(sentence) ||
    thanAnother ||
    itself ||
    saidOf(before, after, telling) ||
    (ofIt && isAboutCompared(before, telling))
  );
}

const ending = /^\s*(?:[.!]|$|than (?:any|every|all|most|the (?:others?|rest|field)\b))/i;
const copula =
  /\b(?:is|was|are|were|feels|looks|seems|plays|proved|came out|turned out)(?: (?!not\b)[\w-]+){0,4} $/i;
/** What of a thing may be longer, shorter, higher or lower than of another, and is no shot. */
const ownSize =
  /\b(?:prices?|costs?|weights?|weighs|volume|mass|lofts?|lies?|lengths?|tees?|shafts?|sole|face|grips?|toe|heel|hosel|number|note|sound|stock|queue|name|label)\b/i;

/** "Cedar is shorter.": said of what is compared, with nothing behind it. */
function saidOf(before: string, after: string, telling: Telling): boolean {
  return (
    ending.test(after) && copula.test(before) && !ownSize.test(before) && isAboutCompared(before, telling)
  );
}

/** Whether a claim is about what a comparison says, with the contenders the same way round as far as they are named. */
function fits(claim: ClaimStanding, { about, towards }: Comparison, { subject, object }: Sides): boolean {
  if (!isSameThing(claim, about)) return false;
  const { has, lacks } = sidesOf(claim, towards);
  return (subject === null || subject === has) && (object === null || object === lacks);
}

/** Who is compared with whom, as far as a sentence names them. */
interface Sides {
  readonly subject: string | null;
  readonly object: string | null;
}

/** "Alder ... farther than Birch", and "farther with Alder than with Birch". */
function sidesNamed(sentence: string, at: number, word: string, telling: Telling): Sides {
  const after = sentence.slice(at + word.length);
  const [from, to] = named(after, telling);
  // "Spin dropped from Alder to Birch": Birch is the one with less.
  if (/(?:^|\s)from\s[^.;:]*\sto\s/i.test(after) && from !== undefined && to !== undefined) {
    return { subject: to.id, object: from.id };
  }
  const than = after.search(/\bthan\b/i);
  // "outdrove Birch" and "fell short of Birch" name it without "than".
  const other = than >= 0 ? than : /^out|\b(?:of|over|behind)$/i.test(word) ? 0 : after.length;
  const subject = named(sentence.slice(0, at), telling).at(-1) ?? named(after.slice(0, other), telling)[0];
  const object = named(after.slice(other), telling)[0];
  return { subject: subject?.id ?? null, object: object?.id ?? null };
}

function isSameThing({ direction, metric }: ClaimStanding, about: Comparison['about']): boolean {
  if (about === 'anything') return false;
  if (about === 'straighter' || about === 'tighter') return direction === about;
  return (direction === 'more' || direction === 'less') && about.includes(metric);
}
