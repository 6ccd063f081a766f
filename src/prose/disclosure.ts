import { isReadingStated } from '../findings/fairness.ts';
import type { Hitter } from '../intake/authored/hitter.ts';
import type { Source } from '../intake/authored/source.ts';
import { flightModelHeading } from '../intake/modelledColumns.ts';
import type { Session } from '../intake/session.ts';
import { metrics } from '../trade/metrics.ts';
import { dateInWords } from './date.ts';
import { orderInWords } from './english/order.ts';
import { notRecorded, type DisclosureGroup, type DisclosureLine } from './disclosureGroup.ts';
import { contenderLines, heldLines } from './sheetLines.ts';
import { plannedInWords } from './plannedInWords.ts';
import type { Telling } from './telling.ts';
import { counted, listed } from './words.ts';

interface Disclosed {
  readonly source: Source;
  readonly session: Session;
  readonly telling: Telling;
  readonly version: string;
}

/** The full list of the conditions of a test, group by group, answered or not. */
export function disclosure(facts: Disclosed): readonly DisclosureGroup[] {
  const { front } = facts.source;
  const groups: readonly { readonly title: string; readonly lines: readonly DisclosureLine[] }[] = [
    { title: 'Who hit', lines: people(facts) },
    { title: 'Shots', lines: shots(facts) },
    { title: 'Place', lines: place(facts.source) },
    { title: 'Ball', lines: ball(facts.source) },
    { title: 'Monitor', lines: monitor(facts) },
    { title: `What was the same for every ${front.varied}`, lines: heldLines(front) },
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
  return [
    ['Golfers', counted(hitters.length, 'golfer')],
    ['Who', each(({ role }) => role)],
    ['Hand', each(({ hand }) => hand)],
    ['Handicap band', each(({ handicapBand }) => handicapBand)],
    ['Links to the shop or to makers', each(({ linkToShop }) => linkToShop)],
    ['Could see which one was hit', each(({ sawClub }) => yesNo(sawClub))],
    ['Could see the numbers', each(({ sawNumbers }) => yesNo(sawNumbers))],
    ['Usual club', each(({ usualClub }) => usualClub)],
    ['Expected by who hit', each(({ expectation }) => expectation)],
    [
      'Agreed to be shown',
      each(({ consent: { date } }) =>
        date === null ? 'yes' : `yes, on ${dateInWords(date, source.locale)}`,
      ),
    ],
  ];
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
  const planned = plannedInWords(findings.design.plan, front.plan?.date);
  return [
    ['Shots recorded', counts.join(', ')],
    ['Order', orderInWords(findings.design.order)],
    ['Order planned', front.plan?.order],
    ['Random seed', front.plan?.seed],
    [
      'Warm-up',
      session.warmUps > 0 ? `${session.warmUps} warm-up swings in the file, not counted` : front.plan?.warmUp,
    ],
    ['Left out', left.length === 0 ? 'none' : `${counted(left.length, 'shot')}; ${reasons.join('; ')}`],
    ['Rule for leaving out', front.plan?.exclusionRule],
    ['Rule for stopping', front.plan?.stoppingRule],
    ['Planned in advance', planned],
    ['What we expected', front.plan?.expectation],
  ];
}

function place({ front: { conditions } }: Source): readonly DisclosureLine[] {
  return [
    ['Place', conditions.place],
    ['Surface', conditions.surface],
    ['Tee', conditions.tee],
    ['Temperature', conditions.temperature],
    ['Altitude', conditions.altitude],
    ['Wind', conditions.wind],
    ['Humidity', conditions.humidity],
    ['Target', conditions.target],
  ];
}

function ball({ front }: Source): readonly DisclosureLine[] {
  if (/\bballs?\b/i.test(front.varied)) return [['Ball', 'what was compared: see below']];
  const { ball: hit } = front.conditions;
  const whole = hit?.description ?? front.held.ball;
  return [
    ['Ball', hit?.model ?? whole ?? front.held.ball_model],
    ['New, used or range', hit?.state ?? front.held.ball_state ?? stateIn(whole)],
    ['Same ball for all', yesNo(hit?.sameForAll) ?? (front.held.ball === undefined ? null : 'yes')],
  ];
}

function stateIn(words: string | undefined): string | null {
  return /\b(new|used|range)\b/i.exec(words ?? '')?.[0]?.toLowerCase() ?? null;
}

function monitor({ source, session }: Disclosed): readonly DisclosureLine[] {
  const { monitor: device } = source.front.conditions;
  const accuracy = device?.statedAccuracy;
  const stated =
    accuracy?.words ??
    (accuracy === undefined
      ? undefined
      : Object.entries(accuracy.byMetric)
          .map(([metric, value]) => `${metric.replace(/_/g, ' ')} ±${value.typed.replace(/^±\s*/, '')}`)
          .join(', '));
  const classes = Map.groupBy(Object.values(session.columns), (column) => {
    if (column.heading === flightModelHeading) return 'calculated by our flight model, to about 6%';
    return column.class === 'measured' && !isReadingStated(source.front, column.metric)
      ? 'not stated; treated as measured'
      : column.class;
  });
  const columns = [...classes].map(
    ([kind, own]) => `${kind}: ${listed(own.map(({ metric }) => metrics[metric].name))}`,
  );
  return [
    ['Kind', device?.kind],
    ['Accuracy as stated', stated],
    ['Who states it', device?.accuracyStatedBy],
    ['Measured or calculated', columns.length === 0 ? null : columns.join('; ')],
    ['Flight seen', device?.flight],
    ['Distances corrected to', device?.normalisedTo],
    ['Last checked', device?.lastCheck],
    ['Software', device?.software],
  ];
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
