import type { CarefulWord } from './carefulWord.ts';

/** One pattern of several, in any casing. */
const anyOf = (...patterns: readonly string[]): RegExp => new RegExp(patterns.join('|'), 'iu');

const things =
  '(?:drivers?|woods?|hybrids?|irons?|wedges?|putters?|clubs?|heads?|shafts?|balls?|grips?|sets?|bag)';
const poor = '(?:bad|poor|weak|lazy|sloppy|worst|off[- ]cent(?:re|er)|thin|fat|tired|every)';
const strokes = '(?:swings?|strikes?|shots?|contact|miss(?:es)?|mis-?hits?|days?)';
const crowd =
  '(?:customers?|every(?:one|body)|people|golfers|players|members|regulars|staff|the (?:whole )?(?:shop|team|bay)|all of us)';

/** Words that praise wherever they are said of what is compared, and are plain of anything else. */
const admiring = anyOf(
  String.raw`\b(?:joy|delight|pleasure|thrill|treat|magic|beauty|all-rounder)\b`,
  String.raw`\b(?:exceptional|excellent(?! condition)|superior|supreme|lovely|wonderful|remarkable|impressive|gorgeous|powerful|irresistible|addictive|great(?! (?:deal|many|care)))\b`,
  String.raw`\b(?:impress(?:es|ed)|shin(?:es|ing)|shone|excel(?:s|led)|deserv(?:es|ed)|stands? out|stood out|delivers|performs|pays? for (?:itself|themselves))\b`,
  String.raw`\bbelongs? (?:in|on)\b`,
  String.raw`\b(?:has|have|had|with|holds?|takes?|took|gets?|got|keeps?) (?:the|a|an|its) (?:\w+ )?(?:edge|upper hand|nod|lead|crown|whip hand)\b`,
  String.raw`\b(?:steals?|stole) (?:the|every) \w+`,
  String.raw`\b(?:sets?|raises?|raised) (?:a|an|the) (?:\w+ )?(?:standard|benchmark|bar|pace|level)\b`,
  String.raw`\b(?:ticks?|ticked) (?:every|all|the right) (?:the )?(?:right )?box(?:es)?\b`,
  String.raw`\b(?:pick|best|cream|class|star) of the (?:two|three|four|five|six|bunch|lot|crop|test|heads?|field|range)\b`,
  String.raw`\b(?:head and shoulders|a cut|a class|streets?|a step|leagues?) (?:above|ahead|better|up)\b`,
  String.raw`\b(?:the|our) (?:one|head|shaft|ball|club) to (?:beat|watch|want)\b`,
  String.raw`\b(?:runs?|ran|pulls?|pulled|streaks?|races?|raced) (?:away|clear|ahead)\b`,
  String.raw`\b(?:got|gets|getting) it (?:so |just |exactly )?right\b|\bnail(?:s|ed) it\b|\bhits? the (?:mark|jackpot)\b`,
  String.raw`\btour[- ](?:level|grade|quality|player|like|worthy|ready)\b`,
  String.raw`\b(?:blown|blew|blows) (?:us )?away\b|\bfell in love\b|\bswears? by\b|\bhooked on\b`,
  String.raw`\b(?:beautiful|superb|brilliant|wonderful|effortless|perfect|flawless)(?:ly)?\b(?! (?:day|weather|view|still|dry))`,
  String.raw`\bserious (?:piece|bit)\b|\bnothing to chance\b|\bmockery of\b|\b(?:does|did) what it says\b`,
  String.raw`\beverything (?:that )?(?:a|an|you|we|one|any) (?:\w+ )?(?:should|could|wants?|needs?|asks?)\b`,
  String.raw`\bin a different (?:league|class|world|postcode|galaxy|category)\b`,
  String.raw`\b(?:go|goes|went|fly|flies|flew|hits?) like (?:an? |the |no )?(?!(?:the )?(?:others?|rest)\b)\w+`,
  String.raw`\b(?:gets?|got|has|have) (?:my|our|his|her) vote\b|\bmoney is on\b|\byou(?:['’]re| are) (?:sold|hooked)\b`,
  String.raw`\b(?:looks?|looked|shows?|showed) its age\b|\bpast its best\b|\byesterday['’]s\b`,
  String.raw`\btour (?:players?|pros?|professionals|winners?) (?:\w+ )?(?:use|play|trust|choose|bag|love)\b`,
  String.raw`\b(?:any|every|all) (?:standards?|abilit(?:y|ies)|levels?)\b`,
  String.raw`\bwhen it (?:counts|matters)\b|\bunder pressure\b`,
  String.raw`\b${crowd}\b[^.;:]{0,30}\b(?:loved?|fell for|falls? for|come back for|keeps? (?:asking|coming)|raved?|walks? out with|took (?:it )?home)\b`,
);

/** The same where the sentence denies something in order to say it. */
const denying = anyOf(
  String.raw`\b(?:nobody|no[ -]one|never|not|nothing)\b[^.;:]{0,40}\b(?:goes|go|going|went|looks?|looked|looking) back\b`,
  String.raw`\b(?:does not|doesn['’]t|do not|don['’]t|cannot|can['’]t|will not|won['’]t) (?:get (?:any |much )?better|disappoint|let you down)\b`,
  String.raw`\b(?:cannot|can['’]t|could not|couldn['’]t) (?:even )?(?:keep (?:up|pace)|live with|compete|get near|hold a candle)\b`,
  String.raw`\bno (?:match for|contest|rivals?|equals?)\b|\b(?:is|was) not even close\b`,
  String.raw`\bthe (?:others|rest|other (?:two|three|four|five)) (?:\w+ )?(?:feels?|felt|looks?|looked|seems?|seemed|sounds?|sounded) (?:dead|dull|old|tired|slow|short|lifeless|dated|ordinary|clumsy|harsh|cheap)\b`,
  String.raw`\byou(?:['’]ll| will| would|['’]d)? (?:not|never|struggle to|be hard pressed to) (?:find|do|get|hit|see)\b[^.;:]{0,40}\b(?:better|finer|like it|longer|at this price|anything|another)\b`,
);

/** What a reader is asked or told to do, in other words than "buy". */
const urging = anyOf(
  String.raw`\byour (?:next|new|future|last) ${things} (?:is|should be|will be|could be|has arrived)\b`,
  String.raw`\blook no further\b|\b(?:say|said) goodbye to\b`,
  String.raw`\b(?:it is|it['’]s|high) time (?:to|for|you) (?:retire|replace|change|switch|swap|part with|let|a new|moved?)\b|\bretire (?:your|that|the old)\b`,
  String.raw`\bwhatever your (?:handicap|swing|speed|level|age|game|ability)\b|\bno matter (?:your|how (?:fast|slow|well|badly) you|who you)\b`,
  String.raw`\bif you (?:(?:only|just) (?:buy|try|hit|own|get|want)|(?:buy|try|hit|own|get|want) (?:only|just)) one\b`,
  String.raw`\b(?:be quick|hurry (?:in|up|while|before)|act now|while (?:stocks?|they|it) lasts?|(?:selling|going) fast|before (?:they|it)(?:['’]re| are| is)? (?:all )?(?:gone|sold)|limited (?:stock|offer|time))\b|\bstocks? (?:will not|won['’]t|cannot|can['’]t) last\b`,
);

/** Gains that are promised without the word. */
const promising = anyOf(
  String.raw`\b(?:turns?|turned|transforms?|transformed|converts?|makes?) (?:\w+ ){0,2}${poor}? ?${strokes} (?:in)?to (?:\w+ ){0,2}(?:good|great|fairways?|greens?|long|straight|drives?)\b|\bmis-?hits? into\b`,
  String.raw`\btakes? (?:all )?(?:the |your )?(?:\w+ )?(?:guess-?work|worry|fear|stress|sting|slice|hook|big miss|effort|work) (?:out|away)\b`,
  String.raw`\b(?:brings?|gives?|gets?|wins?|finds?) back (?:\w+ ){0,3}(?:yards|metres|distance|speed|confidence|youth)\b`,
  String.raw`\b(?:without|with (?:no|little|less)) (?:any |extra |more |the )?(?:effort|asking|trying|swinging harder)\b`,
  String.raw`\badds? (?:an?|half a|one|two) (?:full )?clubs? to your\b`,
  String.raw`\bswing (?:easier|smoother|slower) and\b`,
);

/** What no shot of a bay tells: how a bad swing fares, how a golfer feels. */
const untold = anyOf(
  String.raw`\b(?:rescu(?:es|ed)|sav(?:es|ed)|forgives|flatters?|flattered|hid(?:es)?|masks?|covers? up|helps? with|punish(?:es|ed)|cures?) (?:\w+ ){0,2}${poor} ${strokes}\b`,
  String.raw`\bgets? (?:the ball|it) (?:up|airborne|in the air)\b`,
  String.raw`\b(?:hitting|finding|splitting) (?:the |more )?(?:fairways?|greens?)\b|\b(?:fairways?|greens?|tee shots?) (?:\w+ )?(?:simple|easy|easier)\b`,
  String.raw`(?<!% )\b(?:confidence(?! (?:interval|level|range|limit))|peace of mind|reassur(?:es|ing)|inspir(?:es|ing))\b`,
);

const careful = (
  kind: CarefulWord['kind'],
  pattern: RegExp,
  [expected, cure]: readonly [expected: string, cure: string],
  rest: Partial<Pick<CarefulWord, 'mayBeDenied' | 'counts'>> = {},
): CarefulWord => ({
  kind,
  pattern,
  expected,
  cure,
  mayBeDenied: true,
  counts: 'of what is compared',
  ...rest,
});

const plain = ['plain words for what was measured, without praise', 'Say in what, and by how much.'] as const;

/** Praise, urging and promises in the words of every day, which say nothing where nothing is compared. */
export const praisingWords: readonly CarefulWord[] = [
  careful('contest-word', admiring, plain),
  careful('contest-word', denying, plain, { mayBeDenied: false, counts: 'anywhere' }),
  careful(
    'advice-given',
    urging,
    [
      'what the shots show, and no advice what to buy or to choose: the shots cannot tell what suits a reader',
      'Leave the choice to the reader.',
    ],
    { mayBeDenied: false, counts: 'anywhere' },
  ),
  careful('promise-made', promising, [
    'what this golfer saw; here a gain is promised to whoever reads it',
    'Say what happened in the test. Another golfer may differ.',
  ]),
  careful('outcome-unmeasured', untold, [
    'what the shots can show',
    'Leave it out, or say that it was not part of the test.',
  ]),
];
