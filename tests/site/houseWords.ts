/** Words that reach no reader: a pattern, and an example of what it is to find. */
export interface ForbiddenWords {
  readonly pattern: RegExp;
  readonly example: string;
}

const words = (pattern: RegExp, example: string): ForbiddenWords => ({ pattern, example });
const quote = (example: string): ForbiddenWords => ({
  pattern: new RegExp(example.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'), 'i'),
  example,
});

export const forbiddenWords: readonly ForbiddenWords[] = [
  // Words of the house that were given up.
  words(/\bwould fit\b/i, '9 to 15 would fit these shots.'),
  words(/\bturns?\b(?! (?:up|out|into)\b)/i, 'Counted by turns, it holds.'),
  words(/\bvisits?\b/i, 'Shots of one visit are alike.'),
  words(/\bhitters?\b/i, 'All eight hitters drawn.'),
  words(/\bcontenders?\b/i, 'Two contenders.'),
  words(/:\s+(?:not )?met\b/i, 'Enough shots: not met.'),
  words(/\bsignificant(?:ly)?\b/i, 'a significant difference'),
  words(/\d[ \u00a0\u202f]%/, '95 %'),
  words(/\b(?:was|were|not|as|average) read\b/i, 'Spin was read.'),
  words(/\bhow much is unsure\b|\bsize unsure\b/i, 'though how much is unsure'),
  words(/\bcause is (?:left )?open\b/i, 'so the cause is open'),
  words(/\bborne out\b|\bweaker than said\b|\bthe shots bear\b/i, 'Borne out.'),
  words(/\bworked out\b/i, 'worked out in other ways'),
  words(/\bseen, not planned\b|\bcalculated, not seen\b/i, 'Seen, not planned.'),
  words(/\bthe other way\b/i, '0.04 yards the other way to 10'),
  words(/(?:^|\s)(?:Mind|Luck|For whom)\.\s/, 'Mind. The answer changes.'),
  // Sentences that readers misread.
  quote('any gap is under'),
  words(/\bfrom [\d.]+ \w+ farther with\b/i, 'From 7 yards farther with Fairway wood to 6'),
  quote('there is one, but only about'),
  quote('The answer changes when the shots that were left out are counted'),
  words(/\bhigher in spin\b/i, 'was higher in spin than Worn'),
  quote('one was mostly hit later, so'),
  words(/\bthese shots (?:lean|cannot)\b/i, 'these shots lean to Long over Short'),
  quote('each had too few'),
  quote('and that could hide one'),
  quote('At equal club speed the gap would be'),
  quote('by luck, now and then by'),
  quote('in changing order'),
  quote('Yours may differ in size or direction'),
  quote('Who decides after the shots'),
  quote('that falls on all of them alike'),
  quote('no record shows it'),
  words(/\bring leans\b/i, 'The ring leans towards the ball with more.'),
  quote('thick where it would matter'),
  quote('counted towards the one with more'),
  words(/\bcannot call one (?:straighter|steadier)\b/i, 'These shots cannot call one straighter.'),
  quote('when the wildest shots are set aside'),
  words(/\bholds? in \w+ other ways?\b/i, 'The answer holds in three other ways'),
  quote('Leaving out any one shot, the gap'),
  quote('when they find a gap, usually find it too big'),
  quote('to show that no gap matters'),
  quote('A test like this finds a gap'),
  quote('cannot part the two'),
  words(/, [^.:,]+ and [^.:,]+: cannot tell\b/, 'Club speed, Heron and Plover: cannot tell.'),
  quote('Not read:'),
  quote('rules of the trade'),
  quote('That no drift shows is no proof'),
  words(/\bTrend: about [\d.,]+ \w+ (?:more|less) in ten shots/, 'Trend: about 0.1 yards more in ten shots'),
  words(/\(smash factor\) gives\b/i, 'Strike (smash factor) gives Heron about 11 yards.'),
  quote('large enough, and sure enough, to name'),
  words(/\bcosts [^.]+ more than [^.;]+; for that\b/i, 'Heron costs 27 GBP more than Wren; for that, 9'),
  quote('or more one way comes in'),
  quote('Another golfer: '),
  words(
    /\bAll (?:\w+ )?(?:shots|pairs|golfers|comparisons|spreads|parts|gaps|differences) drawn\b/i,
    'All 36 shots drawn.',
  ),
  quote('The same in words and numbers'),
  quote('and that may be all there is to a gap'),
  words(/\bcannot tell the \w+ from the swing\b/i, 'cannot tell the length from the swing'),
  quote('The gap is near the smallest that the monitor can tell'),
  quote('One shot far from the others decides'),
  quote('from the same shots, the answer'),
  quote('to either side of the one seen'),
  quote('only as right as the sum behind it'),
  quote('may wish for one answer'),
  quote('The numbers of the shots have no gap'),
  quote('As many left out of each'),
  words(/\bsaw this first\b/i, 'Nobody outside the shop saw this first.'),
  quote('Paid for by the shop. Nobody'),
  quote('No ledger of plans is kept'),
  quote('for the answer see the report'),
  quote('clearly steeper in its landing'),
  quote('The same goes for'),
  words(/: not judged, /, 'Mallow 4: not judged, four shots are too few'),
  quote('One example of each set of'),
  quote('the golfer below the picture'),
  quote('one scale throughout'),
  quote('the next shot would land inside'),
  quote('farther, towards either end'),
  quote('by all three sets of coefficients'),
  quote('The table below has them all'),
  words(/\b\d+ of \d+ conditions recorded\b/i, '52 of 70 conditions recorded.'),
  quote('seed of the order'),
  quote('not said, taken as measured'),
  words(/\bwithin some \d/i, 'within some 6%'),
  quote('Tie to the shop'),
  quote('Monitor fine enough'),
  quote('count in no figure'),
  words(/\b[A-Z]\w+ and [A-Z]\w+ in one report\b/, 'Heron and Wren in one report'),
  quote('nothing to put together yet'),
  words(/\bPut together\b/, 'Put together: not yet'),
  quote('Beside others'),
  quote('count as one golfer'),
  quote('Page to show in a frame'),
  quote('If a link on this site brought you here'),
  words(/\bOthers (?:paid|saw)\b/, 'Others paid for the test. Others saw it first.'),
  // Nothing to say is not said.
  quote('No corrections so far'),
  quote('None left out'),
];

const blocks =
  /<\/?(?:p|li|ul|ol|dl|dt|dd|h\d|td|th|tr|table|caption|div|section|figure|figcaption|summary|details|blockquote|text|title|desc|item|entry|summary|content|description|nav|header|footer|br|g)\b[^>]*>/gi;

/**
 * What a reader reads of a page, mail, feed or picture: its text and the words for pictures, groups and lists of
 * results. Code is not read, nor what explains the keys of our files, nor addresses.
 */
export function readersText(file: string): string {
  const worded = file
    .replaceAll(/<(script|style|code)\b[\s\S]*?<\/\1>/g, ' ')
    .replaceAll(/<details data-file-words[\s\S]*?<\/details>/g, ' ')
    .replaceAll(/<[^>]*?\b(?:alt|aria-label|title|content)="([^"]*)"[^>]*>/g, '\n$1\n')
    .replaceAll(blocks, '\n')
    .replaceAll(/<[^>]*>/g, '');
  const decoded = worded
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll(/&(?:nbsp|#160|#xa0);/gi, '\u00a0')
    .replaceAll(/&(?:quot|#34);/g, '"')
    .replaceAll(/&(?:apos|#39|#x27);/gi, "'")
    .replaceAll('&amp;', '&');
  // A feed holds markup within its text.
  const plain = decoded.replaceAll(blocks, '\n').replaceAll(/<\/?[a-z][^>]*>/gi, '');
  // Files keep the names that others have linked to.
  return plain
    .replaceAll(/https?:\/\/\S+/g, ' ')
    .replaceAll(/\bcharts\/[a-z0-9-]+\.[a-z]+\b/g, ' ')
    .replaceAll(/[ \t]+/g, ' ');
}

/** Forbidden words in a text, each with what stands round it. */
export function forbiddenIn(text: string): readonly string[] {
  return forbiddenWords.flatMap(({ pattern }) => {
    const found = pattern.exec(text);
    if (found === null) return [];
    const round = text.slice(Math.max(0, found.index - 40), found.index + found[0].length + 40);
    return [`"${found[0].trim()}" in "... ${round.replaceAll(/\s+/g, ' ').trim()} ..."`];
  });
}
