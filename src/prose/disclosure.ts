import { isReadingStated } from '../findings/fairness.ts';
import type { Contender } from '../intake/authored/contender.ts';
import type { Hitter } from '../intake/authored/hitter.ts';
import type { Source } from '../intake/authored/source.ts';
import { sheetItems, type SheetItem } from '../intake/authored/sheet.ts';
import { flightModelHeading } from '../intake/modelledColumns.ts';
import type { Session } from '../intake/session.ts';
import { metrics } from '../trade/metrics.ts';
import { dateInWords } from './date.ts';
import { orderInWords } from './english/order.ts';
import { plannedInWords } from './plannedInWords.ts';
import type { Telling } from './telling.ts';
import { counted, listed } from './words.ts';

/** One line of the list of conditions; null prints "not recorded". */
interface DisclosureItem {
  readonly label: string;
  readonly value: string | null;
}

export interface DisclosureGroup {
  readonly title: string;
  readonly items: readonly DisclosureItem[];
}

/** What is printed where nothing was answered, in the same size as any answer. */
export const notRecorded = 'not recorded';

interface Disclosed {
  readonly source: Source;
  readonly session: Session;
  readonly telling: Telling;
  readonly version: string;
}

/** The full list of the conditions of a test, group by group, answered or not. */
export function disclosure(facts: Disclosed): readonly DisclosureGroup[] {
  const { front } = facts.source;
  return [
    { title: 'Who hit', items: people(facts) },
    { title: 'Shots', items: shots(facts) },
    { title: 'Place', items: place(facts.source) },
    { title: 'Ball', items: ball(facts.source) },
    { title: 'Monitor', items: monitor(facts) },
    { title: `What was the same for every ${front.varied}`, items: heldLines(front) },
    ...front.contenders.map((contender) => ({
      title: contender.label,
      items: contenderLines(contender, facts.source.locale),
    })),
    { title: 'Money', items: money(facts.source) },
    { title: 'Record', items: record(facts) },
  ];
}

/** How many items are answered, and which are not, group by group. */
export function recorded(groups: readonly DisclosureGroup[]): {
  readonly answered: number;
  readonly all: number;
  readonly missing: readonly string[];
} {
  const items = groups.flatMap((group) => group.items);
  const missing = groups.flatMap(({ title, items: own }) => {
    const labels = own.filter(({ value }) => value === null).map(({ label }) => lowerFirst(label));
    return labels.length === 0 ? [] : [{ title, labels: labels.join(', ') }];
  });
  // Several of which the same is missing are named together.
  const together = Map.groupBy(missing, ({ labels }) => labels);
  return {
    answered: items.filter(({ value }) => value !== null).length,
    all: items.length,
    missing: [...together].map(([labels, own]) => `${listed(own.map(({ title }) => title))}: ${labels}`),
  };
}

function lowerFirst(label: string): string {
  return label.charAt(0).toLowerCase() + label.slice(1);
}

const item = (label: string, value: string | null | undefined): DisclosureItem => ({
  label,
  value: value ?? null,
});
const yesNo = (value: boolean | undefined): string | null =>
  value === undefined ? null : value ? 'yes' : 'no';

function people({ source }: Disclosed): DisclosureItem[] {
  const { hitters } = source.front;
  const each = (answer: (hitter: Hitter) => string | undefined | null): string | null => {
    const answers = hitters.map((hitter) => answer(hitter) ?? null);
    if (answers.every((value) => value === null)) return null;
    if (hitters.length === 1) return answers[0] ?? null;
    return hitters.map(({ id }, index) => `${id}: ${answers[index] ?? notRecorded}`).join('; ');
  };
  return [
    item('Golfers', counted(hitters.length, 'golfer')),
    item(
      'Who',
      each(({ role }) => role),
    ),
    item(
      'Hand',
      each(({ hand }) => hand),
    ),
    item(
      'Handicap band',
      each(({ handicapBand }) => handicapBand),
    ),
    item(
      'Links to the shop or to makers',
      each(({ linkToShop }) => linkToShop),
    ),
    item(
      'Could see which one was hit',
      each(({ sawClub }) => yesNo(sawClub)),
    ),
    item(
      'Could see the numbers',
      each(({ sawNumbers }) => yesNo(sawNumbers)),
    ),
    item(
      'Usual club',
      each(({ usualClub }) => usualClub),
    ),
    item(
      'Expected by who hit',
      each(({ expectation }) => expectation),
    ),
    item(
      'Agreed to be shown',
      each(({ consent: { date } }) =>
        date === null ? 'yes' : `yes, on ${dateInWords(date, source.locale)}`,
      ),
    ),
  ];
}

function shots({ source, session, telling }: Disclosed): DisclosureItem[] {
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
    item('Shots recorded', counts.join(', ')),
    item('Order', orderInWords(findings.design.order)),
    item('Order planned', front.plan?.order),
    item('Random seed', front.plan?.seed),
    item(
      'Warm-up',
      session.warmUps > 0 ? `${session.warmUps} warm-up swings in the file, not counted` : front.plan?.warmUp,
    ),
    item('Left out', left.length === 0 ? 'none' : `${counted(left.length, 'shot')}; ${reasons.join('; ')}`),
    item('Rule for leaving out', front.plan?.exclusionRule),
    item('Rule for stopping', front.plan?.stoppingRule),
    item('Planned in advance', planned),
    item('What we expected', front.plan?.expectation),
  ];
}

function place({ front: { conditions } }: Source): DisclosureItem[] {
  return [
    item('Place', conditions.place),
    item('Surface', conditions.surface),
    item('Tee', conditions.tee),
    item('Temperature', conditions.temperature),
    item('Altitude', conditions.altitude),
    item('Wind', conditions.wind),
    item('Humidity', conditions.humidity),
    item('Target', conditions.target),
  ];
}

function ball({ front }: Source): DisclosureItem[] {
  if (/\bballs?\b/i.test(front.varied)) return [item('Ball', 'what was compared: see below')];
  const { ball: hit } = front.conditions;
  const whole = hit?.description ?? front.held.ball;
  return [
    item('Ball', hit?.model ?? whole ?? front.held.ball_model),
    item('New, used or range', hit?.state ?? front.held.ball_state ?? stateIn(whole)),
    item('Same ball for all', yesNo(hit?.sameForAll) ?? (front.held.ball === undefined ? null : 'yes')),
  ];
}

function stateIn(words: string | undefined): string | null {
  return /\b(new|used|range)\b/i.exec(words ?? '')?.[0]?.toLowerCase() ?? null;
}

function monitor({ source, session }: Disclosed): DisclosureItem[] {
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
    item('Kind', device?.kind),
    item('Accuracy as stated', stated),
    item('Who states it', device?.accuracyStatedBy),
    item('Measured or calculated', columns.length === 0 ? null : columns.join('; ')),
    item('Flight seen', device?.flight),
    item('Distances corrected to', device?.normalisedTo),
    item('Last checked', device?.lastCheck),
    item('Software', device?.software),
  ];
}

/** What every build sheet is asked for (common practice, no source). */
const askedOfEach: readonly SheetItem[] = [
  'loft',
  'loft_measured',
  'shaft',
  'length',
  'lie',
  'swing_weight',
  'total_weight',
  'settings',
  'grip',
];

const isSheetItem = (key: string): key is SheetItem => Object.hasOwn(sheetItems, key);

function sheetLines(sheet: Source['front']['held']): DisclosureItem[] {
  const known = Object.entries(sheet).flatMap(([key, value]) =>
    isSheetItem(key) && typeof value === 'string' ? [item(sentenceCase(sheetItems[key]), value)] : [],
  );
  const further = Object.entries(sheet.also ?? {}).map(([key, value]) => item(sentenceCase(key), value));
  return [...known, ...further];
}

/**
 * What was held for all, and what nobody wrote down. Nobody asks a ball for its lie: that is asked once, of what was
 * held, and not where every contender's own sheet answers it.
 */
function heldLines({ held, contenders }: Source['front']): DisclosureItem[] {
  const missing = askedOfEach.filter(
    (key) => held[key] === undefined && !contenders.every(({ build }) => build?.[key] !== undefined),
  );
  return [...sheetLines(held), ...missing.map((key) => item(sentenceCase(sheetItems[key]), null))];
}

function contenderLines(contender: Contender, locale: string): DisclosureItem[] {
  const build = contender.build ?? {};
  const own = Object.entries(build).flatMap(([key, value]) =>
    isSheetItem(key) && typeof value === 'string' ? [item(sentenceCase(sheetItems[key]), value)] : [],
  );
  const further = Object.entries(build.also ?? {}).map(([key, value]) => item(sentenceCase(key), value));
  const price = contender.price;
  return [
    ...(own.length + further.length === 0 ? [item('Build sheet', null)] : [...own, ...further]),
    ...(build.condition === undefined ? [item('Condition', null)] : []),
    ...(build.specimen === undefined ? [item('Specimen', null)] : []),
    item('Supplied by', contender.suppliedBy.words),
    item('Sold here', contender.soldHere),
    item(
      'Price',
      price === undefined ? null : `${price.amount} ${price.currency} on ${dateInWords(price.on, locale)}`,
    ),
  ];
}

function money({ front: { interests } }: Source): DisclosureItem[] {
  return [
    item('Who paid for the test', interests.paidBy.words),
    item('Commission, sponsorship or gifts', interests.commissionOrGifts.words),
    item('Who saw it before publication', interests.seenBefore.words),
  ];
}

function record({ source, version }: Disclosed): DisclosureItem[] {
  const { front, files, shop } = source;
  return [
    ...(front.summary === null ? [] : [item('In the shop’s words', front.summary)]),
    item('Date of the session', dateInWords(front.date, source.locale)),
    item(
      'Date of publication',
      front.published === null ? null : dateInWords(front.published, source.locale),
    ),
    item('Data', files.map(({ name, sha256 }) => `${name}, SHA-256 ${sha256.slice(0, 16)}…`).join('; ')),
    item('Calculated by', `Straightface ${version}`),
    item(
      'Corrections',
      front.corrections.length === 0 ? 'none so far' : counted(front.corrections.length, 'correction'),
    ),
    item('Where to report an error', shop?.contact),
  ];
}

function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
