import { tooLittle } from '../prose/english/answerWords.ts';
import { metricIds, metrics } from '../trade/metrics.ts';
import { clubKinds } from '../trade/clubKind.ts';
import type { PlanKey } from '../planning/planAnswers.ts';
import { planQuestions, type PlanQuestion } from '../planning/planQuestions.ts';
import { usualExclusionRule, usualWarmUp } from '../planning/usualRules.ts';
import { asChoice, type AnswerField, type Choice } from './answerFields.ts';

/** One question of a plan as a form asks it. */
export interface PlanField extends AnswerField {
  readonly key: PlanKey;
}

/** Questions of a plan that belong together. */
interface PlanGroup {
  readonly id: string;
  readonly heading: string;
  readonly fields: readonly PlanField[];
}

interface AskedAs {
  readonly label: string;
  readonly help?: string | null;
  readonly choices?: readonly Choice[];
  readonly required?: boolean;
}

const field = (key: PlanKey, { label, help = null, choices = [], required = false }: AskedAs): PlanField => ({
  key,
  path: ['plan', key],
  name: key,
  label,
  help,
  control: choices.length === 0 ? 'text' : 'one-of',
  choices,
  usual: null,
  required,
  typed: [],
});

/** A question as a label, and what it names as help or as choices. */
const asked = (key: PlanKey, question: PlanQuestion, more: Omit<AskedAs, 'label'> = {}): PlanField =>
  field(key, {
    label: `${question.asks}?`,
    help: more.choices === undefined && question.among !== null ? `Such as ${question.among}` : null,
    ...more,
  });

/** The names of what is compared; its controls are several. */
export const contenderField: PlanField = asked('contender', planQuestions.contender, {
  help: 'Compare two or three if you can: spread over four, the same shots tell less. Empty boxes do not count',
  required: true,
});

/**
 * All that a plan is asked at the desk, in the words of the command where that asks it too.
 *
 * @param metric what is judged by, in words
 */
export const planGroups = (metric: string): readonly PlanGroup[] => [
  {
    id: 'compared',
    heading: 'What you compare',
    fields: [
      contenderField,
      asked('varied', planQuestions.varied, { required: true }),
      asked('club', planQuestions.club, {
        choices: [...clubKinds, 'other'].map(asChoice),
        help: 'Needed unless the names say it, as “Alder driver” does',
        required: true,
      }),
      asked('metric', planQuestions.metric, {
        required: true,
        help: 'Chosen now, so that nobody chooses it by the result',
      }),
      asked('matters', planQuestions.matters(metric), {
        required: true,
        help: `A number with its unit, such as 5 yd; a smaller gap is reported as ${tooLittle}`,
      }),
    ],
  },
  {
    id: 'golfer',
    heading: 'Who hits',
    fields: [
      asked('hitter', planQuestions.hitter),
      asked('player', planQuestions.player, {
        choices: [
          { value: 'good', words: 'a good player' },
          { value: 'mid', words: 'of a middle handicap' },
        ],
        help: 'Counts only while your own sessions do not tell how the shots spread',
        required: true,
      }),
      asked('spread', planQuestions.spread(metric, null), {
        help: 'Leave it empty: your own sessions tell it where there are enough, else the usual one is taken',
      }),
    ],
  },
  {
    id: 'hitting',
    heading: 'How it is hit',
    fields: [
      asked('order', planQuestions.order, {
        choices: [
          { value: 'rotation', words: 'rounds: one shot with each, in a new random order every round' },
          { value: 'mini-blocks-2', words: 'spells of two shots, in random order' },
          { value: 'mini-blocks-3', words: 'spells of three shots, in random order' },
        ],
        required: true,
      }),
      asked('shots', planQuestions.shots, {
        required: true,
        help: 'What is proposed allows for sixty full swings in all',
      }),
    ],
  },
];

/** What is written down beforehand and changes no arithmetic. */
export const ruleFields: readonly PlanField[] = [
  asked('expectation', planQuestions.expectation),
  field('exclusion-rule', {
    label: 'By which rule is a shot left out?',
    help: `Left empty, the plan says: ${usualExclusionRule}`,
  }),
  field('stopping-rule', {
    label: 'When does hitting end?',
    help: 'Left empty, the plan says: after the planned number of shots with each',
  }),
  field('warm-up', {
    label: 'How does the golfer warm up?',
    help: `Left empty, the plan says: ${usualWarmUp}`,
  }),
];

/** What can be put otherwise later, the address apart. */
export const nameFields: readonly PlanField[] = [
  field('title', { label: 'The title of the report', help: 'Left empty, the names of what is compared' }),
  field('question', { label: 'What the test is to answer, in one sentence' }),
  field('slug', {
    label: 'A short name for its address',
    help: 'Small letters, digits and hyphens; left empty, it comes from the title',
  }),
];

export const metricWords: readonly string[] = metricIds.map((id) => metrics[id].name);
