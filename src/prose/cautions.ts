import type { Findings, MetricFindings, PairFindings, VerdictId } from '../findings/findings.ts';
import { countsAsDifferent } from '../findings/swing.ts';
import { primaryMetrics } from './answers.ts';
import { pairAnswer } from './pairAnswer.ts';
import type { About, CalculatedHow, Caution, CautionFacts, CautionFactsOf } from './statement.ts';

/** Cautions in the order of their weight. */
const gravity: readonly CautionFacts['overlay'][] = [
  'one-after-another',
  'order-unknown',
  'order-drift',
  'order-lever',
  'order-few-visits',
  'depends-on-left-out',
  'uneven-readings',
  'matters-unusual',
  'golfers-apart',
  'visits-alike',
  'mixed-with-swing',
  'leans',
  'rests-on-one-shot',
  'near-device',
  'modelled-reading',
  'few-shots',
];

/** Cautions that an answer has in its own words: that the order leaves the cause open, that checks do not confirm it. */
const inTheAnswer: readonly CautionFacts['overlay'][] = [
  'one-after-another',
  'order-unknown',
  'order-drift',
  'order-lever',
  'order-few-visits',
  'leans',
];

/** The cautions of a report's main answers, the gravest first, those of one weight in the order of the measures. */
export function cautionsOf(findings: Findings): readonly Caution[] {
  const all = primaryMetrics(findings).flatMap((metric) => cautionsFor(metric, findings));
  return gravity.flatMap((overlay) => all.filter(({ facts }) => facts.overlay === overlay));
}

/** The cautions of the answers in one metric, the gravest first, each with the pairs that it bears on. */
export function cautionsFor(metric: MetricFindings, findings: Findings): readonly Caution[] {
  return gravity.flatMap((overlay): Caution[] => {
    const pairs = metric.pairs.filter(
      ({ overlays, verdict }) => verdict !== 'not-judged' && overlays.includes(overlay),
    );
    if (pairs.length === 0) return [];
    return [
      {
        kind: 'caution',
        about: { of: 'metric', metric: metric.id },
        facts: factsOf(overlay, pairs, metric, findings),
        pairs: pairs.map((pair) => pairAnswer(pair, metric, findings.design)),
      },
    ];
  });
}

/** Whether a caution bears on what is told of this pair, metric or report. */
export function bearsOn({ about: own, pairs }: Caution, about: About): boolean {
  if (about.of === 'report') return true;
  if (own.metric !== about.metric) return false;
  return about.of === 'metric' || pairs.some((pair) => pair.about.a === about.a && pair.about.b === about.b);
}

/** The gravest caution that an answer does not have in its own words; null where there is none. */
export function gravestBeside(cautions: readonly Caution[]): Caution | null {
  return cautions.find(({ facts }) => !inTheAnswer.includes(facts.overlay)) ?? null;
}

function factsOf(
  overlay: CautionFacts['overlay'],
  pairs: readonly PairFindings[],
  metric: MetricFindings,
  findings: Findings,
): CautionFacts {
  switch (overlay) {
    case 'one-after-another':
    case 'order-unknown':
    case 'order-drift':
    case 'order-lever':
    case 'order-few-visits': {
      const drifts = pairs.flatMap(({ driftNeeded }) =>
        driftNeeded === null ? [] : [Math.abs(driftNeeded)],
      );
      return { overlay, drift: drifts.length === 0 ? null : Math.min(...drifts) };
    }
    case 'depends-on-left-out':
      return { overlay, leftOut: leftOutOf(pairs, findings), whole: wholeOf(pairs) };
    case 'uneven-readings':
      return { overlay, of: missingMore(pairs, metric, findings) };
    case 'matters-unusual':
      return {
        overlay,
        matters: metric.matters,
        from: metric.mattersFrom,
        onRecord: findings.design.plannedInAdvance,
      };
    case 'mixed-with-swing':
      return { overlay, measures: measuresOf(pairs, findings) };
    case 'near-device':
      return { overlay, accuracy: pairs[0]?.device?.accuracy ?? null };
    case 'modelled-reading':
      return { overlay, by: calculated(metric) };
    case 'few-shots':
      return { overlay, detectable: metric.detectable };
    case 'visits-alike':
    case 'leans':
    case 'rests-on-one-shot':
    case 'golfers-apart':
      return { overlay };
  }
}

/** How many shots were left out of any of these pairs. */
function leftOutOf(pairs: readonly PairFindings[], { contenders }: Findings): number {
  const ids = pairs.flatMap(({ a, b }): readonly string[] => [a, b]);
  return contenders.reduce((sum, { id, excluded }) => sum + (ids.includes(id) ? excluded : 0), 0);
}

/** What all of these pairs would come to with every shot counted; null where they would come to different things. */
function wholeOf(pairs: readonly PairFindings[]): VerdictId | null {
  const [first, ...others] = pairs.map(({ withLeftOut }) => withLeftOut?.verdict ?? null);
  return first !== undefined && others.every((verdict) => verdict === first) ? first : null;
}

/** Of each pair the one of which a greater share of counted shots has no reading. */
function missingMore(
  pairs: readonly PairFindings[],
  { byContender }: MetricFindings,
  { contenders }: Findings,
): readonly string[] {
  const share = (id: string): number => {
    const own = contenders.find((one) => one.id === id);
    const counted = (own?.shots ?? 0) - (own?.excluded ?? 0);
    const read = byContender.find((one) => one.id === id)?.n ?? 0;
    return counted === 0 ? 0 : (counted - read) / counted;
  };
  return [...new Set(pairs.map(({ a, b }) => (share(a) > share(b) ? a : b)))];
}

/** What of the swing differed between any of these pairs, and what that is worth. */
function measuresOf(
  pairs: readonly PairFindings[],
  { swing }: Findings,
): CautionFactsOf<'mixed-with-swing'>['measures'] {
  if (swing === null) return [];
  return swing.measures.flatMap(({ id, pairs: own }) => {
    const differing = own
      .filter(
        ({ a, b, answer }) => answer === 'different' && pairs.some((pair) => pair.a === a && pair.b === b),
      )
      .flatMap(({ worth, across }) =>
        worth !== null && (across === null || countsAsDifferent(worth, swing.margin))
          ? [{ ...worth, metric: swing.metric }]
          : (across ?? []),
      );
    const [first] = differing;
    if (first === undefined) return [];
    const ends = differing.flatMap(({ metric, ci }) => (metric === first.metric ? ci.map(Math.abs) : []));
    return [{ id, worth: [Math.min(...ends), Math.max(...ends)] as const, in: first.metric }];
  });
}

function calculated({ readBy, class: kind, looksEstimated }: MetricFindings): CalculatedHow {
  if (readBy === 'flight-model') return 'flight-model';
  if (looksEstimated) return 'looks-estimated';
  return kind === 'estimated' ? 'estimated' : 'calculated';
}
