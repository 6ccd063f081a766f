import type { z } from 'zod';
import { answer, isRealDate, meaning, oneOf, text, yesOrNo } from './answers.ts';
import { oneOrMore } from './collections.ts';
import { answersOf, type PublishedQuestion } from './question.ts';
import { strict } from './strict.ts';

/** That the hitter agreed to be shown, and on which day if it was noted. */
interface Consent {
  readonly date: string | null;
}

const consent = answer(
  meaning((typed): Consent | null => {
    const parts = /^(?:yes|true)(?:[\s,]+(\S+))?$/i.exec(typed);
    if (parts === null) return null;
    const date = parts[1] ?? null;
    return date === null || isRealDate(date) ? { date } : null;
  }),
  {
    expected: 'yes, or yes and the day: yes, 2026-04-11',
    cure: 'Ask the hitter; only shots of hitters who agreed may be published. Inside { } write "yes, 2026-04-11" in quotes.',
  },
  '`yes`, or `yes, 2026-04-01`',
  {
    type: ['string', 'boolean'],
    not: { const: false },
    pattern: '^\\s*([Yy][Ee][Ss]|[Tt][Rr][Uu][Ee])([\\s,]+\\d{4}-\\d{2}-\\d{2})?\\s*$',
    examples: ['yes'],
  },
).describe('that the hitter agreed to be shown, and on which day');

/** What is asked of who hit. What was not answered is absent: not recorded. */
export const hitterQuestions = {
  role: {
    answer: text('who hit, as a role: staff fitter, customer, professional'),
    drafted: 'Who is it, as a role: staff fitter, customer, professional?',
    // It is never missing.
    published: null,
  },
  hand: {
    answer: oneOf(['right', 'left']).describe('right- or left-handed').exactOptional(),
    drafted: 'Right- or left-handed: right or left?',
    // As one of two words.
    published: null,
  },
  handicap_band: {
    answer: text('a band of handicaps, such as 6-10').exactOptional(),
    drafted: 'In which band of handicaps, such as 6-10?',
    published: { words: 'a band of handicaps' },
  },
  link_to_shop: {
    answer: text('how the hitter is tied to the shop or to a maker').exactOptional(),
    drafted: 'Tied to the shop or to a maker, such as employed by the shop, or none?',
    published: { words: 'how the golfer is tied to the shop or to a maker' },
  },
  saw_club: {
    answer: yesOrNo.describe('whether the hitter could see which one it was').exactOptional(),
    drafted: 'Could the hitter see which one it was: yes or no?',
    published: { yesOrNo: 'whether the golfer could see which one it was' },
  },
  saw_numbers: {
    answer: yesOrNo.describe('whether the hitter could see the numbers').exactOptional(),
    drafted: 'Could the hitter see the numbers: yes or no?',
    published: { yesOrNo: 'whether the golfer could see the numbers' },
  },
  usual_club: {
    answer: text("the hitter's usual club and loft").exactOptional(),
    drafted: null,
    published: { words: "the golfer's usual club and loft" },
  },
  expectation: {
    answer: text('what the hitter expected beforehand').exactOptional(),
    drafted: null,
    published: { words: 'what the golfer expected beforehand' },
  },
  consent: {
    answer: consent,
    drafted: 'Did the hitter agree to be shown here: yes, or yes and the day?',
    published: null,
  },
  match: {
    answer: oneOrMore(text('the name of the hitter in the CSV'), 'the names of the hitter in the CSV')
      .describe('what the session files call this hitter; never printed')
      .exactOptional(),
    // A draft fills it in.
    drafted: null,
    published: null,
  },
} as const satisfies Readonly<Record<string, PublishedQuestion>>;

export const hitterAnswers = strict(answersOf(hitterQuestions));

type HitterAnswers = z.infer<typeof hitterAnswers>;

export interface Hitter extends HitterAnswers {
  readonly id: string;
}
