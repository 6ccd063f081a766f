import { ballQuestions } from '../intake/authored/ball.ts';
import { singleConditions } from '../intake/authored/conditions.ts';
import type { Hitter, hitterQuestions } from '../intake/authored/hitter.ts';
import { monitorQuestions } from '../intake/authored/monitor.ts';
import type { planQuestions } from '../intake/authored/plan.ts';
import { keysOf } from '../intake/authored/question.ts';
import type { Source } from '../intake/authored/source.ts';
import type { Session } from '../intake/session.ts';
import { dateInWords } from './date.ts';
import { ballWords, monitorWords, placeWords, type ConditionWords } from './english/conditionWords.ts';
import { orderInWords } from './english/order.ts';
import { notRecorded, type DisclosureGroup, type DisclosureLine } from './disclosureGroup.ts';
import { contenderLines, heldLines } from './sheetLines.ts';
import { plannedInWords } from './plannedInWords.ts';
import type { Telling } from './telling.ts';
import { counted } from './words.ts';

interface Disclosed {
  readonly source: Source;
  readonly session: Session;
  readonly telling: Telling;
  readonly version: string;
}

/** The full list of the conditions of a test, group by group, answered or not. */
export function disclosure(facts: Disclosed): readonly DisclosureGroup[] {
  const { front } = facts.source;
  const { noun } = facts.telling;
  const groups: readonly { readonly title: string; readonly lines: readonly DisclosureLine[] }[] = [
    { title: 'Who hit', lines: people(facts) },
    { title: 'Shots', lines: shots(facts) },
    { title: 'Place', lines: place(facts) },
    { title: 'Ball', lines: ball(facts) },
    { title: 'Monitor', lines: monitor(facts) },
    { title: `What was the same for every ${noun}`, lines: heldLines(front) },
    ...front.contenders.map((contender) => ({
      title: contender.label,
      lines: contenderLines(contender, facts.source.locale),
    })),
    { title: 'Money', lines: money(facts.source) },
    { title: 'Record', lines: record(facts) },
  ];
  return groups.map(({ title, lines }) => ({
    title,
    items: lines.map(([label, value]) => ({ label, value: value ?? null })),
  }));
}

const yesNo = (value: boolean | undefined): string | null =>
  value === undefined ? null : value ? 'yes' : 'no';

function people({ source }: Disclosed): readonly DisclosureLine[] {
  const { hitters } = source.front;
  const each = (answer: (hitter: Hitter) => string | undefined | null): string | null => {
    const answers = hitters.map((hitter) => answer(hitter) ?? null);
    if (answers.every((value) => value === null)) return null;
    if (hitters.length === 1) return answers[0] ?? null;
    return hitters.map(({ id }, index) => `${id}: ${answers[index] ?? notRecorded}`).join('; ');
  };
  const answers = {
    role: ['Who', each(({ role }) => role)],
    hand: ['Hand', each(({ hand }) => hand)],
    handicap_band: ['Handicap band', each(({ handicapBand }) => handicapBand)],
    link_to_shop: ['Links to the shop or to makers', each(({ linkToShop }) => linkToShop)],
    saw_club: ['Could see which one was hit', each(({ sawClub }) => yesNo(sawClub))],
    saw_numbers: ['Could see the numbers', each(({ sawNumbers }) => yesNo(sawNumbers))],
    usual_club: ['Usual club', each(({ usualClub }) => usualClub)],
    expectation: ['Expected by who hit', each(({ expectation }) => expectation)],
    consent: [
      'Agreed to be shown',
      each(({ consent: { date } }) =>
        date === null ? 'yes' : `yes, on ${dateInWords(date, source.locale)}`,
      ),
    ],
    // A name: never printed.
    match: null,
  } satisfies Lines<keyof typeof hitterQuestions>;
  return [['Golfers', counted(hitters.length, 'golfer')], ...linesIn(answers)];
}

function shots({ source, session, telling }: Disclosed): readonly DisclosureLine[] {
  const { front } = source;
  const { findings } = telling;
  const counts = findings.contenders.map(({ id, shots: all, excluded }) => {
    const out = excluded === 0 ? '' : ` (${excluded} left out)`;
    return `${all} with ${telling.nameOf(id)}${out}`;
  });
  const left = session.shots.filter(({ excluded }) => excluded !== null);
  const reasons = [
    ...new Set(left.map(({ excluded }) => `${excluded?.rule ?? ''}: ${excluded?.reason ?? ''}`)),
  ];
  const answers = {
    recorded: ['Shots recorded', counts.join(', ')],
    hit: ['Order', orderInWords(findings.design.order)],
    order: ['Order planned', front.plan?.order],
    seed: ['Random seed', front.plan?.seed],
    warm_up: [
      'Warm-up',
      session.warmUps > 0 ? `${session.warmUps} warm-up swings in the file, not counted` : front.plan?.warmUp,
    ],
    leftOut: [
      'Left out',
      left.length === 0 ? 'none' : `${counted(left.length, 'shot')}; ${reasons.join('; ')}`,
    ],
    exclusion_rule: ['Rule for leaving out', front.plan?.exclusionRule],
    stopping_rule: ['Rule for stopping', front.plan?.stoppingRule],
    date: ['Planned in advance', plannedInWords(findings.design.plan, front.plan?.date)],
    // The shots that were hit are held against it.
    shots_per_contender: null,
    expectation: ['What we expected', front.plan?.expectation],
  } satisfies Lines<keyof typeof planQuestions | 'recorded' | 'hit' | 'leftOut'>;
  return linesIn(answers);
}

/** The lines of a block, one for each question; null where another line says it. */
type Lines<Key extends PropertyKey> = Readonly<Record<Key, DisclosureLine | null>>;

const linesIn = (lines: Lines<string>): readonly DisclosureLine[] =>
  Object.values(lines).filter((line) => line !== null);

function place({ source }: Disclosed): readonly DisclosureLine[] {
  return conditionLines(keysOf(singleConditions), placeWords(source.front));
}

function ball({ source: { front } }: Disclosed): readonly DisclosureLine[] {
  if (/\bballs?\b/i.test(front.varied)) return [['Ball', 'what was compared: see below']];
  return conditionLines(keysOf(ballQuestions), ballWords(front));
}

function monitor({ source, session }: Disclosed): readonly DisclosureLine[] {
  return conditionLines(keysOf(monitorQuestions), monitorWords(source.front, session));
}

function conditionLines<Key extends string>(
  keys: readonly Key[],
  words: Readonly<Record<Key, ConditionWords | null>>,
): readonly DisclosureLine[] {
  return keys.flatMap((key) => {
    const own = words[key];
    return own === null ? [] : [[own.heading, own.listed] as const];
  });
}

function money({ front: { interests } }: Source): readonly DisclosureLine[] {
  return [
    ['Who paid for the test', interests.paidBy.words],
    ['Commission, sponsorship or gifts', interests.commissionOrGifts.words],
    ['Who saw it before publication', interests.seenBefore.words],
  ];
}

function record({ source, version }: Disclosed): readonly DisclosureLine[] {
  const { front, files, shop } = source;
  return [
    ...(front.summary === null ? [] : [['In the shop’s words', front.summary] as const]),
    ['Date of the session', dateInWords(front.date, source.locale)],
    ['Date of publication', front.published === null ? null : dateInWords(front.published, source.locale)],
    ['Data', files.map(({ name, sha256 }) => `${name}, SHA-256 ${sha256.slice(0, 16)}…`).join('; ')],
    ['Calculated by', `Straightface ${version}`],
    [
      'Corrections',
      front.corrections.length === 0 ? 'none so far' : counted(front.corrections.length, 'correction'),
    ],
    ['Where to report an error', shop?.contact],
  ];
}
