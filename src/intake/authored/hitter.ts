import type { z } from 'zod';
import { answer, isRealDate, meaning, oneOf, text, yesOrNo } from './answers.ts';
import { oneOrMore } from './collections.ts';
import { answersOf, question, required, type Questions } from './question.ts';
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
  // Published apart, as it is never missing.
  role: required(
    text('who hit, as a role: staff fitter, customer, professional'),
    'Who is it, as a role: staff fitter, customer, professional?',
  ),
  // Published as one of two words.
  hand: question(
    oneOf(['right', 'left']).describe('right- or left-handed'),
    'Right- or left-handed: right or left?',
  ),
  handicap_band: question(
    text('a band of handicaps, such as 6-10'),
    'In which band of handicaps, such as 6-10?',
    { published: { words: 'a band of handicaps' } },
  ),
  link_to_shop: question(
    text('how the hitter is tied to the shop or to a maker'),
    'Tied to the shop or to a maker, such as employed by the shop, or none?',
    { published: { words: 'how the golfer is tied to the shop or to a maker' } },
  ),
  saw_club: question(
    yesOrNo.describe('whether the hitter could see which one it was'),
    'Could the hitter see which one it was: yes or no?',
    { published: { yesOrNo: 'whether the golfer could see which one it was' } },
  ),
  saw_numbers: question(
    yesOrNo.describe('whether the hitter could see the numbers'),
    'Could the hitter see the numbers: yes or no?',
    { published: { yesOrNo: 'whether the golfer could see the numbers' } },
  ),
  usual_club: question(text("the hitter's usual club and loft"), null, {
    published: { words: "the golfer's usual club and loft" },
  }),
  expectation: question(text('what the hitter expected beforehand'), null, {
    published: { words: 'what the golfer expected beforehand' },
  }),
  consent: required(consent, 'Did the hitter agree to be shown here: yes, or yes and the day?'),
  // A draft fills it in.
  match: question(
    oneOrMore(text('the name of the hitter in the CSV'), 'the names of the hitter in the CSV').describe(
      'what the session files call this hitter; never printed',
    ),
    null,
  ),
} as const satisfies Questions<'published'>;

export const hitterAnswers = strict(answersOf(hitterQuestions));

type HitterAnswers = z.infer<typeof hitterAnswers>;

export interface Hitter extends HitterAnswers {
  readonly id: string;
}
