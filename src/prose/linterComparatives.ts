import type { ClaimStanding } from '../findings/findings.ts';
import type { MetricId } from '../trade/metrics.ts';
import { flightWords, isDenied, isSupposed } from './linterWords.ts';
import type { Telling } from './telling.ts';

/** How a word compares: what it is about, and whether its subject has more of it or less. */
interface Comparison {
  readonly pattern: RegExp;
  readonly about: readonly MetricId[] | 'straighter' | 'tighter' | 'anything';
  readonly towards: 'more' | 'less';
  /** Counts by itself; other words are common elsewhere and need what is compared and what it does beside them. */
  readonly strong: boolean;
}

const distances: readonly MetricId[] = ['carry', 'total'];
const speeds: readonly MetricId[] = ['ball_speed', 'club_speed', 'smash'];
const spins: readonly MetricId[] = ['spin_rate', 'back_spin', 'side_spin'];
const heights: readonly MetricId[] = [
  'launch_angle',
  'apex',
  'descent_angle',
  'hang_time',
  ...spins,
  'dynamic_loft',
  ...speeds,
];

const comparisons: readonly Comparison[] = [
  { pattern: /\bfarther\b|\bfarthest\b|\blongest\b/gi, about: distances, towards: 'more', strong: true },
  {
    pattern: /\bout(?:drive|drove|driven|carr|distance)\w*/gi,
    about: distances,
    towards: 'more',
    strong: true,
  },
  {
    pattern: /\bmore (?:carry|distance|yards|metres|length)\b/gi,
    about: distances,
    towards: 'more',
    strong: true,
  },
  {
    pattern: /\b(?:less|fewer) (?:carry|distance|yards|metres)\b/gi,
    about: distances,
    towards: 'less',
    strong: true,
  },
  { pattern: /\bmore (?:ball |club )?speed\b/gi, about: speeds, towards: 'more', strong: true },
  { pattern: /\bless (?:ball |club )?speed\b/gi, about: speeds, towards: 'less', strong: true },
  {
    pattern: /\bmore (?:back)?spin\b|\bspins? more\b|\bspun more\b/gi,
    about: spins,
    towards: 'more',
    strong: true,
  },
  {
    pattern: /\bless (?:back)?spin\b|\bspins? less\b|\bspun less\b/gi,
    about: spins,
    towards: 'less',
    strong: true,
  },
  {
    pattern: /\bstraight(?:er|est)\b|\bmore accurate\b|\b(?:nearer|closer) (?:to )?the (?:target )?line\b/gi,
    about: 'straighter',
    towards: 'more',
    strong: true,
  },
  { pattern: /\bless accurate\b|\bmore crooked\b/gi, about: 'straighter', towards: 'less', strong: true },
  {
    pattern:
      /\btight(?:er|est) (?:group|spread|pattern|dispersion|circle)\w*|\bsteadi(?:er|est)\b|\bmore consistent\b/gi,
    about: 'tighter',
    towards: 'more',
    strong: true,
  },
  { pattern: /\bless consistent\b/gi, about: 'tighter', towards: 'less', strong: true },
  {
    pattern: /\btighter\b(?! (?:group|spread|pattern|dispersion|circle))/gi,
    about: 'tighter',
    towards: 'more',
    strong: false,
  },
  {
    pattern:
      /\b(?:gain(?:s|ed)?|add(?:s|ed)?|pick(?:s|ed)? up)\b[^.;:]*\b(?:yards?|metres?|mph|distance|speed)\b/gi,
    about: [...distances, ...speeds],
    towards: 'more',
    strong: false,
  },
  {
    pattern:
      /\b(?:los(?:es|t)|drop(?:s|ped)|g(?:i|a)ve(?:s|n)? (?:up|away))\b[^.;:]*\b(?:yards?|metres?|mph|distance|speed)\b/gi,
    about: [...distances, ...speeds],
    towards: 'less',
    strong: false,
  },
  {
    pattern: /(?<!\b(?:no|any|much) )\blonger\b|\bfurther\b/gi,
    about: distances,
    towards: 'more',
    strong: false,
  },
  { pattern: /\bshorter\b|\bshortest\b/gi, about: distances, towards: 'less', strong: false },
  { pattern: /\b(?:fast|quick|hott)(?:er|est)\b/gi, about: speeds, towards: 'more', strong: false },
  { pattern: /\bslow(?:er|est)\b/gi, about: speeds, towards: 'less', strong: false },
  { pattern: /\bhigh(?:er|est)\b/gi, about: heights, towards: 'more', strong: false },
  { pattern: /\blow(?:er|est)\b|\bflatter\b/gi, about: heights, towards: 'less', strong: false },
  {
    pattern: /\bbetter than\b|\bthe best\b|\bthe better (?:ball|head|shaft|club|driver|iron|wedge|one)\b/gi,
    about: 'anything',
    towards: 'more',
    strong: false,
  },
  { pattern: /\bworse than\b|\bthe worst\b/gi, about: 'anything', towards: 'less', strong: false },
];

/** What these words are about when they are not about shots. */
const otherThings =
  /^(?: than)? (?:session|day|break|warm-?up|test|time|tee|shaft|club|grip|look|list|story|paragraph|section|greens?|fairways?|swingers?|swings?|golfers?|price|prices|handicap|handicaps|number|shelf|temperature|light|weather|(?:we|it|usual|planned|expected|i|they)\b)/i;
const otherVerbs =
  /\b(?:took|takes|take|lasted|last|wait(?:ed)?|stayed?|talked?|read|tees?|teed|priced?|costs?|sells?|sold)\b[^,;:]{0,25}$/i;

/** One comparison in prose that no claim of the report bears out. */
export interface UnclaimedComparison {
  readonly word: string;
  readonly at: number;
  /** A claim on the same thing that does not stand; null where there is none at all. */
  readonly claim: ClaimStanding | null;
  /** What the findings could say in its place. */
  readonly answer: { readonly metric: MetricId; readonly a: string; readonly b: string } | null;
}

/** The comparisons of a sentence that need a claim and have none that is borne out. */
export function unclaimedComparisons(sentence: string, telling: Telling): readonly UnclaimedComparison[] {
  return comparisons.flatMap((comparison) =>
    [...sentence.matchAll(comparison.pattern)].flatMap((found): UnclaimedComparison[] => {
      const { index: at } = found;
      const [word] = found;
      if (isDenied(sentence, at) || isSupposed(sentence, at)) return [];
      if (!comparison.strong && !isAboutShots(sentence, at, word, comparison, telling)) return [];
      const claims = telling.findings.claims.filter((claim) =>
        fits(claim, comparison, sentence, at, telling),
      );
      if (claims.some(({ standing }) => standing === 'borne-out')) return [];
      return [{ word, at, claim: claims[0] ?? null, answer: answerFor(sentence, comparison, telling) }];
    }),
  );
}

/** The pair and metric a sentence seems to be about, as far as the report has them. */
function answerFor(sentence: string, { about }: Comparison, telling: Telling): UnclaimedComparison['answer'] {
  const { metrics, contenders } = telling.findings;
  const wanted: readonly MetricId[] = typeof about === 'string' ? [] : about;
  const metric = metrics.find(({ id }) => wanted.includes(id)) ?? metrics[0];
  const ids = [
    ...new Set([...named(sentence, telling).map(({ id }) => id), ...contenders.map(({ id }) => id)]),
  ];
  const [a, b] = ids;
  return metric === undefined || a === undefined || b === undefined ? null : { metric: metric.id, a, b };
}

function isAboutShots(
  sentence: string,
  at: number,
  word: string,
  { about }: Comparison,
  telling: Telling,
): boolean {
  if (otherThings.test(sentence.slice(at + word.length)) || otherVerbs.test(sentence.slice(0, at)))
    return false;
  const thing = new RegExp(`(?<![\\p{L}\\p{N}])${escaped(telling.noun)}s?(?![\\p{L}\\p{N}])`, 'iu');
  const compared = named(sentence, telling).length > 0 || thing.test(sentence);
  if (about === 'anything')
    return compared && (named(sentence, telling).length > 0 || flightWords.test(sentence));
  return compared && flightWords.test(sentence);
}

interface NamedContender {
  readonly id: string;
  readonly at: number;
}

/** Contenders that a sentence names, by label, short name, id or the first word of the label where that will do. */
function named(sentence: string, telling: Telling): readonly NamedContender[] {
  const { contenders } = telling.findings;
  const firsts = contenders.map(({ label }) => label.split(/\s+/)[0] ?? label);
  return contenders
    .flatMap(({ id, label }, index): NamedContender[] => {
      const first = firsts[index] ?? label;
      const own = firsts.filter((other) => other === first).length === 1 && first.length > 2 ? [first] : [];
      const names = [label, telling.nameOf(id), id, ...own].filter((name) => name.length > 1);
      const pattern = new RegExp(
        `(?<![\\p{L}\\p{N}])(?:${names.map(escaped).join('|')})(?![\\p{L}\\p{N}])`,
        'giu',
      );
      return [...sentence.matchAll(pattern)].map((found) => ({ id, at: found.index }));
    })
    .toSorted((x, y) => x.at - y.at);
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\/-]/g, '\\$&');
}

/** Whether a claim is about what a comparison says, with the contenders the same way round as far as they are named. */
function fits(
  claim: ClaimStanding,
  { about, towards }: Comparison,
  sentence: string,
  at: number,
  telling: Telling,
): boolean {
  if (!isSameThing(claim, about)) return false;
  const subject = named(sentence.slice(0, at), telling).at(-1)?.id ?? null;
  const object = named(sentence.slice(at), telling)[0]?.id ?? null;
  const up = claim.direction !== 'less';
  const [has, lacks] = (towards === 'more') === up ? [claim.of, claim.than] : [claim.than, claim.of];
  return (subject === null || subject === has) && (object === null || object === lacks);
}

function isSameThing({ direction, metric }: ClaimStanding, about: Comparison['about']): boolean {
  if (about === 'anything') return false;
  if (about === 'straighter' || about === 'tighter') return direction === about;
  return (direction === 'more' || direction === 'less') && about.includes(metric);
}
