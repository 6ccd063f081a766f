import { clubKindIn, clubKinds, type ClubKind } from '../../trade/clubKind.ts';
import { metricIds, metrics, type MetricId } from '../../trade/metrics.ts';
import { dependsOnClub, typicalSpread } from '../../trade/typicalSpread.ts';
import type { Quantity } from '../../intake/authored/quantity.ts';
import type { Shop } from '../../intake/authored/shop.ts';
import { foresee, proposedShots, type Foresight } from '../../intake/plan/foresight.ts';
import { learnedSpread, type PastSession } from '../../intake/plan/pastSpread.ts';
import { orderTrouble, type PlannedTurns } from '../../intake/plan/plannedOrder.ts';
import { unitFor } from '../../prose/readerUnits.ts';
import type { Terminal } from '../terminal.ts';
import { usualGap } from '../usualGap.ts';
import type { Answers } from './answers.ts';
import type { PlanOptions } from './planOptions.ts';
import {
  amount,
  chosenLines,
  fewerLine,
  neededInVisits,
  neededLine,
  spreadLine,
  type SpreadOrigin,
} from './planWords.ts';
import {
  checkContenders,
  readBand,
  readClubKind,
  readContenders,
  readMetric,
  readOptional,
  readQuantity,
  readShots,
  readText,
  readTurns,
} from './readings.ts';

/** All that was decided. */
export interface Decided {
  readonly labels: readonly string[];
  readonly varied: string;
  readonly metric: MetricId;
  readonly matters: Quantity;
  readonly role: string | null;
  readonly turns: PlannedTurns;
  readonly shotsEach: number;
  readonly expectation: string | null;
}

interface Surroundings {
  readonly shop: Shop | null;
  readonly past: readonly PastSession[];
  readonly terminal: Terminal;
}

/** Goes through the questions of a plan, telling on the way what follows from the answers; null with troubles. */
export async function decide(
  options: PlanOptions,
  { answer, troubles }: Answers,
  { shop, past, terminal }: Surroundings,
): Promise<Decided | null> {
  const labels = await answer({
    flag: 'contender',
    given: options.contender?.join(';'),
    question: 'What is compared? Two or three names, with commas between them:',
    proposed: null,
    read: options.contender === undefined ? readContenders : () => checkContenders(options.contender ?? []),
  });
  const varied = await answer({
    flag: 'varied',
    given: options.varied,
    question: 'The one thing that differs: head, shaft, ball, loft, grooves?',
    proposed: null,
    read: readText('one noun'),
  });
  const metric = await answer({
    flag: 'metric',
    given: options.metric,
    question: 'The one metric to judge by?',
    proposed: 'carry',
    choices: metricIds,
    read: readMetric,
  });
  if (labels === null || varied === null || metric === null) return null;
  const { name } = metrics[metric];
  const matters = await answer({
    flag: 'matters',
    given: options.matters,
    question: `The smallest gap in ${name} that a customer should care about?`,
    proposed: shop?.defaults.matters[metric]?.typed ?? usualGap(metric, shop?.defaults.units ?? 'yards'),
    read: readQuantity(metric),
  });
  const spread = await spreadOf(options, answer, { metric, labels, varied, shop, past });
  if (matters === null || spread === null) return null;

  const { sd, origin, club, role } = spread;
  const { unit } = matters;
  const prospect = {
    contenders: labels.length,
    sd,
    sdRange: origin.kind === 'own' ? origin.learned.range : null,
    matters: matters.value,
  };
  const rotation: PlannedTurns = { kind: 'rotation' };
  const ahead = (shotsEach: number, turns: PlannedTurns = rotation, contenders = labels.length): Foresight =>
    foresee({ ...prospect, contenders, shotsEach, turns });
  terminal.write(`\n${spreadLine({ metricName: name, sd, unit, origin, role, club })}\n`);
  if (spread.ownToo !== null) terminal.write(`Your own sessions show ${amount(spread.ownToo, unit)}.\n`);
  const first = ahead(12);
  terminal.write(`${neededLine(first, matters.typed)}\n`);
  const fewer = fewerLine(labels.length, [ahead(12, rotation, 2).needed, ahead(12, rotation, 3).needed]);
  terminal.write(fewer === null ? '\n' : `${fewer}\n\n`);

  const turns = await answer({
    flag: 'order',
    given: options.order,
    question: 'The order: rotation (one shot with each, shuffled), mini-blocks-2 or mini-blocks-3?',
    proposed: 'rotation',
    choices: ['rotation', 'mini-blocks-2', 'mini-blocks-3'],
    read: readTurns,
  });
  if (turns === null) return null;
  const visit = turns.kind === 'rotation' ? 1 : turns.shotsAVisit;
  const { needed } = turns.kind === 'rotation' ? first : ahead(4 * visit, turns);
  if (turns.kind !== 'rotation') terminal.write(`${neededInVisits(needed, visit)}\n`);
  const shotsEach = await answer({
    flag: 'shots',
    given: options.shots,
    question: 'How many shots with each?',
    proposed: String(proposedShots(labels.length, needed, visit)),
    read: (typed) => {
      const read = readShots(typed);
      const trouble = 'value' in read ? orderTrouble(read.value, turns) : null;
      return trouble === null ? read : { expected: trouble };
    },
  });
  if (shotsEach === null) return null;
  const facts = { contenders: labels.length, varied, shotsEach, unit, matters: matters.typed };
  terminal.write(`${chosenLines(ahead(shotsEach, turns), facts).join('\n')}\n\n`);
  const expectation = await answer({
    flag: 'expectation',
    given: options.expectation,
    question: 'What do you expect to see? (Enter for nothing in particular)',
    proposed: '',
    read: readOptional,
  });
  if (expectation === null || troubles().length > 0) return null;
  return { labels, varied, metric, matters, role, turns, shotsEach, expectation: expectation.text };
}

interface SpreadFound {
  readonly sd: number;
  readonly origin: SpreadOrigin;
  readonly club: ClubKind | null;
  readonly role: string | null;
  /** What the shop's own sessions show, where another spread was typed. */
  readonly ownToo: number | null;
}

interface SpreadQuestion {
  readonly metric: MetricId;
  readonly labels: readonly string[];
  readonly varied: string;
  readonly shop: Shop | null;
  readonly past: readonly PastSession[];
}

/** The spread to plan with: typed where it was, else the shop's own, else typical of the trade. */
async function spreadOf(
  options: PlanOptions,
  answer: Answers['answer'],
  { metric, labels, varied, shop, past }: SpreadQuestion,
): Promise<SpreadFound | null> {
  const told = [options.title, options.question, varied, ...labels].filter((text) => text !== undefined);
  const club = await answer({
    flag: 'club',
    given: options.club,
    question: 'Which kind of club: driver, iron, wedge or other?',
    // A spread that hangs on the club cannot be proposed without it: nobody should pass over the question.
    proposed: clubKindIn(told) ?? (options.spread === undefined && dependsOnClub(metric) ? null : 'other'),
    choices: [...clubKinds, 'other'],
    read: readClubKind,
  });
  const role = await answer({
    flag: 'hitter',
    given: options.hitter,
    question: 'Who hits, as a role and never a name: staff fitter, customer, professional?',
    proposed: '',
    read: readOptional,
  });
  if (club === null || role === null) return null;
  const learned = learnedSpread(past, { metric, kind: club.kind, role: role.text });
  const found = { club: club.kind, role: role.text };
  const typed = readQuantity(metric);
  if (learned !== null && options.spread === undefined)
    return { ...found, sd: learned.sd, origin: { kind: 'own', learned }, ownToo: null };
  const band =
    options.spread !== undefined || typicalSpread(metric, club.kind, 'mid') === null
      ? 'mid'
      : await answer({
          flag: 'player',
          given: options.player,
          question: 'A good player, or one of a middle handicap: good or mid?',
          proposed: 'mid',
          choices: ['good', 'mid'],
          read: readBand,
        });
  if (band === null) return null;
  const typical = typicalSpread(metric, club.kind, band);
  const unit = unitFor(metric, shop?.defaults.units ?? 'yards');
  const proposed = typical === null ? null : amount(typical, unit);
  const name = metrics[metric].name;
  const none = dependsOnClub(metric) ? ' No usual one is known for such a club.' : ' No usual one is known.';
  const sd = await answer({
    flag: 'spread',
    given: options.spread,
    question: `The spread of ${name} to plan with, as a standard deviation with its unit?${typical === null ? none : ''}`,
    proposed,
    read: typed,
  });
  if (sd === null) return null;
  const isTypical = typical !== null && options.spread === undefined && sd.typed === proposed;
  return {
    ...found,
    sd: isTypical ? typical : sd.value,
    origin: isTypical ? { kind: 'typical', band } : { kind: 'typed' },
    ownToo: learned?.sd ?? null,
  };
}
