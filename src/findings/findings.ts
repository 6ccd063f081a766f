import { z } from 'zod';
import { problemKinds } from '../problems/kinds.ts';
import { count, id, number, words, type Frozen } from './shape/basics.ts';
import { claim, claimedSpread } from './shape/claimShape.ts';
import { design, order, plan } from './shape/designShape.ts';
import { fairnessCheck } from './shape/fairnessShape.ts';
import { contenderLanding, landing, landingEllipse, launchWindow } from './shape/landingShape.ts';
import { contenderSummary, metric, omnibus, spread, swing } from './shape/metricShape.ts';
import * as pairs from './shape/pairShape.ts';
import { pairYards } from './shape/yardsShape.ts';

const contender = z.strictObject({
  id: id('contender'),
  label: id('its name'),
  shots: count('shots recorded'),
  excluded: count('those of them left out'),
});

const problem = z.strictObject({
  kind: words(
    'kind of problem',
    Object.fromEntries(Object.entries(problemKinds).map(([kind, { title }]) => [kind, title])) as Readonly<
      Record<keyof typeof problemKinds, string>
    >,
  ),
  severity: words('how grave it is', {
    error: 'nothing can be published',
    warning: 'worth knowing',
  }),
  file: z.string().describe('path from the content folder'),
  line: z.int().nullable().describe('from 1; null for the whole file'),
  column: z.int().nullable().describe('from 1'),
  message: z.string().describe('what happened'),
});

/**
 * Everything the pages, charts, prose and downloads may say about a report, as numbers and ids, and every decision
 * about it. Canonical SI units, finite numbers only; what cannot be worked out is null.
 */
export const findingsSchema = z
  .strictObject({
    version: z.literal(2).describe('of this shape'),
    slug: id('of the report'),
    title: id('of the report'),
    date: z.iso.date().describe('day of the session'),
    units: z.literal('SI').describe('m, m/s, degrees, rpm, s'),
    contenders: z.array(contender).describe('in the order of the report'),
    design,
    metrics: z.array(metric).describe('main measures first'),
    straighter: z
      .array(pairs.pair)
      .nullable()
      .describe('distance from the target line, less being straighter; null without a side column'),
    explored: z
      .strictObject({
        looked: count('measures judged besides the main ones'),
        byChance: number('of them that show a difference by chance alone, on average'),
      })
      .describe('the family that every difference seen in other measures belongs to'),
    swing: swing.nullable().describe('whether the swing was the same with each; one golfer'),
    yards: z
      .array(pairYards)
      .describe('where the metres of each credited difference in a main carry come from'),
    landing: landing.nullable().describe('where the shots landed; null without carry and side'),
    launchWindow: launchWindow
      .nullable()
      .describe('modelled carry over launch and spin at one ball speed; one golfer'),
    claims: z.array(claim).describe("the shop's sentences with what the shots make of them"),
    fairness: z.array(fairnessCheck).describe('what a fair test has; no score is made of it'),
    caveats: z.array(pairs.overlay).describe('overlays of any pair of a main measure, each once'),
    problems: z.array(problem).describe('what intake found'),
    seed: z.string().describe('of every random draw, from the bytes of the session'),
  })
  .meta({ $id: 'urn:straightface:findings:2', title: 'Findings of a report' });

export type Findings = Frozen<z.output<typeof findingsSchema>>;

export type Interval = readonly [lower: number, upper: number];
export type OrderKind = z.output<typeof order>;
export type PlanStanding = z.output<typeof plan>;
export type Design = Frozen<z.output<typeof design>>;
export type ContenderSummary = Frozen<z.output<typeof contenderSummary>>;
export type Credit = z.output<typeof pairs.credit>;
/** Why a gap cannot be put down to the contender. */
export type OpenCause = z.output<typeof pairs.openBecause>;
export type OverlayId = z.output<typeof pairs.overlay>;
/** What the shots can tell about one gap, from its interval, 0 and the smallest gap that matters. */
export type VerdictId = z.output<typeof pairs.verdict>;
/** The answer as it is printed. */
export type StatusId = z.output<typeof pairs.status>;
export type Hold = Frozen<z.output<typeof pairs.hold>>;
export type NotJudged = Frozen<z.output<typeof pairs.notJudged>>;
export type PairFindings = Frozen<z.output<typeof pairs.pair>>;
export type HitterGap = Frozen<z.output<typeof pairs.hitterGap>>;
export type WhoGained = Frozen<z.output<typeof pairs.whoGained>>;
export type DeviceReach = Frozen<z.output<typeof pairs.deviceReach>>;
export type SwingFindings = Frozen<z.output<typeof swing>>;
export type SwingPair = SwingFindings['measures'][number]['pairs'][number];
export type SpreadFindings = Frozen<z.output<typeof spread>>;
export type LandingEllipse = Frozen<z.output<typeof landingEllipse>>;
export type ContenderLanding = Frozen<z.output<typeof contenderLanding>>;
export type LandingFindings = Frozen<z.output<typeof landing>>;
export type LaunchWindow = Frozen<z.output<typeof launchWindow>>;
export type GapMethod = z.output<typeof pairs.method>;
export type Omnibus = Frozen<z.output<typeof omnibus>>;
export type MetricFindings = Frozen<z.output<typeof metric>>;
export type ClaimStanding = Frozen<z.output<typeof claim>>;
export type StandingId = ClaimStanding['standing'];
export type ClaimedSpread = Frozen<z.output<typeof claimedSpread>>;
export type FairnessCheck = Frozen<z.output<typeof fairnessCheck>>;
export type FairnessId = FairnessCheck['id'];
export type PairYards = Frozen<z.output<typeof pairYards>>;
