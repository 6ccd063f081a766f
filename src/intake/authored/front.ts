import { z } from 'zod';
import type { MetricId } from '../../trade/metrics.ts';
import { isoDate, oneOf, text, yesOrNo } from './answers.ts';
import { claims } from './claims.ts';
import { entriesOf, listOf, oneOrMore, type Keyed } from './collections.ts';
import { columns } from './columns.ts';
import { conditions } from './conditions.ts';
import { contenderAnswers, type Contender } from './contender.ts';
import { corrections, replies } from './corrections.ts';
import { exclusions } from './exclusions.ts';
import { hitterAnswers, type Hitter } from './hitter.ts';
import { interestAnswers, type Interests } from './interests.ts';
import { nameOf } from './nameAnswer.ts';
import { plainId } from './plainId.ts';
import { plan, type Plan } from './plan.ts';
import { better, matters, primary, type Better } from './primary.ts';
import { olderName } from './reportName.ts';
import { seen } from './seen.ts';
import { fileInside, sessionFiles } from './sessionFiles.ts';
import { sheet, type Sheet } from './sheet.ts';
import { strict } from './strict.ts';
import { telling } from './takes.ts';

const contenders = telling(
  z.union([
    telling(listOf(plainId, 'two to six contenders'), { inEditor: { minItems: 2, maxItems: 6 } }),
    entriesOf({
      structure: telling(z.record(plainId, contenderAnswers), {
        inEditor: { minProperties: 2, maxProperties: 6 },
      }),
      takes: { words: 'two to six contenders', inside: [['.<id>', contenderAnswers]] },
      expected: 'two to six contenders, each under its id',
      key: plainId,
      value: () => contenderAnswers,
    }),
  ]),
  {
    takes: {
      words: 'two to six contenders, each under its id; or a list of ids from `contenders/`',
      inside: [['.<id>', contenderAnswers]],
    },
  },
);

const hitters = entriesOf({
  structure: telling(z.record(plainId, hitterAnswers), { inEditor: { minProperties: 1 } }),
  takes: { words: 'each hitter under an id of its own', inside: [['.<id>', hitterAnswers]] },
  expected: 'who hit, each under an id of its own',
  key: plainId,
  value: () => hitterAnswers,
});

const withdrawal = strict({
  date: isoDate.describe('the day of the withdrawal'),
  reason: text('why the report was withdrawn'),
});

type Withdrawal = z.infer<typeof withdrawal>;

/** What an editor asks for with a status. */
const needs = (status: string, key: string) => ({
  if: { properties: { status: { const: status } }, required: ['status'] },
  then: { required: [key] },
});

/** The front matter as one file answers it. */
export const frontAnswers = telling(
  strict({
    title: nameOf({ what: 'the title of the report' }),
    date: isoDate.describe('the day of the session'),
    published: isoDate.describe('the day of publication').exactOptional(),
    summary: text('a summary in one or two sentences').exactOptional(),
    status: oneOf(['draft', 'published', 'withdrawn', 'superseded']).describe(
      'a draft is never in `dist/`; of a withdrawn report a dated notice stays',
    ),
    withdrawn: withdrawal.describe('needed with `status: withdrawn`').exactOptional(),
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
    rows: telling(oneOf(['not-in-hit-order']), {
      drafted: 'Write not-in-hit-order if the rows do not stand in the order of hitting.',
    })
      .describe('where the rows do not stand in the order of hitting; state it in `plan.order`')
      .exactOptional(),
    order_sheet: fileInside
      .describe('the file that tells what was hit with each shot, where the session file does not')
      .exactOptional(),
    columns: columns.describe('headings that are not recognised, or whose unit is not known').exactOptional(),
    modelled: oneOrMore(oneOf(['carry', 'apex', 'descent_angle']), 'carry, apex or descent_angle')
      .describe('what our flight model works out where the files have no column for it; marked as modelled')
      .exactOptional(),
    hitters: hitters.describe('who hit, without names; the same golfer has the same id in every report'),
    conditions: conditions
      .describe('where and in front of what it was hit; what is left out is printed as "not recorded"')
      .exactOptional(),
    exclusions: exclusions
      .describe('what was left out; shown all the same, and never deleted')
      .exactOptional(),
    interests: interestAnswers.describe('what the shop has to gain').exactOptional(),
    claims: claims.describe('sentences that the build compares with the shots').exactOptional(),
    corrections: corrections.exactOptional(),
    replies: replies.exactOptional(),
    seen: seen.exactOptional(),
  }),
  {
    inEditor: {
      allOf: [needs('withdrawn', 'withdrawn'), needs('superseded', 'superseded_by')],
    },
  },
);

export type FrontAnswers = z.infer<typeof frontAnswers>;

/** Answers that are empty where there is none. */
type Filled =
  | 'aliases'
  | 'inventedData'
  | 'columns'
  | 'modelled'
  | 'exclusions'
  | 'claims'
  | 'corrections'
  | 'replies'
  | 'seen'
  | 'matters'
  | 'conditions';

/** Answers that the front matter has in another form; all others it has as they are. */
type Completed =
  | 'published'
  | 'summary'
  | 'withdrawn'
  | 'supersededBy'
  | 'held'
  | 'plan'
  | 'rows'
  | 'orderSheet'
  | 'contenders'
  | 'hitters'
  | 'better'
  | 'interests';

/** The front matter with build sheets and the shop's defaults filled in: all that a report stands on. */
export interface Front extends Omit<FrontAnswers, Filled | Completed>, Required<Pick<FrontAnswers, Filled>> {
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
  /** Only where it differs from the metric's own direction. */
  readonly better: Keyed<MetricId, Better>;
  readonly interests: Interests;
}
