import { answer, isRealDate, oneOf, text, yesOrNo } from './answers.ts';
import { oneOrMore } from './collections.ts';
import { strict } from './strict.ts';
import type { Schema } from './trouble.ts';

/** That the hitter agreed to be shown, and on which day if it was noted. */
export interface Consent {
  readonly date: string | null;
}

/** Who hit, without a name. What was not answered is absent: not recorded. */
export interface HitterAnswers {
  readonly role: string;
  readonly hand?: 'right' | 'left';
  readonly handicapBand?: string;
  readonly linkToShop?: string;
  readonly sawClub?: boolean;
  readonly sawNumbers?: boolean;
  readonly usualClub?: string;
  readonly expectation?: string;
  readonly consent: Consent;
  /** What the CSV calls this hitter, where that is not the id. */
  readonly match?: readonly string[];
}

export interface Hitter extends HitterAnswers {
  readonly id: string;
}

const consent: Schema<Consent> = answer(
  'yes, or yes and the day: yes, 2026-04-11',
  (typed) => {
    const parts = /^(?:yes|true)(?:[\s,]+(\S+))?$/i.exec(typed);
    if (parts === null) return null;
    const date = parts[1] ?? null;
    return date === null || isRealDate(date) ? { date } : null;
  },
  'Ask the hitter; only shots of hitters who agreed may be published. Inside { } write "yes, 2026-04-11" in quotes.',
  '`yes`, or `yes, 2026-04-01`',
).describe('that the hitter agreed to be shown, and on which day');

export const hitterAnswers: Schema<HitterAnswers> = strict({
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
