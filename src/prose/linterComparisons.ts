import type { MetricId } from '../trade/metrics.ts';

/** How a word compares: what it is about, and whether its subject has more of it or less. */
export interface Comparison {
  readonly pattern: RegExp;
  readonly about: readonly MetricId[] | 'straighter' | 'tighter' | 'anything';
  readonly towards: 'more' | 'less';
  /**
   * What must stand beside the word: nothing; a contender or what was varied; or, for words that are common
   * elsewhere, also what shots do, or whom it is compared with.
   */
  readonly beside: 'nothing' | 'what is compared' | 'what shots do';
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

const subjects: readonly (readonly [words: string, about: readonly MetricId[]])[] = [
  ['spin(?: rate)?', spins],
  ['(?:carry|distance)', distances],
  ['(?:ball |club )?speed', speeds],
];
const down = 'dropped|drops|fell|falls|decreased|decreases|sank|sinks';
const up = 'rose|rises|grew|grows|climbed|climbs|increased|increases';

/** A measure that changes "from A to B": B, named last, has more or less of it. */
const changes: readonly Comparison[] = subjects.flatMap(([words, about]) =>
  (
    [
      [down, 'less'],
      [up, 'more'],
    ] as const
  ).map(([verbs, towards]) => ({
    pattern: new RegExp(`\\b${words} (?:${verbs})\\b(?=[^.;:]*\\bfrom\\b[^.;:]*\\bto\\b)`, 'gi'),
    about,
    towards,
    beside: 'what is compared' as const,
  })),
);

const moreOf =
  'boost(?:s|ed)?|increas(?:es|ed)|rais(?:es|ed)|lift(?:s|ed)|improv(?:es|ed)|enhanc(?:es|ed)|maximi[sz](?:es|ed)|lengthen(?:s|ed)';
const lessOf =
  'cuts?|slash(?:es|ed)?|reduc(?:es|ed)|lower(?:s|ed)|kills?|killed|knock(?:s|ed) (?:down|off)|decreas(?:es|ed)|trim(?:s|med)';
const gone =
  'jump(?:s|ed)|shot up|shoots up|soar(?:s|ed)|leap(?:s|t|ed)|surg(?:es|ed)|went up|goes up|rose|rises';
const lost = 'plunge[sd]|plummet(?:s|ed)|went down|goes down|drop(?:s|ped)|fell|falls';
const effect = (pattern: RegExp, about: Comparison['about'], towards: Comparison['towards']): Comparison => ({
  pattern,
  about,
  towards,
  beside: 'what is compared',
});

/** A measure said to be changed by what is compared: "reduced spin", "ball speed jumped". */
const effects: readonly Comparison[] = [
  ...[...subjects, ['(?:launch|height|apex)', heights] as const].flatMap(([words, about]) => {
    const behind = `(?= (?:\\w+ ){0,3}${words}\\b)`;
    return [
      effect(new RegExp(`\\b(?:${moreOf})\\b${behind}`, 'gi'), about, 'more'),
      effect(new RegExp(`\\b(?:${lessOf})\\b${behind}`, 'gi'), about, 'less'),
      effect(new RegExp(`\\b${words} (?:${gone})\\b(?! [^.;:]*\\bfrom\\b)`, 'gi'), about, 'more'),
      effect(new RegExp(`\\b${words} (?:${lost})\\b(?! [^.;:]*\\bfrom\\b)`, 'gi'), about, 'less'),
    ];
  }),
  effect(
    /\b(?:tighten|narrow)(?:s|ed)\b|\b(?:shrinks?|shrank|reduc(?:es|ed)|cuts?) (?:\w+ ){0,2}(?:dispersion|spread|pattern|group\w*)\b|\bimprov(?:es|ed) (?:\w+ ){0,2}consistency\b/gi,
    'tighter',
    'more',
  ),
  effect(
    /\bimprov(?:es|ed) (?:\w+ ){0,2}(?:accuracy|direction)\b|\bstraighten(?:s|ed) (?:\w+ ){0,2}(?:shots?|drives?|flight|ball)\b/gi,
    'straighter',
    'more',
  ),
  effect(/\blos(?:es|t|ing) (?:\w+ ){0,3}(?:ground|out)\b/gi, distances, 'less'),
];

/** A length on the ground, as it is said: "eight yards", "a club and a half". */
const stretch =
  '\\b(?:\\d[\\d.,]*|an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty)(?: (?:good|full|whole))? (?:yards?|metres?|clubs?(?: and a half)?)';

/** The words that compare. */
export const comparisons: readonly Comparison[] = [
  ...changes,
  ...effects,
  {
    pattern:
      /\bfarther\b(?! (?:right|left)\b)|\bfarthest\b(?! (?:right|left)\b)|\blongest (?:ball|head|shaft|club|driver|iron|wedge|one|of)\b/gi,
    about: distances,
    towards: 'more',
    beside: 'nothing',
  },
  {
    pattern: /\bout(?:drive|drove|driven|carr|distance)\w*/gi,
    about: distances,
    towards: 'more',
    beside: 'nothing',
  },
  {
    pattern:
      /\b(?:flew|carried|went|flies|carries|goes|hit it|sailed|landed|finished)(?: [\w.,-]+){0,4} (?:past|beyond|ahead of|clear of)\b/gi,
    about: distances,
    towards: 'more',
    beside: 'what is compared',
  },
  {
    pattern: /\bmore (?:carry|distance|yards|metres|length)\b/gi,
    about: distances,
    towards: 'more',
    beside: 'nothing',
  },
  {
    pattern: /\b(?:less|fewer) (?:carry|distance|yards|metres)\b/gi,
    about: distances,
    towards: 'less',
    beside: 'nothing',
  },
  { pattern: /\bmore (?:ball |club )?speed\b/gi, about: speeds, towards: 'more', beside: 'nothing' },
  { pattern: /\bless (?:ball |club )?speed\b/gi, about: speeds, towards: 'less', beside: 'nothing' },
  {
    pattern: /\bmore (?:back)?spin\b(?! (?:loft|to the)\b)|\bspins? more\b|\bspun more\b/gi,
    about: spins,
    towards: 'more',
    beside: 'nothing',
  },
  {
    pattern: /\bless (?:back)?spin\b(?! (?:loft|to the)\b)|\bspins? less\b|\bspun less\b/gi,
    about: spins,
    towards: 'less',
    beside: 'nothing',
  },
  {
    pattern: /\bstraight(?:er|est)\b|\bmore accurate\b|\b(?:nearer|closer) (?:to )?the (?:target )?line\b/gi,
    about: 'straighter',
    towards: 'more',
    beside: 'nothing',
  },
  {
    pattern: /\bless accurate\b|\bmore crooked\b/gi,
    about: 'straighter',
    towards: 'less',
    beside: 'nothing',
  },
  {
    pattern:
      /\btight(?:er|est) (?:group|spread|pattern|dispersion|circle)\w*|\bsteadi(?:er|est)\b|\bmore consistent\b/gi,
    about: 'tighter',
    towards: 'more',
    beside: 'nothing',
  },
  { pattern: /\bless consistent\b/gi, about: 'tighter', towards: 'less', beside: 'nothing' },
  {
    pattern: /\btighter\b(?! (?:group|spread|pattern|dispersion|circle))/gi,
    about: 'tighter',
    towards: 'more',
    beside: 'what shots do',
  },
  {
    pattern:
      /\b(?:gain(?:s|ed)?|add(?:s|ed)?|pick(?:s|ed)? up)\b[^.;:]*\b(?:yards?|metres?|mph|distance|speed)\b/gi,
    about: [...distances, ...speeds],
    towards: 'more',
    beside: 'what is compared',
  },
  {
    pattern:
      /\b(?:los(?:es|t)|drop(?:s|ped)|g(?:i|a)ve(?:s|n)? (?:up|away))\b[^.;:]*\b(?:yards?|metres?|mph|distance|speed)\b/gi,
    about: [...distances, ...speeds],
    towards: 'less',
    beside: 'what is compared',
  },
  {
    pattern:
      /(?<!\b(?:no|any|much) )(?<!\bin the air\b.{0,30})\blonger\b|\bfurther\b|\blongest\b(?! (?:ball|head|shaft|club|driver|iron|wedge|one|of)\b)/gi,
    about: distances,
    towards: 'more',
    beside: 'what shots do',
  },
  {
    pattern: new RegExp(
      `${stretch} (?:up on|up|clear of|clear|ahead of|ahead|better|to the good|extra|over|in hand|on(?= (?!average\\b)\\w+(?:[.,;]|$)))\\b`,
      'gi',
    ),
    about: distances,
    towards: 'more',
    beside: 'what is compared',
  },
  {
    pattern: new RegExp(
      `${stretch} (?:behind|adrift|back|down on|down|short of|short|worse)\\b|\\b(?:los(?:es|t)|g(?:i|a)ves? (?:up|away)) (?:half )?(?:a|one|two|three) (?:full )?clubs?\\b`,
      'gi',
    ),
    about: distances,
    towards: 'less',
    beside: 'what is compared',
  },
  {
    pattern:
      /\b(?:half )?(?:an?|one|two|three|\d) (?:full |whole )?clubs? (?:more|longer|farther|further|extra)\b/gi,
    about: distances,
    towards: 'more',
    beside: 'what is compared',
  },
  {
    pattern: /\b(?:fell|falls|fall) short of\b|\blag(?:s|ged)? behind\b/gi,
    about: distances,
    towards: 'less',
    beside: 'what is compared',
  },
  { pattern: /\bshorter\b|\bshortest\b/gi, about: distances, towards: 'less', beside: 'what shots do' },
  { pattern: /\b(?:fast|quick|hott)(?:er|est)\b/gi, about: speeds, towards: 'more', beside: 'what shots do' },
  { pattern: /\bslow(?:er|est)\b/gi, about: speeds, towards: 'less', beside: 'what shots do' },
  {
    pattern: /\bhigh(?:er|est)\b(?! on the face\b)/gi,
    about: heights,
    towards: 'more',
    beside: 'what shots do',
  },
  {
    pattern: /\blow(?:er|est)\b(?! on the face\b)|\bflatter\b/gi,
    about: heights,
    towards: 'less',
    beside: 'what shots do',
  },
  {
    pattern:
      /\bbetter than\b|\bthe best\b|\bthe better (?:ball|head|shaft|club|driver|iron|wedge|one)\b|\b(?:edge|improvement|advantage) over\b/gi,
    about: 'anything',
    towards: 'more',
    beside: 'what is compared',
  },
  {
    pattern: /\bworse than\b|\bthe worst\b/gi,
    about: 'anything',
    towards: 'less',
    beside: 'what is compared',
  },
];

/** What these words are about when they are not about shots. */
export const otherThings =
  /^(?: than)? (?:session|day|break|warm-?up|test|time|tee|shaft|club|grip|look|list|story|paragraph|section|greens?|fairways?|swingers?|swings?|golfers?|price|prices|handicap|handicaps|number|shelf|temperature|light|weather|(?:we|it|usual|planned|expected|i|they)\b)/i;
/** Verbs before a word that make it one of time, price or tee. */
export const otherVerbs =
  /\b(?:took|takes|take|lasted|last|wait(?:ed)?|stayed?|talked?|read|tees?|teed|priced?|costs?|sells?|sold)\b[^,;:]{0,25}$/i;
