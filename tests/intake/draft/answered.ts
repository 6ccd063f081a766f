import { openAnswers } from '../../../src/intake/draft/openAnswers.ts';
import type { Shared } from '../../../src/intake/authored/shared.ts';

/** An answer that each key takes, by the last part of its name. */
const answers: Readonly<Record<string, string>> = {
  date: '2026-05-04',
  question: 'Which of them carries farther?',
  varied: 'head',
  supplied_by: 'our stock',
  sold_here: 'both',
  price: '{amount: 499, currency: GBP, on: 2026-04-11}',
  build: '{loft: 9°, head_weight: 198 g, condition: new}',
  short: 'Short',
  head: 'one head',
  shaft: 'one 60 g shaft',
  length: '45.25 in',
  grip: 'one grip',
  loft: '9°',
  primary: 'carry',
  role: 'staff fitter',
  consent: 'yes, 2026-05-04',
  hand: 'left',
  handicap_band: '6-10',
  link_to_shop: 'employed by the shop',
  saw_club: 'yes',
  saw_numbers: 'no',
  place: 'indoors, net at 4 m',
  surface: 'mat',
  tee: '40 mm',
  temperature: '19 °C',
  altitude: '60 m',
  wind: 'none',
  humidity: '40 %',
  target: 'a flag at 200 m',
  model: 'one new model',
  state: 'new',
  same_for_all: 'yes',
  kind: 'radar',
  stated_accuracy: '{ball_speed: 1 mph, carry: 3 yd}',
  accuracy_stated_by: 'its maker',
  flight: 'net at 4 m',
  normalised_to: 'nothing',
  last_check: 'in April',
  shots_per_contender: '12',
  order: 'random rotation',
  exclusion_rule: 'misread by the monitor',
  stopping_rule: 'a fixed number',
  expectation: 'none',
  warm_up: 'ten swings',
  paid_by: 'the shop',
  commission_or_gifts: 'none',
  seen_before: 'nobody outside the shop',
  supplied: 'all from stock',
};

/** Distances in yards, speeds in miles per hour. */
const unitOf = (key: string): string => (key.includes('speed') ? 'mph' : 'yd');

/** A draft with its blanks filled in: those that must be answered, or `every` one that takes a plain answer. */
export function answered(
  file: string,
  text: string,
  { every = false, shared }: { readonly every?: boolean; readonly shared?: Shared } = {},
): string {
  const lines = text.split('\n');
  for (const { key, line, must } of openAnswers(file, text, shared)) {
    if (!must && !every) continue;
    const last = key.split('.').pop() ?? '';
    const answer = last === 'unit' ? unitOf(key) : answers[last];
    if (answer !== undefined) lines[line - 1] += ` ${answer}`;
    else if (must) throw new Error(`No answer to ${key}`);
  }
  return lines.join('\n');
}
