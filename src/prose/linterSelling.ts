import type { CarefulWord } from './carefulWord.ts';

/** One pattern of several, in any casing. */
const anyOf = (...patterns: readonly string[]): RegExp => new RegExp(patterns.join('|'), 'iu');

const audience =
  '(?:(?:high|low|mid|middling|better|good|average|weak(?:er)?|strong(?:er)?|slow(?:er)?|fast(?:er)?|older|senior|new|young(?:er)?|weekend|club|every|any|most|all|many) )?(?:beginners?|handicappers?|seniors?|juniors?|ladies|swingers?|golfers?|players?|hitters?|amateurs?|improvers?)';

/** What a sentence that names what is compared asks its reader to do. */
const asked = anyOf(
  String.raw`(?<![\p{L}\p{N}] )(?<=^\s*(?:so |then |simply |just |why not |do not wait,? |please )?)(?:get|choose|pick|try|put|swap|take|book|treat|switch|reserve|do (?:yourself|your)|hit(?= (?:an?|your|it)\b)|ask(?= (?:us )?for))\b(?! (?:the one |whichever |whatever |what |your time|care|heart|part|one of|a look|it slowly|into account|back\b|of\b|was\b|is\b|sheets?\b|in\b|simply|plainly|another|together|as we\b|note\b|that ))`,
);

/** What a sentence asks its reader to do, or says that he should want. */
const advised = anyOf(
  String.raw`(?<![\p{L}\p{N}] )(?<=^\s*(?:so |then |simply |just |why not |do not wait,? |please )?)(?:buy|order|grab|trade|upgrade|go for|come and (?:try|hit|see|feel))\b(?! (?:the one |whichever |whatever |what |your time|care|heart|part|one of|a look|it slowly|into account|back\b|of\b|was\b|is\b|sheets?\b|in\b|simply|plainly|another|together|as we\b|note\b|that ))`,
  String.raw`\b(?:we|i)(?:['’]d| would| can| strongly| warmly| highly)* (?:recommend|suggest|advise|favou?r|prefer|choose)\b(?! (?:hitting|trying|reading|looking|asking|waiting|that you (?:hit|try|read|ask)|to (?:hit|try|read|wait)))`,
  String.raw`\brecommended (?:to|for) (?:all|every|any)`,
  String.raw`\b(?:you|golfers?|players?|swingers?|beginners?|seniors?|everyone|everybody|anyone|customers?) (?:really )?(?:should|must|ought to|need to|have to) (?:\w+ )?(?:try|buy|choose|get|have|own|hit|play|consider|switch|pick|look at)\b`,
  String.raw`\bowe it to (?:your|him|her|them)`,
  String.raw`\b(?:do not|don['’]t) (?:miss|wait|hesitate|overlook)\b`,
  String.raw`\b(?:is|are|be) the (?:\w+ )?(?:one|head|shaft|ball|club|driver|iron|wedge|choice|pick|option) for (?:you|your|any|every|a|all|most)\b`,
  String.raw`\b(?:safe|safest|right|obvious|best|natural|clear|easy|first|smart|wise) (?:choice|pick|option|buy|bet)\b`,
  String.raw`\bmoney well spent\b`,
  String.raw`\bgood value\b`,
  String.raw`\bregret (?:buying|it)\b`,
  String.raw`\bin your bag\b`,
);

const praised = anyOf(
  String.raw`\b(?:top|best|star|strong(?:est)?|standout|number[- ]one|no\. ?1) (?:performer|performers|performance|of the (?:day|test|pack|bunch|show))\b`,
  String.raw`\b(?:is|was|are|were|remains?) (?:our|the|a|an)? ?(?:clear |real |true |absolute |genuine |proper )*(?:number one|favou?rite|star|standout|revelation|sensation|rocket|cannon|beast|weapon|gem|bargain|joy|delight|eye-?opener|dream|masterpiece|leader|front-?runner|benchmark|champion|class act|must)\b`,
  String.raw`\b(?:clearly|well|far|miles|streets|way|comfortably) (?:ahead|in front|clear)\b`,
  String.raw`\blike a (?:dream|rocket|bullet|cannon|missile|train|charm)\b`,
  String.raw`\bpack\b(?<=\b(?:lead|leads|led|ahead of|head of|top of|pick of) the pack)`,
  String.raw`\b(?:leads?|led|tops?|topped|heads(?= the)) (?:the )?(?:others|rest|field|list|table|way|test|class|lot|bunch)\b`,
  String.raw`\b(?:trails?|trailed|lags?|lagged|chases?) (?:behind )?(?:the )?(?:others|rest|field|lot|bunch|pack)\b`,
  String.raw`\b(?:hard|difficult|tough|impossible) to (?:beat|fault|better|top|match|ignore|argue)\b`,
  String.raw`\binto retirement\b`,
  String.raw`\b(?:explosive|electric|sensational|stunning|superb|outstanding|incredible|amazing|awesome|fantastic|brilliant|phenomenal|effortless|magical|unreal|terrific|blistering|insane|monstrous|mighty|unmatched|unstoppable|world[- ]class|top[- ]class|tour[- ]proven|hot|hotter|hottest)(?:ly)?\b(?! (?:day|days|afternoon|weather|spell|tea|drink|water|week|summer|sun|glue|air|and (?:dry|humid)))`,
  String.raw`\bdreams? of\b`,
  String.raw`\b(?:numbers|figures|data|results|shots|facts) (?:all )?(?:favou?r|back|are on the side of|point to|say it all|do not lie|don['’]t lie|are clear|make the case)\b`,
  String.raw`\b(?:difference|gap|result|answer|verdict|case|message|choice) (?:is|was|could not be|couldn['’]t be) (?:\w+ )?(?:obvious|plain|clear|clearer|huge|enormous|massive|striking|night and day|unmistakable)\b`,
);

const given = anyOf(
  String.raw`\b(?:gives?|gets?|adds?|hands?|buys?|earns?|brings?|saves?|saved|gave|bought|spares?|costs?) (?:you|us|him|her|them|your \w+|golfers?|players?) (?:\w+ ){0,3}(?:shots?|strokes?|yards?|metres?|speed|distance|carry|confidence|control|spin|pounds?|forgiveness)\b`,
  String.raw`\b(?:lower|bring|brings|take|takes|cut|cuts|drop|drops|shave|shaves) (?:down )?your (?:scores?|handicap)\b`,
  String.raw`\byour (?:scores?|handicap)\b[^.;:]{0,20}\b(?:down|lower|drop|fall)\b`,
  String.raw`\bmakes? (?:the|this|your|golf|any) ?(?:game|golf|swing|round|life)? ?(?:much |so much |a lot )?(?:easier|simpler|better|more fun)\b`,
);

const suiting = anyOf(
  String.raw`\b(?:perfect|ideal|great|excellent|made|designed|built|suited|just right|good|best|right|recommended) for (?:a |an |the )?${audience}\b`,
  String.raw`\b(?:suits?|flatters?|helps?|rewards?|favou?rs|benefits?) (?:a |an |the )?${audience}\b(?! who hit)`,
  String.raw`\b${audience} (?:will|would|are going to|should|can) (?:\w+ )?(?:love|like|benefit|gain|enjoy|prefer|appreciate|get more|hit it|pick up|do better|improve|score)\b`,
  String.raw`\b${audience} (?:love|loves|benefit|gain|gains|enjoy|enjoys|swear by|rave about)\b`,
  String.raw`\b(?:seniors|beginners|juniors|ladies)\b[^.;:]{0,40}\b(?:gain|love|enjoy|benefit|easy|easier)\b`,
);

const eased = anyOf(
  String.raw`\b(?:easy|easier|easiest|simple|simpler|effortless) to (?:launch|hit|get (?:up|airborne)|swing|square|control|elevate|play|strike|time|aim)\b`,
  String.raw`\b(?:more|most|very|so|really|extremely|incredibly) (?:stable|playable|workable|user-friendly|responsive)\b`,
  String.raw`\b(?:off[- ]cent(?:re|er)|mis-?hits?|toe|heel|thin|fat)[ -]?(?:hits?|strikes?|shots?)?\b[^.;:]{0,30}\b(?:lose|loses|lost|cost|costs|keep|keeps|hold|holds|fly|flies|go|goes) (?:almost |hardly |next to |just as |any |nothing|no |little|less|their|the same|far)`,
);

const placed = anyOf(
  String.raw`\b(?:keeps?|kept|stays?|stayed|holds?|held) (?:it |the ball |them |\w+ )?(?:in play|in the fairway|on (?:the )?(?:line|fairway|target)|out of (?:trouble|the rough|the trees)|straight|the middle)\b`,
  String.raw`\b(?:finds?|hits?) (?:more |every |the )?fairways?\b`,
);

const health = anyOf(
  String.raw`\b(?:ha(?:s|d|ving)|with|nurs(?:es|ed|ing)|suffer(?:s|ed|ing)? from|after|recover(?:s|ed|ing)? from) (?:a |an |his |her |their |some )?(?:bad|sore|stiff|weak|injured|broken|new|artificial|painful|troublesome|dodgy) (?:\w+ )?(?:back|knees?|hips?|shoulders?|elbows?|wrists?|necks?|heart|legs?|hands?|fingers?|eyes?|ankles?|foot|feet)\b`,
  String.raw`\b(?:arthritis|surgery|operated on|slipped disc|heart attack|stroke patient|diabet\w+|cancer|pregnan\w+|disab(?:led|ility)|back pain|his injury|her injury)\b`,
);

type Given = 'kind' | 'pattern' | 'expected' | 'cure';

/** Most may be denied, and count wherever they stand. */
const word = (own: Pick<CarefulWord, Given> & Partial<CarefulWord>): CarefulWord => ({
  mayBeDenied: true,
  counts: 'anywhere',
  ...own,
});

const notTested = (what: string): string => `Leave it out, or say that ${what} was not part of the test.`;

/** Words of somebody who sells: advice, praise, effects promised, and whom or what a thing is said to be good for. */
export const sellingWords: readonly CarefulWord[] = [
  word({
    kind: 'advice-given',
    pattern: advised,
    expected:
      'what the shots show, and no advice what to buy or to choose: the shots cannot tell what suits a reader',
    cure: 'Leave the choice to the reader.',
  }),
  word({
    kind: 'advice-given',
    pattern: asked,
    expected:
      'what the shots show, and no advice what to buy or to choose: the shots cannot tell what suits a reader',
    cure: 'Leave the choice to the reader.',
    counts: 'of what is compared',
  }),
  word({
    kind: 'contest-word',
    pattern: praised,
    expected: 'plain words for what was measured, without praise',
    cure: 'Say in what, and by how much.',
  }),
  word({
    kind: 'promise-made',
    pattern: given,
    expected:
      'what this golfer saw; here a gain in distance, control or score is promised to whoever reads it',
    cure: 'Say what happened in the test. Another golfer may differ.',
  }),
  word({
    kind: 'outcome-unmeasured',
    pattern: suiting,
    expected: 'what the shots can show: they tell of the golfers who hit, and not whom it suits',
    cure: 'Leave it out, or say who hit; the page prints the club speed of each golfer.',
  }),
  word({
    kind: 'outcome-unmeasured',
    pattern: eased,
    expected: 'what the shots can show',
    cure: notTested('how easy it is to hit'),
  }),
  word({
    kind: 'outcome-unmeasured',
    pattern: placed,
    expected: 'what the shots can show',
    cure: notTested('where a ball ends up on a course'),
  }),
  word({
    kind: 'personal-data',
    pattern: health,
    expected: 'nothing of the health of anybody: that is for the golfer alone to tell',
    cure: 'Take it out; where it bears on the shots, say only what the golfer agreed to.',
    mayBeDenied: false,
  }),
];
