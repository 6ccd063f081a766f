import type { CarefulWord } from './carefulWord.ts';
import { praisingWords } from './linterPraise.ts';
import { sellingWords } from './linterSelling.ts';

const absolute = (pattern: RegExp, counts: CarefulWord['counts']): CarefulWord => ({
  kind: 'absolute-word',
  pattern,
  expected: 'words that leave room for doubt, as any test of some shots does',
  cure: 'Say what these shots showed: "in this test", "for this golfer".',
  mayBeDenied: true,
  counts,
});

const promise = (pattern: RegExp): CarefulWord => ({
  kind: 'promise-made',
  pattern,
  expected: 'what this golfer saw, not what a reader will see',
  cure: 'Say what happened in the test: "this golfer carried it ...". Another golfer may differ.',
  mayBeDenied: false,
  counts: 'anywhere',
});

const contest = (pattern: RegExp, counts: CarefulWord['counts']): CarefulWord => ({
  kind: 'contest-word',
  pattern,
  expected: 'plain words for a comparison',
  cure: 'Say in what, and by how much.',
  mayBeDenied: false,
  counts,
});

/** Something that no monitor measures, as a message names it. */
export interface Outcome {
  readonly name: string;
  readonly was: 'was' | 'were';
}

const outcomes: readonly (Outcome & { readonly pattern: RegExp })[] = [
  { name: 'scores', was: 'were', pattern: /\bscor(?:es?|ing|ed)\b(?![ -]?(?:lines?|cards?))/i },
  {
    name: 'strokes',
    was: 'were',
    pattern:
      /\bstrokes?[ -](?:gained|saved|better|fewer)\b|\b(?:save|saves|saved|fewer|lower) (?:\w+ )?strokes?\b/i,
  },
  {
    name: 'handicaps',
    was: 'were',
    pattern:
      /\b(?:lower|lowers|lowered|cut|cuts|bring down|reduces?) (?:your|his|her|their|the|any) handicaps?\b/i,
  },
  { name: 'forgiveness', was: 'was', pattern: /\b(?:un)?forgiv(?:e|es|en|ing|eness)\b/i },
  {
    name: 'durability',
    was: 'was',
    pattern: /\bdurab(?:le|ly|ility)\b|\blasts? longer\b|\bwears? (?:better|longer|well|out)\b/i,
  },
  {
    name: 'how shots stop',
    was: 'was',
    pattern:
      /(?<!\b(?:we|he|she|they|session|test) )\bstop(?:s|ped)? (?:quicker|faster|sooner)\b|\bholds? (?:the |a )?greens?\b/i,
  },
  {
    name: 'distance to a pin',
    was: 'was',
    pattern: /\b(?:nearer|closer) (?:to )?the (?:pin|flag|hole|cup)\b/i,
  },
  {
    name: 'how shots fly in wind',
    was: 'was',
    pattern:
      /\b(?:holds?|keeps?) (?:its|their) line (?:\w+ )?in (?:the |a )?(?:\w+ )?wind\b|\bcuts? through the wind\b/i,
  },
  { name: 'putting', was: 'was', pattern: /\b(?:fewer|more|less) putts\b/i },
  { name: 'hitting fairways or greens', was: 'was', pattern: /\b(?:more|fewer) (?:fairways|greens)\b/i },
];

/** What a text speaks of that was never measured; null where it speaks of none. */
export function unmeasuredOutcome(text: string): Outcome | null {
  return outcomes.find(({ pattern }) => pattern.test(text)) ?? null;
}

const outcomeWords = outcomes.map(({ name, was, pattern }): CarefulWord => ({
  kind: 'outcome-unmeasured',
  pattern,
  expected: 'what the shots can show',
  cure: `Leave it out, or say that ${name} ${was} not part of the test.`,
  mayBeDenied: true,
  counts: 'anywhere',
}));

const independence: CarefulWord = {
  kind: 'independence-claimed',
  pattern:
    /\bunbiased\b|\bimpartial(?:ly)?\b|\bindependent(?:ly)?\b(?! of\b)|(?<!\b(?:our|main|its) )\bobjective(?:ly)?\b(?! (?:of|was|is)\b)|\bno bias\b/i,
  expected: 'no word for independence from a shop that sells, borrows or is paid for what it tests',
  cure: 'Take the word out: the report prints the interest itself.',
  mayBeDenied: true,
  counts: 'anywhere',
};

/** All words to be careful with; those on independence only where the shop has an interest. */
export function carefulWords({ interest }: { readonly interest: boolean }): readonly CarefulWord[] {
  return [...alwaysCareful, ...(interest ? [independence] : [])];
}

const afterWill =
  '(?!(?:also |still |now |often )?(?:see|find|read|notice|need|want|have|not|know|recogni[sz]e)\\b)';

const alwaysCareful: readonly CarefulWord[] = [
  absolute(
    /(?<!-(?:year|month|day) )\bguarantee[sd]?\b(?! (?:on|for) (?:the|its|all|each|every) (?:shafts?|heads?|clubs?|balls?|grips?)\b)|\bprov(?:e|es|ed|en)\b(?! (?:nothing|little)\b)|\bproof\b|\bundeniabl[ey]\b|\bundoubtedly\b|\bwithout (?:a |any )?doubt\b|\bbeyond (?:any |all )?doubt\b|\bdefinite(?:ly)?\b|\bhands down\b|\bby far\b|\bflawless\b|\bcertainly\b|\bsignificant(?:ly)?\b/i,
    'anywhere',
  ),
  {
    ...absolute(
      /\bno (?:doubt|question) (?:that|about|which)\b|\bthere is no (?:doubt|question)\b/i,
      'anywhere',
    ),
    mayBeDenied: false,
  },
  absolute(
    /\balways\b|\bnever\b|\bevery (?:time|golfer|player)\b|\ball (?:golfers|players)\b|\bany (?:golfer|player)\b|\bevery(?:one|body)\b|\bany(?:one|body)\b/i,
    'of shots',
  ),
  promise(new RegExp(`\\byou(?:['’]ll| will| are going to|['’]re going to) ${afterWill}\\w+`, 'i')),
  promise(/\byour (?:\w+ )?(?:drives?|shots?|game|scores?|handicap|carry|distance|ball) will\b/i),
  promise(
    /\b(?:will|going to) (?:gain|give you|help you|improve your|lower your|fix your|change your|transform)\b|\b(?:corrects|fixes|cures|straightens) (?:your|a|any|the) (?:slice|hook|swing)\b/i,
  ),
  promise(
    /\b(?:take|knock|shave)s? (?:\w+ ){0,2}strokes? off\b|\byou(?: will|['’]ll)? (?:hit|carry|drive) it (?:past|farther|further|longer|straighter)\b|\byou (?:cannot|can['’]t) go wrong\b|\byour (?:slice|hook) will\b|\bexpect (?:\w+ ){0,2}(?:extra|more)\b|\bno(?:body| golfer| one| player) will be disappointed\b/i,
  ),
  { ...promise(/\b(?:you can|can) expect to gain\b|\bpromises? you\b/i), mayBeDenied: true },
  contest(
    /\bcrush(?:es|ed|ing)?\b|\bbomb(?:s|ed|er)?\b|\bdominat(?:e|es|ed|ing)\b|\boutperform(?:s|ed)?\b|\bbl[oe]w[sn]? \w+ away\b|\bking of\b|\bto shame\b|\btrounc(?:e|es|ed)\b|\bin the dust\b|\bgame[- ]chang(?:er|ing)\b|\bmust[- ]have\b|\b(?:our|top) pick\b|\bno[- ]brainer\b|\bworth (?:every (?:penny|cent|pound|dollar|euro)|the (?:extra )?(?:money|price))\b|\btime (?:for|to) (?:an? )?upgrade\b|(?<!\bin the )\b(?:first|second|third|last) place\b/i,
    'anywhere',
  ),
  contest(
    /\b(?:leaves?|left) [\w ]{1,30} for dead\b|\bwip(?:es?|ed) the floor\b|\b(?:class|league) of (?:its|their) own\b|\b(?:nothing|nobody|none|no (?:other )?\w+) (?:comes?|came|gets?|got) close\b|\bthe (?:one|only one|only choice) to (?:buy|have|beat|get|choose|own)\b|\bonly one choice\b|\bsecond to none\b|\bunbeat(?:en|able)\b|\bunrival+ed\b|\bin the shade\b|\ba must for\b|\b(?:comes?|came) out on top\b|\bgold standard\b|\bspeaks? for (?:itself|themselves)\b/i,
    'anywhere',
  ),
  { ...contest(/\bwinners?\b|\blosers?\b/i, 'anywhere'), mayBeDenied: true },
  contest(
    /\bbeat(?:s|en|ing)?\b|\bwins?\b|\bwon\b(?!['’]t)|\bdestroy(?:s|ed)?\b|\bchampions?\b|\bmonster\b|\bupgrades?\b|\bknock(?:s|ed)? \w+ out\b|\brocket(?:s|ed)?\b|\b(?:goes|went|flies|flew) miles\b|\bsteps? up from\b|\bedg(?:es|ed)\b(?= (?!of\b)\w+)/i,
    'of what is compared',
  ),
  ...outcomeWords,
  ...sellingWords,
  ...praisingWords,
];

/** Words that no name is to carry into every answer and caption. What a maker calls its heads is no fault of a shop. */
export const namingWords: readonly CarefulWord[] = [
  ...alwaysCareful.filter(({ kind }) => kind === 'absolute-word' || kind === 'promise-made'),
  {
    kind: 'contest-word',
    pattern:
      /\bbest\b(?![- ](?:fit|fitting|sell(?:er|ing)|before)\b)|\b(?:finest|greatest|farthest|furthest|straightest)\b|\bthe (?:longest|fastest)\b|\bmost (?:accurate|consistent|forgiving|reliable|powerful)\b|\bunbeat(?:en|able)\b|\bunrival+ed\b|\bwinners?\b|\blosers?\b|\boutperform(?:s|ed)?\b|\bmust[- ]have\b|\bgame[- ]chang(?:er|ing)\b/i,
    expected: 'a name that says what it is, and not how good: it stands in every answer',
    cure: 'Take the praise out of the name; what the shots support is said by the answers themselves.',
    mayBeDenied: true,
    counts: 'anywhere',
  },
];

/** Words that turn what follows into something not said. */
const denial =
  /\b(?:not|no|neither|nor|never|cannot|without|hardly|nothing|nobody|none|whether|if)\b|n['’]t\b/i;

/** Words for what was only expected, felt or thought possible. */
const supposed =
  /\b(?:(?:we|he|she|they|i) expect|expect(?:ed|s)|hop(?:e|ed|ing)|want(?:ed|s)?|wonder(?:ed)?|ask(?:ed|s)?|thought|think|felt|feels?|believed?|may|might|could|would|should|claim(?:s|ed)?|said to|meant to)\b/i;

/** Whether the clause before a word denies it, or the sentence only asks. */
export function isDenied(sentence: string, at: number): boolean {
  return (
    sentence.trimEnd().endsWith('?') ||
    unanswered.test(sentence) ||
    denial.test(clauseBefore(sentence, at).replace(condition, ''))
  );
}

/** "Which head flies higher we cannot say." */
const unanswered =
  /^\s*(?:which|whether|how|what|who)\b.*\b(?:do|did|can|could)(?: not|n['’]t|not) (?:know|say|tell|test|measure|see)\b/is;
/** "If you like distance, ...": what follows is said all the same. */
const condition = /^\s*if\b[^,]*,/i;

/** Whether the clause before a word says that it was only supposed. */
export function isSupposed(sentence: string, at: number): boolean {
  return supposed.test(clauseBefore(sentence, at));
}

/** Words for some shots or rounds only, which say nothing of the averages. */
const partial =
  /\b(?:once|twice|sometimes|now and then|at times|occasionally)\b|\b(?:on|in) (?:one|two|three|four|five|six|some|a few|several|\d+) (?:of|turns?|rounds?|spells?|shots?|swings?)\b|\b(?:first|last|one|single|best|worst|longest|shortest) (?:turn|round|spell|shot|swing)\b|\b(?:best|worst) with\b/i;
const inCaseOf = /\b(?:where|when|whenever)\b/i;

/** Whether a sentence is about some of the shots only. */
export function isPartial(sentence: string, at: number): boolean {
  return partial.test(sentence) || inCaseOf.test(clauseBefore(sentence, at));
}

function clauseBefore(sentence: string, at: number): string {
  return (
    sentence
      .slice(0, at)
      .split(/[;:]|,? but\b|, (?:and|while|yet)\b/i)
      .at(-1) ?? ''
  );
}

/** Verbs of what a ball or club does, and nouns of what is measured. */
export const flightWords =
  /\bcarr(?:y|ies|ied|ying)\b|\bwent\b|\bgo(?:es)?\b|\bfl(?:y|ies|ew|own|ying)\b|\bflights?\b|\blaunch(?:es|ed|ing)?\b|\bland(?:s|ed|ing)?\b|\broll(?:s|ed)?\b|\bsp(?:i|u)n(?:s|ning)?\b|\bc[ao]mes? off\b|\bstart(?:s|ed)? (?:left|right|higher|lower)\b|\bfinish(?:es|ed)?\b|\btravel(?:s|led|ed)?\b|\bcurv(?:e|es|ed)\b|\bdistance\b|\bball speed\b|\bclub speed\b|\boff the face\b|\bdispersion\b|\bspread\b|\bgroup(?:ing|s)?\b|\bpattern\b|\bscatter\b|\bapex\b|\btrajectory\b|\bhit(?:s)? (?:it|the ball) \w+er\b|\bdrives?\b/i;
