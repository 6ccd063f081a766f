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
import { plainId } from './plainId.ts';
import { plan, type Plan } from './plan.ts';
import { better, matters, primary, type Better } from './primary.ts';
import type { Quantity } from './quantity.ts';
import { fileInside, sessionFiles } from './sessionFiles.ts';
import { sheet, type Sheet } from './sheet.ts';
import { strict } from './strict.ts';
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

const contenderMap = entriesOf(plainId, contenderAnswers, 'two to six contenders, each under its id');
const contenderList = listOf(plainId, 'two to six contenders');

const contenders = schemaOf((answer): Understood<FrontAnswers['contenders']> =>
  Array.isArray(answer) ? readWith(contenderList, answer) : readWith(contenderMap, answer),
);

export const frontAnswers: Schema<FrontAnswers> = strict({
  title: text('the title of the report'),
  date: isoDate,
  published: isoDate.exactOptional(),
  summary: text('a summary in one or two sentences').exactOptional(),
  status: oneOf(['draft', 'published', 'withdrawn', 'superseded']),
  withdrawn: strict({ date: isoDate, reason: text('why the report was withdrawn') }).exactOptional(),
  superseded_by: plainId.exactOptional(),
  invented_data: yesOrNo.exactOptional(),
  question: text('what the test set out to answer, in one sentence'),
  varied: text('the one thing that differs: head, shaft, ball, loft, grooves'),
  held: sheet.exactOptional(),
  contenders,
  primary,
  better: better.exactOptional(),
  matters: matters.exactOptional(),
  plan: plan.exactOptional(),
  session: sessionFiles,
  rows: oneOf(['not-in-hit-order']).exactOptional(),
  order_sheet: fileInside.exactOptional(),
  columns: columns.exactOptional(),
  modelled: oneOrMore(
    oneOf(['carry', 'apex', 'descent_angle']),
    'carry, apex or descent_angle',
  ).exactOptional(),
  hitters: entriesOf(plainId, hitterAnswers, 'who hit, each under an id of its own'),
  conditions: conditions.exactOptional(),
  exclusions: exclusions.exactOptional(),
  interests: interestAnswers.exactOptional(),
  claims: claims.exactOptional(),
  corrections: corrections.exactOptional(),
  replies: replies.exactOptional(),
});
