import type { MetricId } from '../../trade/metrics.ts';
import type { ColumnOverride } from '../shots/shotFile.ts';
import { isoDate, oneOf, text, yesOrNo } from './answers.ts';
import { claims, type Claim } from './claims.ts';
import { entriesOf, listOf, oneOrMore, type Keyed } from './collections.ts';
import { columns } from './columns.ts';
import { conditions, type Conditions } from './conditions.ts';
import { contenderAnswers, type Contender, type ContenderAnswers } from './contender.ts';
import { corrections, replies, type Correction, type Reply } from './corrections.ts';
import { exclusions, type ExclusionEntry } from './exclusions.ts';
import { hitterAnswers, type Hitter, type HitterAnswers } from './hitter.ts';
import { interestAnswers, type InterestAnswers, type Interests } from './interests.ts';
import { nameOf } from './nameAnswer.ts';
import { plainId } from './plainId.ts';
import { plan, type Plan } from './plan.ts';
import { better, matters, primary, type Better } from './primary.ts';
import type { Quantity } from './quantity.ts';
import { seen, type SeenWarning } from './seen.ts';
import { fileInside, sessionFiles } from './sessionFiles.ts';
import { olderName } from './reportName.ts';
import { sheet, type Sheet } from './sheet.ts';
import { strict } from './strict.ts';
import { takesOf } from './takes.ts';
import { readWith, schemaOf, type Schema, type Understood } from './trouble.ts';

export type Status = 'draft' | 'published' | 'withdrawn' | 'superseded';

/** What the flight model can stand in for. */
export type ModelledAnswer = 'carry' | 'apex' | 'descent_angle';

export interface Withdrawal {
  readonly date: string;
  readonly reason: string;
}

/** Answers that mean the same before and after the shop's defaults have been added. */
interface Common {
  readonly title: string;
  /** The day of the session. */
  readonly date: string;
  /** The day of publication. */
  readonly published?: string;
  readonly summary?: string;
  readonly status: Status;
  readonly withdrawn?: Withdrawal;
  /** The slug of the report that replaces this one. */
  readonly supersededBy?: string;
  /** Names under which it stood before; the older addresses lead to it. */
  readonly aliases?: readonly string[];
  /** Made-up shots, shown as such. */
  readonly inventedData?: boolean;
  readonly question: string;
  /** The noun of the one thing that differs: head, shaft, ball. */
  readonly varied: string;
  readonly held?: Sheet;
  readonly primary: readonly MetricId[];
  readonly plan?: Plan;
  readonly rows?: 'not-in-hit-order';
  /** The file that tells what was hit with each shot, where the monitor does not record it. */
  readonly orderSheet?: string;
  readonly columns?: Keyed<MetricId, ColumnOverride>;
  /** Metrics that our flight model may stand in for as a primary one, where the files have no column. */
  readonly modelled?: readonly ModelledAnswer[];
  readonly exclusions?: readonly ExclusionEntry[];
  readonly claims?: readonly Claim[];
  readonly corrections?: readonly Correction[];
  readonly replies?: readonly Reply[];
  /** Warnings that were read and stay quiet. */
  readonly seen?: readonly SeenWarning[];
}

/** The front matter as one file answers it. */
export interface FrontAnswers extends Common {
  readonly contenders: readonly string[] | readonly (readonly [string, ContenderAnswers])[];
  readonly better?: Better | Keyed<MetricId, Better>;
  readonly matters?: Keyed<MetricId, Quantity>;
  readonly session: readonly string[];
  readonly hitters: readonly (readonly [string, HitterAnswers])[];
  readonly conditions?: Conditions;
  readonly interests?: InterestAnswers;
}

/** The front matter with build sheets and the shop's defaults filled in: all that a report stands on. */
export interface Front extends Omit<
  Required<Common>,
  'published' | 'summary' | 'withdrawn' | 'supersededBy' | 'held' | 'plan' | 'rows' | 'orderSheet'
> {
  readonly published: string | null;
  readonly summary: string | null;
  readonly withdrawn: Withdrawal | null;
  readonly supersededBy: string | null;
  readonly held: Sheet;
  readonly plan: Plan | null;
  /** Whether the rows of the file stand in the order of hitting. */
  readonly rowsInHitOrder: boolean;
  readonly orderSheet: string | null;
  /** In the order of the front matter. */
  readonly contenders: readonly Contender[];
  readonly hitters: readonly Hitter[];
  readonly session: readonly string[];
  /** Only where it differs from the metric's own direction. */
  readonly better: Keyed<MetricId, Better>;
  /** The report's gaps, else the shop's; a metric in neither keeps its built-in gap. */
  readonly matters: Keyed<MetricId, Quantity>;
  readonly conditions: Conditions;
  readonly interests: Interests;
}

const contenderMap = entriesOf(plainId, contenderAnswers, 'two to six contenders, each under its id', {
  words: 'two to six contenders, each under its id; or a list of ids from `contenders/`',
  inside: [['.<id>', contenderAnswers]],
});
const contenderList = listOf(plainId, 'two to six contenders');

const contenders = schemaOf(takesOf(contenderMap), (answer): Understood<FrontAnswers['contenders']> =>
  Array.isArray(answer) ? readWith(contenderList, answer) : readWith(contenderMap, answer),
);

export const frontAnswers: Schema<FrontAnswers> = strict({
  title: nameOf({ what: 'the title of the report' }),
  date: isoDate.describe('the day of the session'),
  published: isoDate.describe('the day of publication').exactOptional(),
  summary: text('a summary in one or two sentences').exactOptional(),
  status: oneOf(['draft', 'published', 'withdrawn', 'superseded']).describe(
    'a draft is never in `dist/`; of a withdrawn report a dated notice stays',
  ),
  withdrawn: strict({
    date: isoDate.describe('the day of the withdrawal'),
    reason: text('why the report was withdrawn'),
  })
    .describe('needed with `status: withdrawn`')
    .exactOptional(),
  superseded_by: plainId
    .describe('the name of the report that replaces this one; needed with `status: superseded`')
    .exactOptional(),
  aliases: listOf(olderName, 'a list of names that the report had before')
    .describe('names that its folder had before: the old addresses lead to it')
    .exactOptional(),
  invented_data: yesOrNo.describe('`yes` prints "Invented data" on the page').exactOptional(),
  question: text('what the test set out to answer, in one sentence'),
  varied: nameOf({ what: 'the one thing that differs: head, shaft, ball, loft, grooves' }),
  held: sheet.describe('what was the same for all').exactOptional(),
  contenders: contenders.describe('what is compared'),
  primary: primary.describe('the metric, two at most, that was chosen before hitting'),
  better: better
    .describe("which way is better, where the metric's own direction does not hold")
    .exactOptional(),
  matters: matters.describe('the smallest gap that a customer should care about').exactOptional(),
  plan: plan.describe('what was decided before hitting').exactOptional(),
  session: sessionFiles.describe('the shots; raw files are never edited'),
  rows: oneOf(['not-in-hit-order'])
    .describe('where the rows do not stand in the order of hitting; state it in `plan.order`')
    .exactOptional(),
  order_sheet: fileInside
    .describe('the file that tells what was hit with each shot, where the session file does not')
    .exactOptional(),
  columns: columns.describe('headings that are not recognised, or whose unit is not known').exactOptional(),
  modelled: oneOrMore(oneOf(['carry', 'apex', 'descent_angle']), 'carry, apex or descent_angle')
    .describe('what our flight model works out where the files have no column for it; marked as modelled')
    .exactOptional(),
  hitters: entriesOf(plainId, hitterAnswers, 'who hit, each under an id of its own', {
    words: 'each hitter under an id of its own',
    inside: [['.<id>', hitterAnswers]],
  }).describe('who hit, without names; the same golfer has the same id in every report'),
  conditions: conditions
    .describe('where and in front of what it was hit; what is left out is printed as "not recorded"')
    .exactOptional(),
  exclusions: exclusions.describe('what was left out; shown all the same, and never deleted').exactOptional(),
  interests: interestAnswers.describe('what the shop has to gain').exactOptional(),
  claims: claims.describe('sentences that the build compares with the shots').exactOptional(),
  corrections: corrections.exactOptional(),
  replies: replies.exactOptional(),
  seen: seen.exactOptional(),
});
