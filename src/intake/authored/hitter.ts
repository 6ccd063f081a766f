import type { z } from 'zod';
import { answer, isRealDate, meaning, oneOf, text, yesOrNo } from './answers.ts';
import { oneOrMore } from './collections.ts';
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

/** Who hit, without a name. What was not answered is absent: not recorded. */
export const hitterAnswers = strict({
  role: text('who hit, as a role: staff fitter, customer, professional'),
  hand: oneOf(['right', 'left']).describe('right- or left-handed').exactOptional(),
  handicap_band: text('a band of handicaps, such as 6-10').exactOptional(),
  link_to_shop: text('how the hitter is tied to the shop or to a maker').exactOptional(),
  saw_club: yesOrNo.describe('whether the hitter could see which one it was').exactOptional(),
  saw_numbers: yesOrNo.describe('whether the hitter could see the numbers').exactOptional(),
  usual_club: text("the hitter's usual club and loft").exactOptional(),
  expectation: text('what the hitter expected beforehand').exactOptional(),
  consent,
  match: oneOrMore(text('the name of the hitter in the CSV'), 'the names of the hitter in the CSV')
    .describe('what the session files call this hitter; never printed')
    .exactOptional(),
});

type HitterAnswers = z.infer<typeof hitterAnswers>;

export interface Hitter extends HitterAnswers {
  readonly id: string;
}
