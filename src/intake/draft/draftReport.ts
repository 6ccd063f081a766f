import { z } from 'zod';
import { metrics, type MetricId } from '../../trade/metrics.ts';
import { frontAnswers } from '../authored/front.ts';
import { interestKeys, type InterestAnswers, type InterestQuestion } from '../authored/interests.ts';
import { schemaLine } from '../authored/schemaLine.ts';
import { sheetItems, type SheetItem } from '../authored/sheet.ts';
import type { Shop } from '../authored/shop.ts';
import { firstTold, takesOf } from '../authored/takes.ts';
import { ask, comment, mustBeAnswered } from './ask.ts';
import { contenderIds } from './contenderIds.ts';
import { draftColumns } from './draftColumns.ts';
import { draftConditions } from './draftConditions.ts';
import { draftContenders } from './draftContenders.ts';
import { draftHitters } from './draftHitters.ts';
import { decidedPlan, openPlan, type DecidedPlan } from './draftPlan.ts';
import type { OpenColumn } from './openColumns.ts';
import type { Understood } from './understood.ts';
import { yamlList, yamlScalar } from './yamlScalar.ts';

/** All that a draft is written from. */
interface DraftFacts {
  readonly slug: string;
  readonly title: string;
  /** The day in the name of the file; what the times say goes before it. */
  readonly dateInName: string | null;
  /** The noun of what differs, where a heading says it. */
  readonly varied: string | null;
  /** Names of the files beside the report. */
  readonly session: readonly string[];
  readonly understood: Understood;
  /** The smallest gap in a metric that matters, with its unit, where the shop has not said so itself. */
  readonly usualGap: (metric: MetricId) => string;
  /** Columns whose unit must be stated. */
  readonly openColumns: readonly OpenColumn[];
  readonly shop: Shop | null;
  /** What was decided before hitting, where the draft is made before the session. */
  readonly planned?: Planned;
}

/** Answers that a plan gives before there is a session. */
interface Planned {
  readonly plan: DecidedPlan;
  readonly question: string | null;
  readonly primary: MetricId;
  /** The smallest gap in it that matters, as typed with its unit. */
  readonly matters: string;
  /** Name of the order sheet beside the report. */
  readonly orderSheet: string;
  readonly hitterRole: string | null;
}

/**
 * The text of `report.md` for a session: one answer a line under its question, what the files tell filled in, the
 * rest left empty.
 */
export function draftReport(facts: DraftFacts): string {
  const { slug, title, varied, session, understood, shop, planned } = facts;
  const primary = planned?.primary ?? primaryOf(facts);
  const [first = 'a', second = 'b'] = contenderIds(understood.contenders.map(({ name }) => name));
  const names = understood.columns.map(({ metric }) => metric).join(', ');
  const sections: readonly (readonly string[])[] = [
    comment(
      `${planned === undefined ? `A draft made from ${session.map(yamlScalar).join(', ')}` : 'A draft made before hitting'}. ` +
        'Write each answer behind its colon. ' +
        `"${mustBeAnswered.replace('.', '')}": nothing is published without it. Whatever else stays empty is printed ` +
        `as "not recorded". What is still open: npm run check -- ${slug}`,
    ),
    ask({ key: 'title', question: 'The title?', answer: yamlScalar(title) }),
    date(facts),
    ask({
      key: 'question',
      question: 'What did the test set out to answer, in one sentence?',
      answer: planned?.question == null ? '' : yamlScalar(planned.question),
      must: planned?.question == null,
    }),
    ask({
      key: 'varied',
      question: 'The one thing that differed: head, shaft, ball, loft, grooves?',
      answer: varied === null ? '' : yamlScalar(varied),
      must: varied === null,
    }),
    draftContenders(understood.contenders),
    held(varied),
    ask({
      key: 'primary',
      question: `The one metric, two at most, that was chosen before hitting${names === '' ? '' : `, of ${names}`}?`,
      answer: primary ?? '',
      must: primary === null,
    }),
    planned === undefined ? matters(primary, facts) : plannedMatters(planned),
    planned === undefined ? [] : afterHitting(planned),
    planned !== undefined
      ? []
      : ask({
          key: 'session',
          question: 'The session files beside this one. They are never edited.',
          answer: session.length === 1 ? yamlScalar(session[0] ?? '') : yamlList(session),
        }),
    draftColumns(facts.openColumns),
    ...further(),
    draftHitters(understood.hitters, slug, planned?.hitterRole ?? null),
    draftConditions({ columns: understood.columns, byShop: shop?.defaults.conditions ?? {}, varied }),
    planned === undefined ? openPlan() : decidedPlan(planned.plan),
    ask({
      key: 'exclusions',
      question: `Shots to leave out, such as [{contender: ${first}, shot: 7, rule: the rule, reason: what happened}]? Those marked in the file are left out already.`,
    }),
    interests(shop?.interests ?? {}),
    ask({
      key: 'claims',
      question: `Sentences to be checked against the shots, such as [{say: It carries farther, metric: carry, more: ${first}, than: ${second}}]?`,
    }),
    ask({
      key: 'status',
      question: 'draft, or published once everything is answered.',
      answer: 'draft',
    }),
    comment(
      'Below the next line of dashes: two or three paragraphs on what you saw. Figures come from the shots, ' +
        `such as {{ mean ${primary ?? 'carry'} ${first} }}.`,
    ),
  ];
  return `---\n${schemaLine('report', '../../')}\n${sections
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n')}\n---\n`;
}

/** What the schema itself has a draft ask, and needs no more than its line. */
function further(): readonly (readonly string[])[] {
  return (takesOf(frontAnswers).inside ?? []).flatMap(([step, schema]) => {
    const question = firstTold(schema, 'drafted');
    if (question === undefined) return [];
    return [ask({ key: step.slice(1), question, must: !(schema instanceof z.ZodExactOptional) })];
  });
}

/** Carry where there is one: what most customers ask for (common practice, no source). */
function primaryOf({ understood, openColumns: open }: DraftFacts): MetricId | null {
  const there = [...understood.columns, ...open].map(({ metric }) => metric);
  return (['carry', 'total', 'ball_speed'] as const).find((metric) => there.includes(metric)) ?? null;
}

function date({ understood: { days }, dateInName }: DraftFacts): readonly string[] {
  const question = 'The day of the session, as year-month-day?';
  const [day] = days;
  if (days.length > 1) {
    const shown = days.slice(0, 6).join(', ');
    return ask({ key: 'date', question: `${question} The file says ${shown}.`, must: true });
  }
  if (day !== undefined) return ask({ key: 'date', question: `${question} From the file.`, answer: day });
  if (dateInName !== null)
    return ask({ key: 'date', question: `${question} From the name of the file.`, answer: dateInName });
  return ask({ key: 'date', question, must: true });
}

function held(varied: string | null): readonly string[] {
  const items: readonly SheetItem[] = ['head', 'loft', 'shaft', 'length', 'grip'];
  return [
    ...comment('What was the same for all? Leave out what differed.'),
    'held:',
    ...items
      .filter((item) => item !== varied)
      .flatMap((item) => ask({ key: item, question: null, indent: 2 })),
    ...comment(
      `More keys: ${Object.keys(sheetItems)
        .filter((item) => /^(lie|swing|total|settings)/.test(item))
        .join(', ')}.`,
      2,
    ),
  ];
}

function matters(primary: MetricId | null, { shop, usualGap }: DraftFacts): readonly string[] {
  if (primary === null) return [];
  const byShop = shop?.defaults.matters[primary];
  if (byShop !== undefined)
    return comment(
      `The smallest gap in ${metrics[primary].name} that matters is in shop.yaml: ${byShop.typed}.`,
    );
  return [
    'matters:',
    ...ask({
      key: primary,
      question: `The smallest difference in ${metrics[primary].name} that a customer should care about? Left empty, it is what the trade takes: ${usualGap(primary)}.`,
      indent: 2,
    }),
  ];
}

function plannedMatters({ primary, matters: gap }: Planned): readonly string[] {
  return [
    ...comment(`The smallest gap in ${metrics[primary].name} that a customer should care about, as planned.`),
    'matters:',
    `  ${primary}: ${yamlScalar(gap)}`,
  ];
}

function afterHitting({ orderSheet }: Planned): readonly string[] {
  return [
    ...ask({
      key: 'session',
      question:
        'The session file beside this one. After hitting, npm run draft -- FILE.csv puts it there and fills this in.',
      must: true,
    }),
    ...ask({
      key: 'order_sheet',
      question:
        'Tells what was hit with each shot, by its number. Take the line out if the session file names what was hit.',
      answer: yamlScalar(orderSheet),
    }),
  ];
}

const moneyQuestions: Readonly<Record<InterestQuestion, string>> = {
  paid_by: 'Who paid for the test?',
  commission_or_gifts: 'Is there a commission, sponsorship or gift, and which? "none" is an answer.',
  seen_before:
    'Who outside the shop saw the report, or had a say in it, before publication? "nobody" is an answer.',
};

function interests(byShop: InterestAnswers): readonly string[] {
  const answered: Readonly<Record<InterestQuestion, string | undefined>> = {
    paid_by: byShop.paidBy?.words,
    commission_or_gifts: byShop.commissionOrGifts?.words,
    seen_before: byShop.seenBefore?.words,
  };
  const open = interestKeys.filter((key) => answered[key] === undefined);
  const closed = interestKeys.filter((key) => answered[key] !== undefined);
  const byShopAlone = closed.map((key) => `${key} (${answered[key] ?? ''})`).join(', ');
  return [
    ...comment(closed.length === 0 ? '' : `shop.yaml answers ${byShopAlone}; write here only what differs.`),
    'interests:',
    ...open.flatMap((key) => ask({ key, question: moneyQuestions[key], must: true, indent: 2 })),
    ...ask({ key: 'supplied', question: 'Anything to add on who supplied what was compared?', indent: 2 }),
  ];
}
